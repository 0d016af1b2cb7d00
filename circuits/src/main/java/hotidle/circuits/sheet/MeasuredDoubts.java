package hotidle.circuits.sheet;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Fault;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
import java.util.Map;
import java.util.Optional;

/**
 * Tells by name what is odd about measured sizes: a slip of unit, decimal point, column or row, and sizes no wear explains. What is
 * sure to be wrong is refused, for a wrong size makes wrong verdicts; what may be so is told and used.
 *
 * @param sizes of every part, by part and key
 */
record MeasuredDoubts(Problems problems, Map<String, Map<String, SizeAsNew>> sizes) {

    /** A clearance further off than so many times is a slip and no wear (chosen) [-]. */
    private static final double SURE = 20;

    private SizeAsNew size(SheetRow fit, String key) {
        return sizes.get(fit.part()).get(key);
    }

    /** Whether bore and valve stand in each other's column, which is told. */
    boolean swapped(SheetRow fit, Optional<Measured> outer, Optional<Measured> inner) {
        if (outer.isEmpty()
                || inner.isEmpty()
                || outer.get().readings().most() >= inner.get().readings().least()) {
            return false;
        }
        boolean fits = plausible(size(fit, outer.get().key()), inner.get())
                && plausible(size(fit, inner.get().key()), outer.get());
        if (fits) {
            problems.error(
                    outer.get().place(),
                    ProblemCode.BORE_AND_VALVE_SWAPPED,
                    "the sheet has bore and " + inner.get().key() + " of " + fit.part() + " in each other's column",
                    "a bore is larger than what runs in it",
                    "exchange the two cells");
        }
        return fits;
    }

    private static boolean plausible(SizeAsNew size, Measured diameter) {
        return size.known()
                && new Doubted(size, true).plausible(diameter.readings().mean());
    }

    /** Whether a size may be used; tells what is odd about it. */
    boolean sound(SheetRow fit, Optional<Measured> asked, Optional<Measured> other, boolean diameter) {
        if (asked.isEmpty() || !size(fit, asked.get().key()).known()) {
            return true;
        }
        Measured one = asked.get();
        Doubted doubted = new Doubted(size(fit, one.key()), diameter);
        for (String number : one.numbers().toList()) {
            double value = Units.parse(one.text(number), Dimension.LENGTH);
            Optional<String> slip = doubted.plausible(value) ? Optional.empty() : slip(one, doubted, number);
            if (slip.isPresent()) {
                return slipped(one, doubted, number, slip.get());
            }
        }
        double middle = one.readings().mean();
        if (doubted.another(middle)) {
            return anotherFit(one, doubted, fit, other);
        }
        String rule = "wear makes it " + (size(fit, one.key()).shrinks() ? "smaller" : "larger");
        if (doubted.againstWear(middle)) {
            String side = size(fit, one.key()).shrinks() ? "larger" : "smaller";
            warn(
                    one,
                    ProblemCode.AGAINST_WEAR,
                    "is measured " + side + " than new, " + newSize(one, doubted),
                    rule,
                    "measure again, or correct the new size in the file");
        } else if (doubted.farPastLimit(middle)) {
            warn(
                    one,
                    ProblemCode.FAR_PAST_LIMIT,
                    "is worn far past its limit, new " + newSize(one, doubted) + ", limit "
                            + one.alike(doubted.limit().orElseThrow()),
                    "more than three times as far as its limit allows (chosen)",
                    "measure again; a slip of the gauge or the row is more likely");
        }
        return true;
    }

    /** What was meant where a number is implausible: it in another unit, or with its point elsewhere. */
    private static Optional<String> slip(Measured one, Doubted doubted, String number) {
        return doubted.otherUnit(number, one.unit()).or(() -> doubted.otherDecimal(number, one.unit()));
    }

    /** Tells it; true where the size is used all the same. */
    private boolean slipped(Measured one, Doubted doubted, String number, String meant) {
        boolean sure = doubted.diameter()
                || one.given()
                || doubted.times(Units.parse(one.text(number), Dimension.LENGTH)) > SURE;
        Fault fault = Fault.of(
                ProblemCode.SIZE_SLIPPED,
                "the sheet has " + one.text(number) + " for " + one.target() + ", new " + newSize(one, doubted),
                meant.startsWith(number + " ")
                        ? "the same number in another unit would fit"
                        : "a decimal point has slipped, it seems",
                "did you mean " + meant + "?");
        if (sure) {
            problems.error(one.place(), fault);
        } else {
            problems.warning(one.place(), fault);
        }
        return !sure;
    }

    /** An oversize valve in a bore made for it is told and used; a bore alone that is another fit's is refused. */
    private boolean anotherFit(Measured one, Doubted doubted, SheetRow fit, Optional<Measured> other) {
        boolean oversize = other.isPresent()
                && size(fit, other.get().key()).known()
                && new Doubted(size(fit, other.get().key()), true)
                        .another(other.get().readings().mean());
        Optional<String> whose = Doubted.fits(
                one.readings().mean(),
                sizes.entrySet().stream()
                        .flatMap(part -> part.getValue().entrySet().stream()
                                .filter(size -> size.getValue().shrinks()
                                        == doubted.size().shrinks())
                                .map(size -> Map.entry(part.getKey() + "." + size.getKey(), size.getValue()))));
        Fault fault = Fault.of(
                ProblemCode.SIZE_OF_ANOTHER_FIT,
                "the sheet has " + one.text(one.cell().first()) + " for " + one.target() + ", new "
                        + newSize(one, doubted),
                "that is no wear but another diameter",
                oversize
                        ? "leave it where bore and valve are oversize"
                        : whose.map(name -> "does it belong to " + name + "?")
                                .orElse("measure again, or look at the row"));
        if (oversize) {
            problems.warning(one.place(), fault);
        } else {
            problems.error(one.place(), fault);
        }
        return oversize;
    }

    private static String newSize(Measured one, Doubted doubted) {
        return one.alike(doubted.size().fresh());
    }

    private void warn(Measured one, ProblemCode code, String what, String why, String mend) {
        problems.warning(one.place(), Fault.of(code, one.target() + " " + what, why, mend));
    }
}
