package hotidle.answer.sweep;

import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.Rpm;
import hotidle.answer.phrase.EnlargedPhrase;
import hotidle.answer.phrase.SweepPhrase;
import hotidle.assess.Figures;
import hotidle.circuits.DescribedCircuit;
import hotidle.network.Group;
import hotidle.part.PumpChamber;
import hotidle.plots.Chart;
import hotidle.plots.Enlargement;
import hotidle.plots.OilChart;
import hotidle.plots.OtherUnit;
import hotidle.plots.Picture;
import hotidle.plots.PressureCurve;
import hotidle.plots.SpeedChart;
import hotidle.study.ShownState;
import hotidle.study.SpeedSweep;
import hotidle.study.gauge.GaugeReading;
import hotidle.transmission.DutyPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** The picture of a sweep: line pressure of every build, and where the oil of each goes. */
final class SweepPicture {

    /** More charts of oil than these would be too small to read (chosen). Beside so many the low speeds have no room. */
    static final int MOST_OIL_CHARTS = 4;

    private SweepPicture() {}

    static Picture of(
            DescribedCircuit circuit, List<SpeedSweep> sweeps, Quantity.UnitSystem units, List<GaugeReading> read) {
        SpeedChart pressure = pressure(circuit, sweeps, units, read);
        List<OilChart> oil = sweeps.stream()
                .limit(MOST_OIL_CHARTS)
                .map(sweep -> oil(sweeps, sweep, units))
                .toList();
        List<Chart> charts = new ArrayList<>(List.of(pressure));
        OptionalDouble low = oil.size() < MOST_OIL_CHARTS ? LowSpeeds.of(sweeps) : OptionalDouble.empty();
        low.ifPresent(speed -> charts.add(Enlargement.of(pressure, speed, EnlargedPhrase.pressure(speed))));
        charts.addAll(oil);
        if (sweeps.size() == 1) {
            low.ifPresent(speed -> charts.add(
                    Enlargement.of(oil.get(0), speed, EnlargedPhrase.oil(name(sweeps, sweeps.get(0), units), speed))));
        }
        return new Picture(charts);
    }

    static SpeedChart pressure(
            DescribedCircuit circuit, List<SpeedSweep> sweeps, Quantity.UnitSystem units, List<GaugeReading> read) {
        List<PressureCurve> curves = sweeps.stream()
                .limit(SpeedChart.MOST_CURVES)
                .map(sweep -> new PressureCurve(
                        name(sweeps, sweep, units),
                        points(sweep, units),
                        Quantity.PRESSURE.value(
                                units,
                                sweep.unit()
                                        .setPressure(sweep.unit().conditions(sweep.duty()))
                                        .orElse(Double.NaN)),
                        Rpm.of(sweep.onset()),
                        Rpm.of(unloaded(sweep))))
                .toList();
        return new SpeedChart(
                new ChartTitles(units, sweeps).pressure(),
                subtitle(circuit, sweeps, units),
                Quantity.PRESSURE.in(units).unit(),
                curves,
                new ReadPoints(units, read)
                        .of(
                                sweeps.get(0).unit().command().line(),
                                curves.get(0).low(),
                                curves.get(0).high()),
                other(Quantity.PRESSURE, units));
    }

    /** From where the second chamber balances no side load any more, the one event that charts over speed mark; empty without one. */
    static OptionalDouble unloaded(SpeedSweep sweep) {
        return sweep.roles().secondary().isPresent() ? sweep.bypassing() : OptionalDouble.empty();
    }

    private static List<PressureCurve.SweepPoint> points(SpeedSweep sweep, Quantity.UnitSystem units) {
        return sweep.drawn().stream()
                .map(state -> new PressureCurve.SweepPoint(
                        rpm(state), figure(state, f -> Quantity.PRESSURE.value(units, f.line()))))
                .toList();
    }

    /** Circuit, duty and, where all sweeps have the same, temperature. */
    static String subtitle(DescribedCircuit circuit, List<SpeedSweep> sweeps, Quantity.UnitSystem units) {
        DutyPoint duty = sweeps.get(0).duty();
        return circuit.name() + ", "
                + (oneSump(sweeps, units)
                        ? new SweepPhrase(units)
                                .duty(
                                        duty.name(),
                                        duty.range(),
                                        duty.temperatures().get("sump"))
                        : SweepPhrase.duty(duty.name(), duty.range()))
                + "; " + circuit.about();
    }

