package hotidle.part;

import hotidle.law.Channel;
import java.util.List;
import java.util.Map;

/**
 * A mechanical valve that makes a pressure from its supply: throttle valve, vacuum modulator or governor. Its openings and its droop
 * are those of {@link Solenoid}; what it is asked for is a force that the vehicle puts on it, over the area that pushes back.
 *
 * @param valve  feed, exhaust and droop
 * @param demand what it is asked for
 */
public record SignalValve(Solenoid valve, Demand demand) implements Part {

    /** What a mechanical valve is asked for. */
    public sealed interface Demand permits ThrottleSpring, Diaphragm, FlyWeights {
        /**
         * The pressure that balances it [Pa], never below zero.
         *
         * @param sensed what it feels
         */
        double pressure(Sensed sensed);
    }

    /** That spring, vacuum or weights ask for. */
    public static final Measure ASKED =
            new Measure("asked_pilot_pa", Measure.QuantityKind.PRESSURE, "that spring, vacuum or weights ask for");

    @Override
    public List<Measure> measures() {
        return List.of(ASKED, Solenoid.OPENING_SHARE);
    }

    @Override
    public Map<String, Channel> channels() {
        return valve.channels();
    }

    @Override
    public Form form() {
        return valve.form();
    }

    @Override
    public Law law(Setting setting) {
        double asked = demand.pressure(setting.sensed());
        Law law = valve.law(asked, setting.oil());
        return new Law() {
            @Override
            public void evaluate(Reading in, Stamp out) {
                law.evaluate(in, out);
            }

            @Override
            public Iterable<Stream> streams(Reading in) {
                return law.streams(in);
            }

            @Override
            public List<Measure.Reported> measures(Reading in) {
                return List.of(ASKED.of(asked), Solenoid.OPENING_SHARE.of(in.state(0)));
            }
        };
    }
}
