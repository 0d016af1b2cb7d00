package hotidle.study;

import hotidle.assess.ShiftFinding;
import hotidle.geartrain.Drive.Driven;
import hotidle.law.ClosingClutch;
import hotidle.network.Placed;
import hotidle.part.Clutch;
import hotidle.part.Lining;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Heat of the clutch that closes in a shift up, at the full pressure of the range that it goes to.
 *
 * <pre>
 * Formula   the vehicle keeps its speed, so the turbine falls from ω to ω·i2/i1. The closing clutch, slipping with Tc, pulls the turbine
 *           with Tc/s, s its share of the turbine's torque in the new range; {@link ClosingClutch} with the inertia on the turbine's
 *           side. What was engaged before lets go at once. Heat = Tc·slip·t/2; without mesh losses Tc·slip = Tc/s·(ω − ω·i2/i1)
 * Source    balance of power; {@link ClosingClutch}
 * Range     a shift up in which one clutch or brake closes. No ramp of the pressure, no accumulator, no change of the engine's torque
 *           during the shift; wear is not computed
 * </pre>
 *
 * @param from      range before
 * @param to        range after
 * @param clutch    that closes; empty where there is not one, or no steady state was found
 * @param why       why nothing was found
 * @param closing   what it makes; empty where nothing was found
 */
public record ShiftHeat(String from, String to, String clutch, ShiftFinding why, Optional<Closing> closing) {

    /** Density of steel [kg/m³] and its specific heat [J/(kg·K)]: handbook values. */
    private static final double STEEL_DENSITY = 7850;

    private static final double STEEL_HEAT = 470;

    /**
     * A clutch that closes.
     *
     * @param pressure at its piston [Pa]
     * @param torque   that it carries, slipping [N·m]
     * @param asked    of it once it has closed [N·m]
     * @param slip     at the start [rad/s]
     * @param time     that it slips [s]
     * @param heat     [J]
     * @param power    at the start [W]
     * @param area     of all its rubbing surfaces [m²]; empty for a band
     * @param steel    rise of its steel plates when none of the heat leaves them [K]; empty for a band
     */
    public record Closing(
            double pressure,
            double torque,
            double asked,
            double slip,
            double time,
            double heat,
            double power,
            OptionalDouble area,
            OptionalDouble steel) {

        /** Heat over the area [J/m²]; empty for a band. */
        public OptionalDouble heatOverArea() {
            return area.isPresent() ? OptionalDouble.of(heat / area.getAsDouble()) : area;
        }

        /** Power at the start over the area [W/m²]; empty for a band. */
        public OptionalDouble powerOverArea() {
            return area.isPresent() ? OptionalDouble.of(power / area.getAsDouble()) : area;
        }
    }

    /**
     * Under what it is asked.
     *
     * @param speed   of the turbine before the shift [rev/s]
     * @param torque  of the turbine [N·m], kept during it
     * @param inertia on the turbine's side, engine and converter with it [kg·m²]
     * @param plate   thickness of the steel plates [m]
     */
    public record AskedShift(double speed, double torque, double inertia, double plate) {
        public AskedShift {
            if (!(speed > 0 && torque >= 0 && inertia > 0 && plate > 0)) {
                throw new IllegalArgumentException("a shift at " + speed + " rev/s with " + torque + " N·m, " + inertia
                        + " kg·m² and plates of " + plate + " m");
            }
        }
    }

    /** Every shift from a forward range to the next one in the order of falling ratio; none where there is no gear train. */
    public static List<ShiftHeat> of(Transmission unit, AskedShift asked) {
        List<Range> forward = unit.ranges().stream()
                .filter(range -> range.forward() && range.driven().isPresent())
                .sorted((one, other) -> Double.compare(ratio(other), ratio(one)))
                .toList();
        List<ShiftHeat> shifts = new ArrayList<>();
        for (int i = 1; i < forward.size(); i++) {
            shifts.add(new RangeChange(unit, asked, forward.get(i - 1), forward.get(i)).heat());
        }
        return shifts;
    }