    private static boolean oneSump(List<SpeedSweep> sweeps, Quantity.UnitSystem units) {
        return sweeps.stream().map(sweep -> sump(sweep, units)).distinct().count() == 1;
    }

    /** The build, and its temperature where several are shown. */
    static String name(List<SpeedSweep> all, SpeedSweep sweep, Quantity.UnitSystem units) {
        List<Double> sumps = all.stream().map(other -> sump(other, units)).toList();
        String build = sweep.unit().build();
        return oneSump(all, units)
                ? build
                : build + " at " + Digits.apart(sump(sweep, units), sumps, 'f', 0) + " "
                        + Quantity.TEMPERATURE.in(units).unit();
    }

    private static double sump(SpeedSweep sweep, Quantity.UnitSystem units) {
        return Quantity.TEMPERATURE.value(units, sweep.duty().temperatures().get("sump"));
    }

    static OilChart oil(List<SpeedSweep> all, SpeedSweep sweep, Quantity.UnitSystem units) {
        List<OilChart.FlowBand> bands = new ArrayList<>();
        bands.add(band("pump slip", sweep, units, Figures::slip));
        for (Group group : Group.values()) {
            if (group.leak()) {
                bands.add(band(
                        group == Group.PUMP ? "pump cover" : group.label() + " leak",
                        sweep,
                        units,
                        f -> f.leaks().getOrDefault(group, 0.0)));
            }
        }
        bands.add(band("solenoids", sweep, units, f -> f.used().getOrDefault(Group.SOLENOIDS, 0.0)));
        bands.add(band(
                "lubrication and converter",
                sweep,
                units,
                f -> f.used().entrySet().stream()
                        .filter(entry -> entry.getKey() != Group.SOLENOIDS)
                        .mapToDouble(Map.Entry::getValue)
                        .sum()));
        OilChart.FlowBand spilled = band("spilled by relief and limit valves", sweep, units, Figures::spilled);
        if (spilled.flows().stream().anyMatch(flow -> flow > 0)) {
            bands.add(spilled);
        }
        OilChart.FlowBand back = band("sent back by the regulator", sweep, units, Figures::recirculated);
        if (back.flows().stream().anyMatch(flow -> flow > 0)) {
            bands.add(new OilChart.FlowBand(back.name(), back.flows(), true));
        }
        double swept = sweep.roles().chambers().stream()
                .mapToDouble(chamber -> ((PumpChamber) chamber.part()).displacement())
                .sum();
        List<Double> speeds = sweep.drawn().stream().map(SweepPicture::rpm).toList();
        return new OilChart(
                new ChartTitles(units, all).oil(sweep),
                "",
                Quantity.FLOW.in(units).unit(),
                speeds,
                bands,
                Quantity.FLOW.value(units, swept / 60),
                other(Quantity.FLOW, units));
    }

    /** The unit that a shop would use too. */
    private static Optional<OtherUnit> other(Quantity quantity, Quantity.UnitSystem units) {
        if (units == Quantity.UnitSystem.SI) {
            return Optional.empty();
        }
        Quantity.Shown shown = quantity.in(units);
        Quantity.Shown other =
                quantity.in(units == Quantity.UnitSystem.SHOP ? Quantity.UnitSystem.METRIC : Quantity.UnitSystem.SHOP);
        return Optional.of(new OtherUnit(other.unit(), other.factor() / shown.factor()));
    }

    private static OilChart.FlowBand band(
            String name, SpeedSweep sweep, Quantity.UnitSystem units, ToDoubleFunction<Figures> flow) {
        return new OilChart.FlowBand(name, figures(sweep, f -> Quantity.FLOW.value(units, flow.applyAsDouble(f))));
    }

    private static double rpm(ShownState state) {
        return Rpm.of(state.speed());
    }

    /** A figure at each speed, not a number where the state is unsolved. */
    private static List<Double> figures(SpeedSweep sweep, ToDoubleFunction<Figures> figure) {
        return sweep.drawn().stream().map(state -> figure(state, figure)).toList();
    }

    private static double figure(ShownState state, ToDoubleFunction<Figures> figure) {
        return state.assessed()
                .map(found -> figure.applyAsDouble(found.figures()))
                .orElse(Double.NaN);
    }
}
