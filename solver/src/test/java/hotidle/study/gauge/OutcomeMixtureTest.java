package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.transmission.Adjustable;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a further reading would show, given those that were taken. */
class OutcomeMixtureTest {

    private static final Adjustable BUILD = Tapped.build();
    private static final double GAUGE = 2000;
    private static List<GaugeReading> taken;
    private static GaugeModel model;

    /** Of a unit whose line is read once more, at the first test point. */
    @BeforeAll
    static void read() {
        taken = Tapped.readings(fault("spring-weak@regulator").in(BUILD, 0.5).orElseThrow());
        List<GaugeReading.Row> rows =
                new ArrayList<>(taken.stream().map(GaugeReading::row).toList());
        rows.add(taken.get(0).row());
        Tolerances tolerances = Tolerances.of(BUILD);
        model = new GaugeModel(tolerances, tolerances.shifts(), rows);
    }

    private static UnitFault fault(String name) {
        return UnitFaults.of(BUILD).stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static OutcomeMixture of(String name, double low, double best, double high) {
        Cause cause = new Cause(fault(name), best, low, high, 0, 1, 0, true);
        return OutcomeMixture.of(cause, model, taken, new double[] {GAUGE}).orElseThrow();
    }

    private static double sum(OutcomeMixture outcomes, double times) {
        double low = outcomes.low(0);
        double width = (outcomes.high(0) - low) / 5000;
        double sum = 0;
        for (int k = 0; k < 5000; k++) {
            double reading = low + (k + 0.5) * width;
            sum += outcomes.density(0, reading) * width * Math.pow(reading, times);
        }
        return sum / Math.sqrt(2 * Math.PI);
    }

    @Test
    void whatAGaugeMayShowIsCertainToBeSomething() {
        assertEquals(1, sum(of("spring-weak@regulator", 0.3, 0.5, 0.7), 0), 1e-3);
        assertEquals(1, sum(of("check-ball-missing@check", 1, 1, 1), 0), 1e-3);
    }

    @Test
    void aTapThatIsReadOnceMoreShowsWhatItShowed() {
        OutcomeMixture outcomes = of("spring-weak@regulator", 0.3, 0.5, 0.7);
        double deviation = Math.sqrt(sum(outcomes, 2) - Math.pow(sum(outcomes, 1), 2));
        assertEquals(taken.get(0).value(), sum(outcomes, 1), deviation);
        assertTrue(deviation < 1.5 * Math.hypot(GAUGE, taken.get(0).deviation()), "deviation " + deviation);
    }

    @Test
    void aSizeThatIsKnownLeavesNoMoreOpenThanOneThatIsNot() {
        OutcomeMixture known = of("spring-weak@regulator", 0.5, 0.5, 0.5);
        OutcomeMixture open = of("spring-weak@regulator", 0.4, 0.5, 0.6);
        assertTrue(known.high(0) - known.low(0) < open.high(0) - open.low(0));
    }
}