    /** Applied clutches that slide in none of some shifts: they close at rest, or hold alone. */
    public static List<String> still(Transmission unit, List<ShiftHeat> shifts) {
        Set<String> sliding = shifts.stream()
                .filter(shift -> shift.why() == ShiftFinding.FOUND
                        || shift.why() == ShiftFinding.NEVER
                        || shift.why() == ShiftFinding.NO_STATE)
                .map(ShiftHeat::clutch)
                .collect(Collectors.toSet());
        return unit.ranges().stream()
                .flatMap(range -> range.applied().keySet().stream())
                .filter(clutch -> !sliding.contains(clutch))
                .distinct()
                .sorted()
                .toList();
    }

    private static double ratio(Range range) {
        return range.driven().map(Driven::ratio).orElse(0.0);
    }

    private record RangeChange(Transmission unit, AskedShift asked, Range from, Range to) {

        private ShiftHeat none(String clutch, ShiftFinding why) {
            return new ShiftHeat(from.name(), to.name(), clutch, why, Optional.empty());
        }

        ShiftHeat heat() {
            Set<String> closing = new java.util.TreeSet<>(to.applied().keySet());
            closing.removeAll(from.applied().keySet());
            if (closing.size() != 1) {
                return none("", ShiftFinding.NOT_ONE);
            }
            String name = closing.iterator().next();
            double share = Math.abs(to.applied().get(name).torqueShare());
            double slip = Math.abs(from.open().getOrDefault(name, 0.0)) * asked.speed() * 2 * Math.PI;
            if (slip == 0 || share == 0) {
                return none(name, ShiftFinding.STATIC);
            }
            return state().map(state -> closing(name, share, slip, state)).orElse(none(name, ShiftFinding.NO_STATE));
        }

        /** In the new range, the turbine at the speed that it falls to. */
        private Optional<Solution> state() {
            double after = asked.speed() * ratio(to) / ratio(from);
            DutyPoint duty = TorqueConditions.of(unit, to, after).duty(asked.torque(), after);
            return new hotidle.newton.SteadySolver(unit.network())
                    .solve(unit.conditions(duty), Optional.empty())
                    .state();
        }

        private ShiftHeat closing(String name, double share, double slip, Solution state) {
            Placed placed = unit.network().part(name).orElseThrow();
            Clutch clutch = (Clutch) placed.part();
            double pressure = state.pressure(placed.nodes().get(0));
            double torque = clutch.capacity(pressure, 0, true);
            double falls = asked.speed() * 2 * Math.PI * (1 - ratio(to) / ratio(from));
            if (!(torque / share > asked.torque())) {
                return none(name, ShiftFinding.NEVER);
            }
            ClosingClutch closes = new ClosingClutch(
                    torque / share, falls, asked.inertia(), asked.torque(), Double.POSITIVE_INFINITY, 0);
            OptionalDouble area = area(clutch);
            double heat = torque * slip * closes.time() / 2;
            return new ShiftHeat(
                    from.name(),
                    to.name(),
                    name,
                    ShiftFinding.FOUND,
                    Optional.of(new Closing(
                            pressure,
                            torque,
                            share * asked.torque(),
                            slip,
                            closes.time(),
                            heat,
                            torque * slip,
                            area,
                            area.isPresent()
                                    ? OptionalDouble.of(ClosingClutch.rise(
                                            heat / area.getAsDouble(), asked.plate(), STEEL_DENSITY, STEEL_HEAT))
                                    : area)));
        }

        private static OptionalDouble area(Clutch clutch) {
            return clutch.grip() instanceof Lining lining
                    ? OptionalDouble.of(lining.surfaces()
                            * Math.PI
                            * (lining.outer() * lining.outer() - lining.inner() * lining.inner()))
                    : OptionalDouble.empty();
        }
    }
}
