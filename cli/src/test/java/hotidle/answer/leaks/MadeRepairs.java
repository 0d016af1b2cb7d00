package hotidle.answer.leaks;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.study.RepairFindings;
import hotidle.study.Repairs;
import hotidle.transmission.WearSize;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Repairs for the tests: lines in bar under a set pressure of 10 bar, flows in L/min, onsets in rpm. */
final class MadeRepairs {

    private MadeRepairs() {}

    static Repairs.Effect effect(double line, double lube, double lost, OptionalDouble onset) {
        return new Repairs.Effect(
                line * 1e5,
                OptionalDouble.of(10e5),
                line >= 10,
                lube / 6e4,
                lost / 6e4,
                List.of(),
                1,
                onset.isPresent() ? OptionalDouble.of(onset.getAsDouble() / 60) : onset);
    }

    static Repairs.Effect effect(double line, double lube, double lost) {
        return effect(line, lube, lost, OptionalDouble.empty());
    }

    /** The same of a unit in which nothing is commanded. */
    static Repairs.Effect uncommanded(double line, double lost) {
        return new Repairs.Effect(
                line * 1e5, OptionalDouble.empty(), false, 0, lost / 6e4, List.of(), 1, OptionalDouble.empty());
    }

    /** A bore of 14 mm as new, worn by some micrometres. */
    static WearSize bore(String part, double micrometres) {
        return new WearSize(
                part,
                "bore",
                WearSize.SizeKind.LENGTH,
                0.014 + micrometres * 1e-6,
                0.014,
                OptionalDouble.of(0.0141),
                OptionalDouble.empty());
    }

    static WearSize scores(String part) {
        return new WearSize(
                part,
                "orifice-slip-area",
                WearSize.SizeKind.AREA,
                4e-7,
                1e-7,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    static Repairs.Step step(Repairs.Effect after, WearSize... sizes) {
        String name = sizes.length == 1 ? sizes[0].name() : sizes[0].part();
        return new Repairs.Step(new Repairs.Repair(name, Arrays.asList(sizes)), after);
    }

    static Repairs repairs(Repairs.Effect before, List<Repairs.Step> alone, List<Repairs.Step> order) {
        return new Repairs(before, alone, order, Optional.empty());
    }

    static RepairNames names(Map<String, String> abouts) {
        return new RepairNames(abouts, UnitSystem.METRIC);
    }

    /** Tables of a unit with lubrication and one chamber, whose onset was searched from 400 rpm. */
    static RepairTables tables(Repairs repairs) {
        return new RepairTables(
                UnitSystem.METRIC,
                names(Map.of()),
                repairs,
                RepairFindings.of(repairs, true, RepairTables.MOST_ALONE),
                true,
                false,
                400 / 60.0);
    }
}
