package hotidle.part;

import hotidle.oil.OilAt;
import java.util.List;

/**
 * The pump's inlet: oil leaves it only down to the pressure at which air is released in the spaces between the teeth. From there on
 * the chambers fill in part.
 *
 * <pre>
 * Port       its loss and the head of the speed in it, ζ·ρ/2·(V·n·φ/A)²: a = ζ/2·(V/A)². ζ is 1.5 for a sharp edge, 0.5 for the entry
 *            and 1 for the speed, which is not got back; B. S. Massey, Mechanics of Fluids, §7.6 (from memory)
 * Teeth      a space filled from its tips turns like a solid body: at its root the pressure is lower by ρ/2·(2·π·n)²·(ra² − rf²); of
 *            the head of the tips' speed, ρ/2·(2·π·n·ra)², a share κ presses the oil in. Hence b = 2·π²·(ra² − rf² − κ·ra²) times
 *            the square of the gear's speed over the engine's; derived here, κ is not known. Where the root is below the release pressure, the oil reaches in only as far as it is not: a filled share φ of the space needs b·φ
 * Filling    state φ between 0 and 1 with the balance F = p_release − p + ρ·n²·(a·φ² + b·φ): full (φ = 1) above the release pressure,
 *            part filled at it. Both chambers of a double pump read the same φ
 * Range      the fastest gear speaks for all: the pump may fill to a somewhat higher speed than is said. Each tenth of κ is worth
 *            some 10 to 15 % of that speed
 * </pre>
 *
 * @param port a [m²], 0 for a port without a loss
 * @param spun b [m²], 0 where nothing spins
 */
public record PumpInlet(double port, double spun) implements Part {

    /** An inlet that loses nothing. */
    public static final PumpInlet WIDE = new PumpInlet(0, 0);

    /** At the roots of the teeth, as far as they are filled. */
    public static final Measure ROOT_PRESSURE = new Measure(
            "root_pressure_pa", Measure.QuantityKind.PRESSURE, "at the roots of the teeth, as far as they are filled");

    /** Up to which the pump fills with this pressure at its inlet, over its speed; not given where nothing limits it. */
    public static final Measure FULL_SPEED = new Measure(
            "full_speed_ratio",
            Measure.QuantityKind.NUMBER,
            "up to which the pump fills with this pressure at its inlet, over its speed");

    /** How far the chambers are filled [-]: below 1 the inlet is starved. */
    public static final OwnState FILLING = new OwnState("filling");

    /** A change of filling of 1 moves the inlet by something like 1 bar; it is judged against the same [Pa]. */
    private static final double SCALE = 1e5;

    private static final Form FORM =
            new Form(List.of("inlet"), List.of(new Form.Unknown(FILLING, 0, 1, 1, SCALE, SCALE)), List.of());

    public PumpInlet {
        Check.within("loss of the port", port, 0, 1e3);
        Check.within("spin of the teeth", spun, 0, 1e3);
    }

    @Override
    public List<Measure> measures() {
        return List.of(ROOT_PRESSURE, FULL_SPEED);
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public Law law(Setting setting) {
        return new Inlet(this, setting.oil(), setting.speed());
    }

    private record Inlet(PumpInlet inlet, OilAt oil, double speed) implements Law {

        @Override
        public Law atSpeed(double other) {
            return new Inlet(inlet, oil, other);
        }

        /** Liquid oil: what air there is makes it no heavier [Pa]. */
        private double dynamic() {
            return oil.liquidDensity() * speed * speed;
        }

        private double lost(double filling) {
            return dynamic() * (inlet.port * filling * filling + inlet.spun * filling);
        }

        @Override
        public void evaluate(Reading in, Stamp out) {
            double filling = in.state(0);
            out.balance(0, oil.release() - in.pressure(0) + lost(filling));
            out.balanceSlope(0, in.port(0), -1);
            out.balanceSlope(0, in.own(0), dynamic() * (2 * inlet.port * filling + inlet.spun));
        }

        @Override
        public List<Stream> streams(Reading in) {
            return List.of();
        }

        @Override
        public List<Measure.Reported> measures(Reading in) {
            Measure.Reported root = ROOT_PRESSURE.of(in.pressure(0) - lost(in.state(0)));
            double full = lost(1);
            return full > 0
                    ? List.of(root, FULL_SPEED.of(Math.sqrt(Math.max(in.pressure(0) - oil.release(), 0) / full)))
                    : List.of(root);
        }
    }
}
