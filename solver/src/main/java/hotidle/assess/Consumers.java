package hotidle.assess;

import hotidle.network.Placed;
import hotidle.part.Converter;
import hotidle.part.Cooler;
import hotidle.part.LubeBranch;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What lives on the oil that the regulator feeds: lubrication, cooler and converter, each against what it needs. */
public final class Consumers {

    private Consumers() {}

    /** One margin a lube branch, the cooler's and the converter's; those that need nothing at the duty are left out. */
    public static List<Margin> of(Roles roles, DutyPoint duty, Solution state) {
        List<Margin> margins = new ArrayList<>();
        for (Placed branch : roles.lube()) {
            flow(Margin.Kind.LUBRICATION, branch, ((LubeBranch) branch.part()).neededFlow(), duty, state)
                    .ifPresent(margins::add);
        }
        roles.cooler()
                .flatMap(placed -> flow(Margin.Kind.COOLER, placed, ((Cooler) placed.part()).neededFlow(), duty, state))
                .ifPresent(margins::add);
        roles.converter().flatMap(placed -> charge(placed, state)).ifPresent(margins::add);
        return margins;
    }

    private static Optional<Margin> flow(
            Margin.Kind kind, Placed placed, double neededFlow, DutyPoint duty, Solution state) {
        double needed = duty.lubeNeed() * neededFlow;
        return needed > 0
                ? Optional.of(Margin.of(kind, placed.name(), state.flow(placed.name()), needed, Margin.Scale.FLOW))
                : Optional.empty();
    }

    private static Optional<Margin> charge(Placed placed, Solution state) {
        double needed = ((Converter) placed.part()).neededCharge();
        return needed > 0
                ? Optional.of(Margin.of(
                        Margin.Kind.CONVERTER_CHARGE,
                        placed.name(),
                        state.measure(placed.name(), Converter.CHARGE).orElseThrow(),
                        needed,
                        Margin.Scale.PRESSURE))
                : Optional.empty();
    }
}
