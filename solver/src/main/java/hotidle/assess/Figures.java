package hotidle.assess;

import hotidle.network.Group;
import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.part.Converter;
import hotidle.part.PumpChamber;
import hotidle.part.ReliefValve;
import hotidle.part.SpoolValve;
import hotidle.result.Solution;
import hotidle.transmission.Command;
import hotidle.transmission.Transmission;
import java.util.Map;
import java.util.Optional;

/**
 * What a reader asks of a state, in SI. Flows are volumes as they pass; what becomes of them is told by {@link OilBudget}.
 *
 * @param set           set pressure commanded [Pa], NaN where none is commanded
 * @param setAtBoost    set pressure at the boost actually there [Pa], NaN where none is commanded
 * @param line          line pressure [Pa]
 * @param offSeat       whether the regulator is off its seat
 * @param secondary     what the second chamber does
 * @param charge        converter charge [Pa], NaN without a converter
 * @param cooler        flow through the cooler [m³/s], NaN without one
 * @param lube          flow of all lube branches [m³/s]
 * @param slip          flow that slips back in the pump, less what the tips drag forward [m³/s]
 * @param leaks         oil lost outside the pump, shut lands included, by heading [m³/s]
 * @param used          oil that does something on its way to the sump, by heading [m³/s]
 * @param recirculated  oil sent back to the pump's inlet by the regulator's open lands [m³/s]
 * @param spilled       oil that an open relief valve lets go [m³/s]
 * @param swept         what the pump displaces [m³/s]
 * @param filling       of the pump [-]
 * @param hubLoad       [N], NaN without a hub bushing
 * @param film          least film in the hub bushing [m], NaN where it is not known
 * @param metalContact  whether the hub's film is not known for metal touching
 * @param pumpPower     [W]
 * @param reliefOpen    whether a relief valve of the line has lifted; one elsewhere does its work there
 */
public record Figures(
        double set,
        double setAtBoost,
        double line,
        boolean offSeat,
        Secondary secondary,
        double charge,
        double cooler,
        double lube,
        double slip,
        Map<Group, Double> leaks,
        Map<Group, Double> used,
        double recirculated,
        double spilled,
        double swept,
        double filling,
        double hubLoad,
        double film,
        boolean metalContact,
        double pumpPower,
        boolean reliefOpen) {

    /** What the second chamber of a double pump does. */
    public enum Secondary {
        NONE("none"),
        JOINED("joined"),
        UNLOADING("unloading"),
        UNLOADED("unloaded");

        private final String word;

        Secondary(String word) {
            this.word = word;
        }

        /** The word that users read. */
        public String word() {
            return word;
        }
    }

    /** A spool this close to its lower stop sits on it [m]. */
    private static final double SEATED = 1e-9;

    /** A check valve that passes less than this share of what the chamber displaces is shut. */
    private static final double SHUT = 1e-3;

    /** A pump that fills less than this has a starved inlet. */
    public static final double FULL = 1 - 1e-9;

    /** The figures of a state of a unit. */
    public static Figures of(Transmission unit, Solution state) {
        Roles roles = Roles.of(unit);
        double x = roles.regulating()
                .map(placed -> state.own(placed.name(), "position"))
                .orElse(0.0);
        OilBudget budget = OilBudget.of(unit, state);
        Optional<String> hub = roles.hub().map(Placed::name);
        return new Figures(
                unit.commanded()
                        .map(command -> command.setPressure(unit.network(), range(state), pilot(command, state)))
                        .orElse(Double.NaN),
                unit.commanded()
                        .map(command -> command.setPressure(unit.network(), range(state), boost(unit, command, state)))
                        .orElse(Double.NaN),
                state.pressure(roles.line()),
                roles.regulating()
                        .map(placed -> x > roles.spool().spring().low() + SEATED)
                        .orElse(false),
                secondary(roles, state, x),
                roles.converter()
                        .map(placed ->
                                state.measure(placed.name(), Converter.CHARGE).orElseThrow())
                        .orElse(Double.NaN),
                roles.cooler().map(placed -> state.flow(placed.name())).orElse(Double.NaN),
                roles.lube().stream()
                        .mapToDouble(placed -> state.flow(placed.name()))
                        .sum(),
                budget.volume(OilBudget.Fate.SLIP),
                budget.volumes(OilBudget.Fate.LEAK),
                budget.volumes(OilBudget.Fate.USED),
                budget.volume(OilBudget.Fate.RECIRCULATED),
                budget.volume(OilBudget.Fate.SPILLED),
                budget.displaced(),
                roles.inlet().map(placed -> state.own(placed.name(), "filling")).orElse(1.0),
                hub.map(name -> state.measure(name, Bushing.LOAD).orElseThrow()).orElse(Double.NaN),
                hub.map(name -> state.measure(name, Bushing.LEAST_FILM).orElse(Double.NaN))
                        .orElse(Double.NaN),
                hub.map(name -> state.measure(name, Bushing.METAL_CONTACT).orElseThrow() > 0)
                        .orElse(false),
                roles.chambers().stream()
                        .mapToDouble(placed ->
                                state.measure(placed.name(), PumpChamber.POWER).orElseThrow())
                        .sum(),
                unit.reliefs(roles.line()).stream()
                        .anyMatch(placed ->
                                state.measure(placed.name(), ReliefValve.LIFT).orElseThrow() > 0));
    }

    private static String range(Solution state) {
        return state.conditions().range();
    }

    private static double pilot(Command command, Solution state) {
        return command.pilot(state.conditions().commands());
    }

    private static double boost(Transmission unit, Command command, Solution state) {
        return command.pilotNode(unit.network()).map(state::pressure).orElse(0.0);
    }

    /** Whether line pressure is commanded, so that there is a set pressure. */
    public boolean commanded() {
        return !Double.isNaN(set);
    }

    /** What the regulator does, in words; a lifted relief valve and a starved inlet come first, being the graver news. */
    public String regulator() {
        String free = line < set ? "off its seat but low" : "regulating";
        String seat = offSeat ? free : "on its seat";
        String works = commanded() ? seat : "not commanded";
        String relief = reliefOpen ? "relief open" : works;
        return filling < FULL ? relief + ", inlet starved" : relief;
    }

    /** All oil lost to worn fits outside the pump [m³/s]. */
    public double leak() {
        return leaks.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Whether line pressure is at least the set pressure commanded, with the regulator off its seat. */
    public boolean regulated() {
        return offSeat && line >= set;
    }

    /** Unloaded is a chamber off the line once the primary has oil to spare; until then it still carries part of the pressure. */
    private static Secondary secondary(Roles roles, Solution state, double position) {
        if (roles.secondary().isEmpty()) {
            return Secondary.NONE;
        }
        double swept = state.flow(roles.secondary().get().name() + ".swept");
        double joining = state.flow(roles.check().orElseThrow().name());
        boolean spare = roles.bypass().map(opening -> opening.edge() < position).orElse(true);
        if (joining < SHUT * swept && spare) {
            return Secondary.UNLOADED;
        }
        boolean opened = joining < SHUT * swept
                || roles.unloading().map(SpoolValve.Opening::edge).orElse(Double.POSITIVE_INFINITY) < position;
        return opened ? Secondary.UNLOADING : Secondary.JOINED;
    }
}
