package hotidle.assess;

import hotidle.network.Group;
import hotidle.part.Bushing;
import hotidle.part.Converter;
import hotidle.part.FaceGap;
import hotidle.part.OwnState;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
import hotidle.part.PumpSlip;
import hotidle.part.ReliefValve;
import hotidle.part.SpoolValve;
import hotidle.result.Solution;
import hotidle.transmission.Control;
import hotidle.transmission.Transmission;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a reader asks of a state, in SI. Flows through cooler and lubrication are volumes as they pass; what becomes of the pump's oil
 * is counted as the pump takes it in, by {@link OilBudget}, so that it adds up to what is swept.
 *
 * @param set           set pressure commanded [Pa]; empty where none is commanded
 * @param setAtBoost    set pressure at the boost and signals actually there [Pa]; empty where none is commanded
 * @param line          line pressure [Pa]
 * @param offSeat       whether the regulator is off its seat
 * @param stuck         whether the regulator is stuck, as the file says
 * @param secondary     what the second chamber does
 * @param charge        converter charge [Pa]; empty without a converter
 * @param cooler        flow through the cooler [m³/s]; empty without one
 * @param lube          flow of all lube branches [m³/s]
 * @param slip          flow that slips back in the pump, less what the tips drag forward [m³/s]
 * @param leaks         oil lost outside the pump, shut lands to the sump included, by heading [m³/s]
 * @param used          oil that does something on its way to the sump, by heading [m³/s]
 * @param recirculated  oil that comes back to the pump's inlet past the regulator, its lands open or shut [m³/s]
 * @param spilled       oil that an open relief valve lets go [m³/s]
 * @param swept         what the pump displaces, as far as it fills [m³/s]
 * @param filling       of the pump [-]
 * @param hub          what the hub bushing carries, and on what film; empty without one
 * @param pumpPower     that the pump takes from the engine: all chambers, faces that turn and the film that its hub runs on [W]
 * @param reliefOpen    whether a relief valve of the line has lifted; one elsewhere does its work there
 */
