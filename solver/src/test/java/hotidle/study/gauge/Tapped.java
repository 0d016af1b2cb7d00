package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.newton.SteadySolver;
import hotidle.result.Solution;
import hotidle.study.Fits;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Tap;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The ten nodes with gauges at line, converter, lubrication and pilot. */
public final class Tapped {

    private Tapped() {}

    static final double HOT = 383.15;
    static final double GAUGE = 0.01;

    public static Adjustable build() {
        Adjustable fits = Fits.worn(1);
        return new Adjustable(
                tapped(fits.unit()),
                fits.dimensions(),
                sizes -> tapped(fits.remake().with(sizes)));
    }

    private static Transmission tapped(Transmission unit) {
        return new Transmission(
                unit.circuit(),
                unit.build(),
                unit.network(),
                unit.oil(),
                unit.ambient(),
                unit.ranges(),
                unit.commanded(),
                unit.duties(),
                Stream.of("line", "converter", "lube", "pilot")
                        .map(node -> new Tap(node, node, "case", "nothing"))
                        .toList());
    }

    static TestPoint at(double rpm) {
        return new TestPoint(rpm / 60, HOT, "first", OptionalDouble.empty(), OptionalDouble.empty());
    }

    static Solution solved(Transmission unit, TestPoint point) {
        return new SteadySolver(unit.network())
                .solve(point.conditions(unit))
                .state()
                .orElseThrow();
    }

    /** What three of them say of a unit with one fault, the first of all half way to its largest. */
    public static GaugeDiagnosis sick() {
        Adjustable build = build();
        UnitFault fault = UnitFaults.of(build).get(0);
        List<GaugeReading> all = readings(fault.in(build, fault.sizeAt(0.5)).orElseThrow());
        return GaugeDiagnosis.of(build, all.subList(0, 3), () -> {});
    }

    /** What the gauges and the cooler's flow meter show on a unit, without any error, at two speeds. */
    static List<GaugeReading> readings(Transmission unit) {
        List<GaugeReading> readings = new ArrayList<>();
        for (double rpm : new double[] {650, 1500}) {
            Solution state = solved(unit, at(rpm));
            for (Meter meter : Meter.of(unit)) {
                if (!meter.name().startsWith("lube-")) {
                    double value =
                            meter.reads() == Meter.Reads.FLOW ? state.flow(meter.name()) : state.pressure(meter.node());
                    readings.add(new GaugeReading(meter, at(rpm), GaugeReading.Sense.EXACT, value, GAUGE * value));
                }
            }
        }
        return readings;
    }
}
