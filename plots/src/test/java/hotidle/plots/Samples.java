package hotidle.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** Charts with invented numbers. */
final class Samples {
    private static final String NOTE = "double pump, third range, 95 °C, invented data";

    private Samples() {}

    /** Speeds of a sweep, 400 to 4000 rpm. */
    static List<Double> speeds() {
        return IntStream.rangeClosed(0, 72).mapToObj(i -> 400.0 + 50 * i).toList();
    }

    /** A curve that follows the function. */
    static PressureCurve curve(
            String build, double set, DoubleUnaryOperator pressure, OptionalDouble onset, OptionalDouble unloads) {
        return new PressureCurve(
                build,
                speeds().stream()
                        .map(speed -> new PressureCurve.SweepPoint(speed, pressure.applyAsDouble(speed)))
                        .toList(),
                set,
                onset,
                unloads);
    }

    /** Rises with speed, from the onset on nearly level. */
    static PressureCurve held(String build, double set, double onset, double unloads) {
        return curve(
                build,
                set,
                n -> n < onset
                        ? set * Math.pow(n / onset, 1.3)
                        : set * (1 + 2.7e-5 * (n - onset) + (n > unloads ? 0.027 + 1.3e-5 * (n - unloads) : 0)),
                OptionalDouble.of(Math.max(400, onset)),
                OptionalDouble.of(unloads));
    }

    /** Never reaches its set pressure. */
    static PressureCurve starved(String build, double set) {
        return curve(
                build,
                set,
                n -> 0.93 * set * (1 - Math.exp(-n / 1500)),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** The same with a hole from 900 to 1100 rpm and a state that stands alone in it. */
    static PressureCurve holed(PressureCurve curve) {
        return new PressureCurve(
                curve.build(),
                curve.points().stream()
                        .map(point -> point.speed() >= 900 && point.speed() <= 1100 && point.speed() != 1000
                                ? new PressureCurve.SweepPoint(point.speed(), Double.NaN)
                                : point)
                        .toList(),
                curve.set(),
                curve.onset(),
                curve.unloads());
    }

    /** Four builds. */
    static SpeedChart speed() {
        return new SpeedChart(
                "Line pressure against speed",
                NOTE,
                "psi",
                List.of(
                        held("new", 150, 380, 900),
                        holed(held("worn", 150, 1430, 2900)),
                        starved("worn at 270", 270),
                        held("restored at 270", 270, 690, 1700)));
    }

    /** Builds that crowd: the same set pressure and onsets close together. */
    static SpeedChart crowded() {
        return new SpeedChart(
                "Line pressure against speed",
                NOTE,
                "bar",
                List.of(
                        held("new", 10.3, 610, 1300),
                        held("bore 12 worn", 10.3, 650, 1330),
                        held("hub bushing worn", 10.3, 700, 1360),
                        held("pump faces worn", 10.3, 760, 1420),
                        held("body not flat", 10.3, 800, 1500),
                        held("all of these", 10.3, 1430, 2600)));
    }

    /** Where the oil of a build goes; the leaks are this much larger than when new. */
    static OilChart oil(String build, double leaks) {
        List<String> names = List.of(
                "lube",
                "cooler",
                "converter",
                "solenoids",
                "rings",
                "plate",
                "valve body",
                "hub",
                "pump slip",
                "recirculated");
        List<List<Double>> flows = new ArrayList<>();
        names.forEach(name -> flows.add(new ArrayList<>()));
        for (double n : speeds()) {
            double swept = 0.036 * n * (n > 3600 ? 1 - (n - 3600) / 4000 : 1);
            double p = Math.min(1, n / 900);
            double[] wants = {
                4 * p,
                7 * p,
                1.5 * p,
                1.2 * p,
                0.5 * leaks * p,
                0.7 * leaks * p,
                1.1 * leaks * p,
                0.4 * leaks * p,
                2.5 * p + 0.4 * leaks * p
            };
            double left = swept;
            for (int i = 0; i < wants.length; i++) {
                double flow = Math.min(left, wants[i]);
                flows.get(i).add(flow);
                left -= flow;
            }
            flows.get(wants.length).add(left);
        }
        List<OilChart.FlowBand> bands = IntStream.range(0, names.size())
                .mapToObj(i -> new OilChart.FlowBand(names.get(i), flows.get(i)))
                .toList();
        return new OilChart("Where the oil goes: " + build, NOTE, "L/min", speeds(), bands, 0.036);
    }

    /** The same with all bands unknown at 1000 to 1150 rpm. */
    static OilChart holed(OilChart chart) {
        return new OilChart(
                chart.title(),
                chart.subtitle(),
                chart.unit(),
                chart.speeds(),
                chart.bands().stream()
                        .map(band -> new OilChart.FlowBand(
                                band.name(),
                                IntStream.range(0, chart.speeds().size())
                                        .mapToObj(i -> i >= 12 && i <= 15
                                                ? Double.valueOf(Double.NaN)
                                                : band.flows().get(i))
                                        .toList()))
                        .toList(),
                chart.displacement());
    }

    /** A speed chart and this many oil charts. */
    static Picture page(int oils) {
        List<Chart> charts = new ArrayList<>();
        charts.add(speed());
        List<Chart> all =
                List.of(oil("new", 1), holed(oil("worn", 5)), oil("worn at 270", 7), oil("restored at 270", 1.4));
        charts.addAll(all.subList(0, oils));
        return new Picture(charts);
    }
}
