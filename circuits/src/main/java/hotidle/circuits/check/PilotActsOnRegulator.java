package hotidle.circuits.check;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import hotidle.transmission.Command;
import hotidle.transmission.Transmission;
import java.util.List;

/** The pilot pressure of the command's solenoid acts on the regulator, straight or through what hands it on. */
final class PilotActsOnRegulator implements Rule.OfUnits {

    @Override
    public void check(Attributes command, List<Transmission> units) {
        units.stream()
                .filter(unit -> unit.command().pilot().isPresent() && !piloted(unit))
                .findFirst()
                .flatMap(unit -> unit.command().pilotNode(unit.network()))
                .ifPresent(pilot -> command.warning(
                        ProblemCode.PILOT_ACTS_NOT_ON_REGULATOR,
                        "solenoid",
                        "has a solenoid whose pilot '" + pilot + "' does not act on the regulator",
                        "then the command does not move line pressure",
                        "add an area with node: " + pilot + " to the regulator"));
    }

    private static boolean piloted(Transmission unit) {
        Command command = unit.command();
        return unit.ranges().stream().anyMatch(range -> command.pilotMoves(unit.network(), range.name()));
    }
}
