package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.study.gauge.GaugeDiagnosis;
import hotidle.study.gauge.Tapped;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a study finds is the same to the last bit on one thread and on several. */
class SameBitsTest {

    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(2, 12).mapToObj(i -> 250.0 * i / 60).toList();
    private static final List<Double> PRESSURES =
            IntStream.rangeClosed(1, 4).mapToObj(i -> i * 50 * TenNodes.PSI).toList();

    /** All digits of all numbers in it; maps and lists print in their order. */
    private static <T> void same(Callable<T> study) throws Exception {
        assertEquals(on(1, study).toString(), on(4, study).toString());
    }

    private static <T> T on(int threads, Callable<T> study) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(study).get();
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void buildsSideBySide() throws Exception {
        List<Transmission> units = List.of(TenNodes.worn(1), TenNodes.worn(3));
        same(() -> Comparison.of(units, SPEEDS).cells().stream()
                .map(cell -> cell.outcome().toString()
                        + cell.sweep().rising()
                        + cell.sweep().onset()
                        + cell.sweep().unloading())
                .toList());
    }

    @Test
    void theBandsOfSpoolsThatStick() throws Exception {
        List<Transmission> units =
                List.of(FrictionBandTest.sticking(TenNodes.worn(1), 4), FrictionBandTest.sticking(TenNodes.worn(3), 4));
        same(() -> {
            Comparison builds = Comparison.of(units, SPEEDS);
            List<SpeedSweep> sweeps =
                    builds.cells().stream().map(Comparison.BuildAtDuty::sweep).toList();
            FrictionBands atDuties = FrictionBands.of(builds);
            FrictionBands overSpeed = FrictionBands.of(sweeps);
            List<FrictionBand> found = Stream.concat(
                            builds.cells().stream()
                                    .flatMap(cell -> cell.outcome().state().stream())
                                    .flatMap(state -> atDuties.of(state).stream()),
                            sweeps.stream()
                                    .flatMap(sweep -> sweep.states().stream())
                                    .flatMap(state -> overSpeed.of(state).stream()))
                    .toList();
            assertTrue(found.size() > builds.cells().size(), found.size() + " bands");
            return found;
        });
    }

    @Test
    void theWindow() throws Exception {
        Transmission unit = TenNodes.worn(3);
        same(() -> Window.study(unit, PRESSURES, SPEEDS, () -> {}));
    }

    @Test
    void wear() throws Exception {
        Adjustable build = Fits.worn(1);
        same(() -> Wear.study(build, Wear.fits(build), SPEEDS, () -> {}));
    }

    @Test
    void theMap() throws Exception {
        Adjustable build = Fits.worn(1);
        WearSize size = Wear.fits(build).get(0);
        List<Double> values = List.of(size.value(), size.value() + size.allowance() / 2);
        WindowMap.Axis axis = new WindowMap.Axis(size.name(), size, 0);
        same(() -> WindowMap.study(
                build,
                axis,
                PRESSURES,
                hotidle.transmission.SetPressure.By.COMMAND_AND_SPRING,
                values,
                SPEEDS,
                () -> {}));
    }

    @Test
    void theRepairs() throws Exception {
        Adjustable build = Fits.worn(1);
        same(() -> Repairs.study(build, build.unit().duties().get(0), SPEEDS, 3, () -> {}));
    }

    @Test
    void theSensitivity() throws Exception {
        Adjustable build = Fits.worn(1);
        same(() -> {
            Sensitivity found = Sensitivity.study(build, SPEEDS, () -> {});
            return found.margins().toString() + found.rates();
        });
    }

    /** Causes, pairs of causes and what to read next, of a unit whose readings one fault has moved. */
    @Test
    void whatGaugesSayOfASickUnit() throws Exception {
        same(() -> {
            GaugeDiagnosis found = Tapped.sick();
            assertTrue(found.findings().pairs().size() > 1 && found.next().size() > 1, "there is something to compare");
            return found.findings().causes().stream()
                            .map(cause -> cause.fault().name()
                                    + cause.size()
                                    + cause.low()
                                    + cause.high()
                                    + cause.chiSquare()
                                    + cause.share()
                                    + cause.hidden())
                            .toList()
                    + found.findings().pairs().stream()
                            .map(pair -> pair.one().fault().name()
                                    + pair.one().size()
                                    + pair.other().fault().name()
                                    + pair.other().size()
                                    + pair.share()
                                    + pair.chiSquare())
                            .toList()
                            .toString()
                    + found.next().stream()
                            .map(next -> next.row().toString()
                                    + next.information()
                                    + next.sound()
                                    + next.predicted().stream()
                                            .map(one -> one.cause().fault().name() + one.value())
                                            .toList())
                            .toList();
        });
    }

    @Test
    void theChangesOfASpring() throws Exception {
        Transmission unit = TenNodes.worn(1);
        same(() -> SpringStudy.of(unit, 1.1 * unit.highestSet()));
    }
}