public record Figures(
        OptionalDouble set,
        OptionalDouble setAtBoost,
        double line,
        boolean offSeat,
        boolean stuck,
        Secondary secondary,
        OptionalDouble charge,
        OptionalDouble cooler,
        double lube,
        double slip,
        Map<Group, Double> leaks,
        Map<Group, Double> used,
        double recirculated,
        double spilled,
        double swept,
        double filling,
        Optional<Hub> hub,
        double pumpPower,
        boolean reliefOpen) {

    /** What the second chamber of a double pump does. */
    public enum Secondary {
        NONE,
        JOINED,
        UNLOADING,
        UNLOADED
    }

    /** What the regulator does. */
    public enum Regulator {
        NOT_COMMANDED,
        /** It stands where it is, whatever the line does. */
        STUCK,
        ON_ITS_SEAT,
        OFF_ITS_SEAT_BUT_LOW,
        REGULATING,
        /** It cannot let go of the oil, so that the line stands far above the pressure commanded. */
        FAR_ABOVE,
        /** A lifted relief valve of the line is the graver news, whatever the regulator does. */
        RELIEF_OPEN
    }

    /**
     * The hub bushing.
     *
     * @param load      [N]
     * @param leastFilm at the edge to which it leans [m]; empty in metal contact, where it is not known
     */
    public record Hub(double load, OptionalDouble leastFilm) {

        /** Whether metal touches. */
        public boolean metalContact() {
            return leastFilm.isEmpty();
        }

        private static Hub of(String name, Solution state) {
            return new Hub(state.measure(name, Bushing.LOAD).orElseThrow(), state.measure(name, Bushing.EDGE_FILM));
        }
    }

    /**
     * From this multiple of the set pressure on, a line is too high to be called regulated (assumed); over its speed range a
     * regulator rises by 3 to 8 per cent (common practice).
     */
    private static final double FAR_ABOVE = 1.25;

    /** A spool this close to its lower stop sits on it: a millionth of its travel (ours) [m]. */
    private static final double SEATED = 1e-9;

    /** A check valve that passes less than this share of what the chamber displaces is shut (assumed) [-]. */
    private static final double SHUT = 1e-3;

    /** A pump that fills less than this has a starved inlet: what rounding leaves (ours) [-]. */
    public static final double FULL = 1 - 1e-9;

    /** The figures of a state of a unit. */
    public static Figures of(Transmission unit, Solution state) {
        Roles roles = Roles.of(unit);
        return of(unit, roles, OilBudget.of(unit, roles, state), state);
    }

    /** The same, of roles and a budget already found. */
    static Figures of(Transmission unit, Roles roles, OilBudget budget, Solution state) {
        double x = roles.regulating()
                .map(placed -> state.own(placed.name(), OwnState.POSITION))
                .orElse(0.0);
        return new Figures(
                unit.setPressure(state.conditions()),
                unit.commanded()
                        .map(command -> OptionalDouble.of(
                                command.setPressureIn(unit.network(), Control.of(state.conditions()), state::pressure)))
                        .orElse(OptionalDouble.empty()),
                state.pressure(roles.line()),
                offSeat(roles, state),
                roles.regulating().isPresent() && roles.spool().stuck().isPresent(),
                secondary(roles, state, x),
                roles.converter()
                        .map(placed -> state.measure(placed.name(), Converter.CHARGE))
                        .orElse(OptionalDouble.empty()),
                roles.cooler()
                        .map(placed -> OptionalDouble.of(state.flow(placed.name())))
                        .orElse(OptionalDouble.empty()),
                roles.lube().stream()
                        .mapToDouble(placed -> state.flow(placed.name()))
                        .sum(),
                budget.flow(OilBudget.Fate.SLIP),
                budget.flows(OilBudget.Fate.LEAK),
                budget.flows(OilBudget.Fate.USED),
                budget.flow(OilBudget.Fate.RECIRCULATED),
                budget.flow(OilBudget.Fate.SPILLED),
                budget.displaced(),
                roles.inlet()
                        .map(placed -> state.own(placed.name(), PumpInlet.FILLING))
                        .orElse(1.0),
                roles.hub().map(placed -> Hub.of(placed.name(), state)),
                pumpPower(unit, roles, state),
                unit.reliefs(roles.line()).stream()
                        .anyMatch(placed ->
                                state.measure(placed.name(), ReliefValve.LIFT).orElseThrow() > 0));
    }

    /** Whether the regulator is off its seat; not where nothing is commanded. */
    public static boolean offSeat(Roles roles, Solution state) {
        return roles.regulating()
                .map(placed -> state.own(placed.name(), OwnState.POSITION)
                        > roles.spool().spring().low() + SEATED)
                .orElse(false);
    }

    /** What the hub's film and the faces of a gear of several chambers take is in no chamber's drag. */
    private static double pumpPower(Transmission unit, Roles roles, Solution state) {
        double chambers = roles.chambers().stream()
                .mapToDouble(placed ->
                        state.measure(placed.name(), PumpChamber.POWER).orElseThrow())
                .sum();
        return chambers
                + roles.hub().stream()
                        .mapToDouble(placed -> filmPower(placed.name(), state))
                        .sum()
                + unit.network().parts().stream()
                        .filter(placed -> placed.part() instanceof FaceGap)
                        .mapToDouble(placed -> facePower(placed.name(), state))
                        .sum();
    }

    /** What the oil under a face that turns takes [W], a chamber's own faces apart; 0 where it stands. */
    public static double facePower(String faceGap, Solution state) {
        return state.measure(faceGap, PumpSlip.FACE_DRAG).orElse(0);
    }

    /** What a bushing's film takes [W]; in metal contact there is no film, and what it takes is not known: 0. */
    public static double filmPower(String bushing, Solution state) {
        return state.measure(bushing, Bushing.LEAST_FILM).isPresent()
                ? state.measure(bushing, Bushing.FRICTION_POWER).orElse(0)
                : 0;
    }

    /** Whether line pressure is commanded, so that there is a set pressure. */
    public boolean commanded() {
        return set.isPresent();
    }

    /** What the regulator does. */
    public Regulator regulator() {
        if (reliefOpen) {
            return Regulator.RELIEF_OPEN;
        }
        if (!commanded()) {
            return Regulator.NOT_COMMANDED;
        }
        if (stuck) {
            return Regulator.STUCK;
        }
        if (!offSeat) {
            return Regulator.ON_ITS_SEAT;
        }
        if (line < set.getAsDouble()) {
            return Regulator.OFF_ITS_SEAT_BUT_LOW;
        }
        return farAboveSet() ? Regulator.FAR_ABOVE : Regulator.REGULATING;
    }

    /** How closely the slip is known. */
    public SlipBand slipBand() {
        return SlipBand.of(swept, slip);
    }

    /** Whether the pump fills in part only. */
    public boolean inletStarved() {
        return filling < FULL;
    }

    /** Line pressure less the set pressure [Pa]; empty where none is commanded. */
    public OptionalDouble override() {
        return commanded() ? OptionalDouble.of(line - set.getAsDouble()) : OptionalDouble.empty();
    }

    /** Whether the line stands below the pressure commanded. */
    public boolean low() {
        return commanded() && !(line >= set.getAsDouble());
    }

    /** Whether the line stands far above the pressure commanded: the regulator cannot let go of the oil, or sticks. */
    public boolean farAboveSet() {
        return commanded() && line >= set.getAsDouble() * FAR_ABOVE;
    }

    /** All oil lost to worn fits outside the pump [m³/s]. */
    public double leak() {
        return leaks.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** All oil lost, in the pump and outside it [m³/s]: that of {@link OilBudget#lost}. */
    public double lost() {
        return slip + leak();
    }

    /** Whether line pressure is at least the set pressure commanded, with the regulator off its seat: no oil is short there. */
    public boolean regulated() {
        return offSeat && commanded() && line >= set.getAsDouble();
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
