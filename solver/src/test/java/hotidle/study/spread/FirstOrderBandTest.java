package hotidle.study.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.newton.SteadySolver;
import hotidle.study.Fits;
import hotidle.study.SpeedSweep;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

/** Bands by slopes against units that are drawn and solved. */
class FirstOrderBandTest {

    private static final int UNITS = 150;

    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(1, 50).mapToObj(i -> 100.0 * i / 60).toList();

    private static SpreadQuestion question(double wear, Unmeasured.FitState taken) {
        Adjustable build = Fits.worn(wear);
        return new SpreadQuestion(build, Unmeasured.of(build, taken), List.of("hot-idle"), 1, 0, 1);
    }

    private record Drawn(SummaryStatistics line, SummaryStatistics holds) {}

    /** Units drawn as spread draws them, each solved and swept whole. */
    private static Drawn drawn(SpreadQuestion question) {
        Drawn drawn = new Drawn(new SummaryStatistics(), new SummaryStatistics());
        List<Transmission> units = new ArrayList<>();
        for (double[] shares :
                LatinHypercube.block(1, 1, 0, UNITS, question.sizes().size())) {
            question.unit(shares).ifPresent(units::add);
        }
        for (Transmission unit : units) {
            var duty = unit.duties().get(0);
            new SteadySolver(unit.network())
                    .solve(unit.conditions(duty))
                    .state()
                    .ifPresent(state -> drawn.line().addValue(state.pressure("line")));
            SpeedSweep.run(unit, duty, SPEEDS).onset().ifPresent(drawn.holds()::addValue);
        }
        return drawn;
    }

    /** The law of slip is left out of units that are drawn. */
    private static double share(FirstOrderBand.MiddleAndDeviation band, SummaryStatistics drawn) {
        return band.deviation() / drawn.getStandardDeviation();
    }

    @Test
    void soundFitsAreNearlyLinear() {
        SpreadQuestion question = question(3, Unmeasured.FitState.SOUND);
        FirstOrderBand bands = FirstOrderBand.of(question, "hot-idle", SPEEDS).orElseThrow();
        Drawn drawn = drawn(question);
        FirstOrderBand.MiddleAndDeviation holds = bands.holds().orElseThrow();
        assertEquals(drawn.holds().getMean(), holds.middle(), 0.03 * holds.middle());
        assertTrue(share(holds, drawn.holds()) > 0.8, share(holds, drawn.holds()) + " of the speed's deviation");
        FirstOrderBand.MiddleAndDeviation line = bands.line().orElseThrow();
        assertEquals(drawn.line().getMean(), line.middle(), 0.03 * line.middle());
        assertTrue(share(line, drawn.line()) > 0.8, share(line, drawn.line()) + " of the line's");
        assertTrue(holds.low() < holds.middle() && holds.middle() < holds.high());
    }

    @Test
    void wornFitsAreOnlyRoughly() {
        SpreadQuestion question = question(1, Unmeasured.FitState.WORN);
        FirstOrderBand bands = FirstOrderBand.of(question, "hot-idle", SPEEDS).orElseThrow();
        Drawn drawn = drawn(question);
        FirstOrderBand.MiddleAndDeviation holds = bands.holds().orElseThrow();
        assertEquals(drawn.holds().getMean(), holds.middle(), 0.2 * holds.middle());
        double share = share(holds, drawn.holds());
        assertTrue(share > 0.5 && share < 1, share + ": rather too narrow, since leaks grow with the cube");
        assertEquals(question.sizes().size(), bands.sizes());
        assertEquals(Optional.empty(), bands.line(), "held in the middle unit, and not in many that are drawn");
    }

    @Test
    void whereAllIsMeasuredThereIsNoBand() {
        SpreadQuestion none = new SpreadQuestion(Fits.worn(1), List.of(), List.of("hot-idle"), 1, 0, 1);
        assertTrue(FirstOrderBand.of(none, "hot-idle", SPEEDS).isEmpty());
    }
}
