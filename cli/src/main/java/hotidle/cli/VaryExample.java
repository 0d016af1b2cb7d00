package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** What may stand behind --vary, with the names and sizes of one circuit. */
final class VaryExample {

    /** Sizes that are named beside the one of the example (chosen). */
    private static final int NAMED = 6;

    private VaryExample() {}

    /**
     * What to say where no size is given.
     *
     * @param units   in which sizes are written
     * @param circuit as the user wrote it, with its sheet
     * @throws WrongInputException where the circuit has no size that wears
     */
    static WrongInputException missing(Quantity.UnitSystem units, String circuit, Adjustable build) {
        List<WearSize> sizes = build.dimensions().stream()
                .filter(size -> size.limit().isPresent() && size.kind() == WearSize.SizeKind.LENGTH)
                .sorted(Comparator.comparingDouble(VaryExample::worn).reversed())
                .toList();
        String what = "hotidle: map needs a size to vary beside the set pressure\nmend: ";
        if (sizes.isEmpty()) {
            return new WrongInputException(what + "write --vary PART.key=LOW..HIGHunit; no size of "
                    + build.unit().circuit() + " has a wear limit written to take as its end");
        }
        return new WrongInputException(what + "write hotidle map " + circuit + " --build "
                + build.unit().build() + " --vary " + written(units, sizes.get(0)) + ", its "
                + sizes.get(0).key()
                + " from new to its limit, for example; or "
                + sizes.stream().skip(1).limit(NAMED).map(WearSize::name).collect(Collectors.joining(", "))
                + "; all: hotidle sensitivity " + circuit + " --full");
    }

    /** How far it is worn, as a share of the way to its limit. */
    private static double worn(WearSize size) {
        double way = size.limit().getAsDouble() - size.fresh();
        return way == 0 ? 0 : (size.value() - size.fresh()) / way;
    }

    /** What is less than this is written as a film is, in thousandths (chosen) [m]. */
    private static final double SMALL = 1e-3;

    /** From new to the limit, the lesser of them first. */
    private static String written(Quantity.UnitSystem units, WearSize size) {
        double low = Math.min(size.fresh(), size.limit().getAsDouble());
        double high = Math.max(size.fresh(), size.limit().getAsDouble());
        Quantity quantity = high < SMALL ? Quantity.FILM : Quantity.FIT;
        return size.name() + "=" + quantity.number(units, low) + ".." + quantity.number(units, high)
                + quantity.in(units).unit();
    }
}
