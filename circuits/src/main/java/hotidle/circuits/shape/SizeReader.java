package hotidle.circuits.shape;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a size that wears: what it is new, at its limit and as measured. */
record SizeReader(AmountReader amounts, Problems problems, ReadingLog used) {

    private static final List<String> SIZE_KEYS = List.of("new", "limit", "measured");

    /** The size, one value of it or several. */
    Optional<Item> size(Key key, String path, Attributes given, Value value) {
        Value written = value instanceof Value.Chosen chosen ? chosen.written() : value;
        Optional<Attributes.Sizes> sizes = written instanceof Value.Entries entries
                ? sizes(key, given, entries)
                : AmountReader.box(amounts.quantity(key, key.name(), given, written, Dimension.LENGTH))
                        .map(only -> Attributes.Sizes.written(only, OptionalDouble.empty(), OptionalDouble.empty()));
        if (sizes.isPresent() && value instanceof Value.Chosen chosen) {
            Attributes.Sizes size = sizes.get();
            sizes = AmountReader.box(amounts.quantity(key, key.name(), given, chosen.inUse(), Dimension.LENGTH))
                    .map(size::changedTo);
        }
        sizes.ifPresent(size -> used.note(path, size));
        return sizes.map(Item.WearingSize::new);
    }

    private Optional<Attributes.Sizes> sizes(Key key, Attributes given, Value.Entries entries) {
        boolean good = true;
        for (Value.Entry entry : entries.entries()) {
            good &= knownSizeKey(key, given, entry);
        }
        if (entries.entry("new").isEmpty()) {
            if (!good) {
                return Optional.empty();
            }
            String rule = "a size has the keys new, limit and measured, of which new is needed";
            problems.error(
                    entries.place(),
                    given.fault(
                            ProblemCode.MISSING_KEY, "new", "has " + key.name() + " without its new size", rule, ""));
            return Optional.empty();
        }
        OptionalDouble fresh = sizePart(key, "new", given, entries);
        OptionalDouble limit = sizePart(key, "limit", given, entries);
        OptionalDouble measured = sizePart(key, "measured", given, entries);
        good &= fresh.isPresent()
                && limit.isPresent() == entries.entry("limit").isPresent()
                && measured.isPresent() == entries.entry("measured").isPresent();
        if (good) {
            againstWear(key, given, entries, fresh.getAsDouble(), limit, measured);
        }
        return good ? Optional.of(Attributes.Sizes.written(fresh.getAsDouble(), limit, measured)) : Optional.empty();
    }

    /** Measured sizes this far on the wrong side of the new one are taken for an error of the gauge (assumed) [m]. */
    private static final double GAUGE_ERROR = 5e-6;

    private void againstWear(
            Key key,
            Attributes given,
            Value.Entries entries,
            double fresh,
            OptionalDouble limit,
            OptionalDouble measured) {
        boolean shrinks = ((Type.Wearing) key.type()).shrinks();
        double sign = shrinks ? -1 : 1;
        String side = shrinks ? "above" : "below";
        String rule = "wear makes it " + (shrinks ? "smaller" : "larger");
        if (limit.isPresent() && sign * (limit.getAsDouble() - fresh) < 0) {
            String message = "has a limit of " + key.name() + " " + side + " its new size";
            problems.warning(
                    entries.entry("limit").orElseThrow().value().place(),
                    given.fault(ProblemCode.AGAINST_WEAR, key.name(), message, rule, "exchange the two"));
        }
        if (measured.isPresent() && sign * (measured.getAsDouble() - fresh) < -GAUGE_ERROR) {
            String message = "has a measured " + key.name() + " " + side + " its new size";
            Value at = entries.entry("measured").orElseThrow().value();
            problems.warning(
                    at.place(),
                    given.fault(
                            ProblemCode.AGAINST_WEAR,
                            key.name(),
                            message,
                            rule,
                            "measure again, or correct the new size"));
        }
    }

    private boolean knownSizeKey(Key key, Attributes given, Value.Entry entry) {
        if (SIZE_KEYS.contains(entry.key())) {
            return true;
        }
        String message = "has the unknown key '" + entry.key() + "' in " + key.name();
        problems.error(
                entry.keyPlace(),
                given.fault(ProblemCode.UNKNOWN_KEY, entry.key(), message, "", Nearest.mend(entry.key(), SIZE_KEYS)));
        return false;
    }

    private OptionalDouble sizePart(Key key, String which, Attributes given, Value.Entries entries) {
        return entries.entry(which)
                .map(entry -> amounts.quantity(key, which + " " + key.name(), given, entry.value(), Dimension.LENGTH))
                .orElse(OptionalDouble.empty());
    }
}
