package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** What is not known of a unit moves its readings as new solves say. */
class GaugeModelTest {

    private static final DescribedCircuit CIRCUIT = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow();

    /** Number of the row that reads a flow, whose density does not count in the slope. */
    private static final int COOLER = 2;

    private static List<GaugeReading.Row> rows(Transmission unit) {
        TestPoint idle = new TestPoint(650 / 60.0, 383.15, "first", OptionalDouble.empty(), OptionalDouble.empty());
        TestPoint fast = new TestPoint(1500 / 60.0, 353.15, "third", OptionalDouble.empty(), OptionalDouble.empty());
        return List.of(
                new GaugeReading.Row(Meter.of(unit, "line").orElseThrow(), idle),
                new GaugeReading.Row(Meter.of(unit, "low").orElseThrow(), idle),
                new GaugeReading.Row(Meter.of(unit, "cooler").orElseThrow(), idle),
                new GaugeReading.Row(Meter.of(unit, "line").orElseThrow(), fast),
                new GaugeReading.Row(Meter.of(unit, "lube").orElseThrow(), fast));
    }

    /** Where the regulator is shut, as in the worn unit at idle, and where it holds the line. */
    @Test
    void theAdjointMovesEachReadingAsTwoNewSolvesDo() {
        for (String name : List.of("fresh", "worn")) {
            Adjustable build = CIRCUIT.adjustable(name);
            Transmission unit = build.unit();
            Tolerances small = new Tolerances(
                    build,
                    Tolerances.of(build).sizes().entrySet().stream()
                            .collect(java.util.stream.Collectors.toMap(
                                    java.util.Map.Entry::getKey, size -> size.getValue() / 100)));
            List<Tolerances.Shift> shifts = small.shifts();
            GaugeModel model = new GaugeModel(small, shifts, rows(unit));
            Expectation.Slopes slopes =
                    model.slopes(model.series(), unit, shifts).orElseThrow();
            int moved = 0;
            for (int k = 0; k < shifts.size(); k++) {
                double[] up = model.read(model.series(), unit.with(shifts.get(k).up(), List.of()))
                        .orElseThrow();
                double[] down = model.read(
                                model.series(), unit.with(shifts.get(k).down(), List.of()))
                        .orElseThrow();
                for (int i = 0; i < up.length; i++) {
                    double solved = up[i] - down[i];
                    double read = Math.abs(slopes.mean().getEntry(i));
                    assertEquals(
                            solved,
                            slopes.slopes().getEntry(i, k),
                            (i == COOLER ? 1e-2 : 2e-3) * Math.abs(solved) + 1e-8 * read,
                            name + ": " + shifts.get(k).name() + " on reading " + i);
                    moved += Math.abs(solved) > 1e-6 * read ? 1 : 0;
                }
            }
            // a regulator that holds the line lets few sizes be seen
            assertTrue(moved > (name.equals("worn") ? 50 : 20), moved + " readings are moved by a size of " + name);
        }
    }

    @Test
    void theSameTolerancesCountForMoreWhereTheRegulatorIsShut() {
        Adjustable fresh = CIRCUIT.adjustable("fresh");
        Adjustable worn = CIRCUIT.adjustable("worn");
        double held = deviation(fresh);
        double shut = deviation(worn);
        assertTrue(shut > 1.5 * held, held + " Pa and " + shut + " Pa");
    }

    /** Units whose regulator just holds at this speed: in some of them it does not, and the converter is starved. */
    @Test
    void aLimitValveThatHoldsTheConverterHidesNothingOfHowUnitsDifferInTheOilTheyHaveToSpare() {
        Adjustable worn = CIRCUIT.adjustable("worn");
        GaugeReading.Row row = new GaugeReading.Row(
                Meter.of(worn.unit(), "converter").orElseThrow(),
                new TestPoint(1000 / 60.0, 383.15, "fourth", OptionalDouble.empty(), OptionalDouble.empty()));
        Tolerances tolerances = Tolerances.of(worn);
        GaugeModel model = new GaugeModel(tolerances, tolerances.shifts(), List.of(row));
        List<UnitFault.Sized> weak = List.of(UnitFaults.of(worn).stream()
                .filter(fault -> fault.name().equals("spring-weak@converter-limit"))
                .findFirst()
                .orElseThrow()
                .of(0.35));
        Expectation expected = model.along(model.series(), List.of(weak)).get(0).orElseThrow();
        List<GaugeReading> place = List.of(new GaugeReading(row.meter(), row.at(), GaugeReading.Sense.EXACT, 0, 0));
        TwinDraw draw = new TwinDraw(worn, tolerances, false);
        Random random = new Random(5);
        double square = 0;
        for (int i = 0; i < DRAWN; i++) {
            double read = draw.onStand(weak, random)
                    .orElseThrow()
                    .read(place)
                    .orElseThrow()
                    .get(0)
                    .value();
            square += Math.pow(read - expected.mean().getEntry(0), 2) / DRAWN;
        }
        double told = Math.sqrt(expected.covariance().getEntry(0, 0));
        assertEquals(1, told / Math.sqrt(square), 0.5, told + " Pa told of " + Math.sqrt(square) + " Pa");
    }

    private static final int DRAWN = 40;

    private static double deviation(Adjustable build) {
        Tolerances tolerances = Tolerances.of(build);
        GaugeModel model = new GaugeModel(tolerances, tolerances.shifts(), rows(build.unit()));
        RealMatrix covariance = model.sound(model.series()).covariance();
        return Math.sqrt(covariance.getEntry(0, 0));
    }
}
