package hotidle.answer.compare;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.CompareScreenPhrase;
import hotidle.answer.phrase.LockupPhrase;
import hotidle.answer.phrase.RegulatorPhrase;
import hotidle.answer.phrase.SecondaryPhrase;
import hotidle.answer.phrase.ShortOfOilPhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.assess.Roles;
import hotidle.network.Group;
import hotidle.network.Placed;
import hotidle.part.Converter;
import hotidle.part.OwnState;
import hotidle.part.PumpChamber;
import hotidle.part.Setting;
import hotidle.part.SignalValve;
import hotidle.result.Solution;
import hotidle.study.Comparison;
import hotidle.study.FrictionBands;
import hotidle.study.SpeedSweep;
import hotidle.transmission.Tap;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The lines where line pressure is commanded: those of what the unit has, the same at every duty point. */
record RegulatedRows(Comparison comparison, FrictionBands bands, Quantity.UnitSystem units) {

    List<CompareRow> all() {
        Transmission any = comparison.units().get(0);
        Roles roles = comparison.cells().get(0).roles();
        List<CompareRow> rows = new ArrayList<>(line());
        rows.addAll(slides(any));
        rows.addAll(chambers(roles));
        rows.addAll(consumers(roles));
        if (comparison.cells().stream().anyMatch(cell -> cell.weakestLink().isPresent())) {
            rows.add(new CompareRow(CompareScreenPhrase.LINK, RegulatedRows::weakestLink));
        }
        rows.addAll(List.of(
                figure("pump delivery before slip", Quantity.FLOW, Figures::swept),
                figure("  pump slip", Quantity.FLOW, Figures::slip),
                figure(
                        "    known to +-, fits as measured",
                        Quantity.FLOW,
                        f -> f.slipBand().measured()),
                figure(
                        "    known to +-, fits nominal",
                        Quantity.FLOW,
                        f -> f.slipBand().nominal()),
                figure("  lost to leaks", Quantity.FLOW, Figures::leak),
                figure("  back to the inlet past the regulator", Quantity.FLOW, Figures::recirculated),
                figure(pilots(any), Quantity.FLOW, f -> f.used().getOrDefault(Group.SOLENOIDS, 0.0))));
        if (roles.hub().isPresent()) {
            rows.addAll(new HubRows(units).all());
        }
        rows.add(figure("pump power", Quantity.POWER, Figures::pumpPower));
        any.taps().stream().filter(tap -> !tap.node().equals(roles.line())).forEach(tap -> rows.add(gauge(units, tap)));
        return rows;
    }

    /** What makes its pilot pressures. */
    private static String pilots(Transmission any) {
        boolean mechanical = any.network().parts().stream().anyMatch(placed -> placed.part() instanceof SignalValve);
        return mechanical ? "  used by the pilot valves" : "  used by the solenoids";
    }

    private CompareRow figure(String label, Quantity quantity, ToDoubleFunction<Figures> figure) {
        return CompareRow.figure(units, label, quantity, figure);
    }

    private CompareRow known(String label, Quantity quantity, Function<Figures, OptionalDouble> figure) {
        return CompareRow.known(units, label, quantity, figure);
    }

    private CompareRow reading(String label, Quantity quantity, Function<Solution, OptionalDouble> reading) {
        return CompareRow.reading(units, label, quantity, reading);
    }

    static CompareRow gauge(Quantity.UnitSystem units, Tap tap) {
        return CompareRow.reading(
                units,
                "gauge at " + tap.name(),
                Quantity.PRESSURE,
                state -> OptionalDouble.of(state.pressure(tap.node())));
    }

    private List<CompareRow> line() {
        List<CompareRow> rows = new ArrayList<>(List.of(
                known(CompareScreenPhrase.COMMANDED, Quantity.PRESSURE, Figures::set),
                figure("line pressure", Quantity.PRESSURE, Figures::line),
                known("  rise over set", Quantity.PRESSURE, Figures::override),
                CompareRow.word("  regulator", f -> RegulatorPhrase.of(f.regulator(), f.inletStarved()))));
        if (comparison.units().stream().anyMatch(bands::asked)) {
            rows.add(
                    new CompareRow(CompareRow.headed(units, "  within spool friction", Quantity.PRESSURE), this::band));
        }
        rows.add(CompareRow.speed(units, "holds from", SpeedSweep::onset));
        return rows;
    }

    /** Between which line pressures friction lets the unit stand; blank for a build whose spools are free. */
    private String band(Comparison.BuildAtDuty cell) {
        if (!bands.asked(cell.unit())) {
            return "";
        }
        return cell.outcome()
                .state()
                .flatMap(bands::of)
                .map(band -> Quantity.PRESSURE.number(units, band.low()) + " to "
                        + Quantity.PRESSURE.number(units, band.high()))
                .orElse(UnsolvedPhrase.CELL);
    }

    /** How far the slide of a variable pump is from its full displacement, and the pressure that moves it. */
    private List<CompareRow> slides(Transmission any) {
        List<CompareRow> rows = new ArrayList<>();
        for (Placed placed : any.network().parts()) {
            if (placed.part() instanceof PumpChamber pump && pump.slide().isPresent()) {
                rows.add(reading(
                        placed.name() + " slide, share of full displacement",
                        Quantity.SHARE,
                        state -> OptionalDouble.of(
                                pump.slide().get().share(state.own(placed.name(), OwnState.POSITION)))));
                rows.add(reading(
                        "  control pressure",
                        Quantity.PRESSURE,
                        state -> OptionalDouble.of(state.pressure(placed.nodes().get(PumpChamber.CONTROL)))));
            }
        }
        return rows;
    }

    private List<CompareRow> chambers(Roles roles) {
        List<CompareRow> rows = new ArrayList<>();
        if (roles.secondary().isPresent()) {
            rows.add(CompareRow.word("secondary chamber", f -> SecondaryPhrase.of(f.secondary())));
            rows.add(CompareRow.speed(units, "secondary unloads from", SpeedSweep::unloading));
        }
        if (roles.bypass().isPresent()) {
            rows.add(CompareRow.speed(
                    units,
                    roles.secondary().isPresent() ? "secondary unloaded from" : "primary bypasses from",
                    SpeedSweep::bypassing));
        }
        return rows;
    }

    private List<CompareRow> consumers(Roles roles) {
        List<CompareRow> rows = new ArrayList<>();
        if (roles.converter().isPresent()) {
            rows.add(known("converter charge", Quantity.PRESSURE, Figures::charge));
            if (anyLockup()) {
                String converter = roles.converter().get().name();
                rows.add(new CompareRow(
                        "lockup", cell -> LockupPhrase.of(cell.duty().lockup())));
                rows.add(reading(
                        "  apply less release pressure", Quantity.PRESSURE, state -> lockupDrop(converter, state)));
            }
        }
        if (roles.cooler().isPresent()) {
            rows.add(known("cooler flow", Quantity.FLOW, Figures::cooler));
        }
        if (!roles.lube().isEmpty()) {
            rows.add(figure("lube flow", Quantity.FLOW, Figures::lube));
            rows.add(new CompareRow(
                    CompareRow.headed(units, "  needed", Quantity.FLOW),
                    cell -> Quantity.FLOW.number(units, cell.roles().lubeNeeded(cell.duty()))));
        }
        if (!rows.isEmpty()) {
            rows.add(new CompareRow("short of oil", RegulatedRows::shortOfOil));
        }
        return rows;
    }

    private boolean anyLockup() {
        return comparison.cells().stream().anyMatch(cell -> cell.duty().lockup() != Setting.Lockup.OFF);
    }

    /** Not there with lockup off: the oil then runs the other way. */
    private static OptionalDouble lockupDrop(String converter, Solution state) {
        return state.conditions().lockup() == Setting.Lockup.OFF
                ? OptionalDouble.empty()
                : state.measure(converter, Converter.APPLY_LESS_RELEASE);
    }

    /** What of clutches, lockup and rated parts has the least headroom; blank where nothing carries anything. */
    private static String weakestLink(Comparison.BuildAtDuty cell) {
        return cell.assessed().isEmpty()
                ? UnsolvedPhrase.CELL
                : cell.weakestLink()
                        .map(margin -> CompareScreenPhrase.of(CompareFigures.link(margin), margin.headroom()))
                        .orElse("");
    }

    /** How many of converter, cooler and lube branches get less than they need, and the worst of them. */
    private static String shortOfOil(Comparison.BuildAtDuty cell) {
        return cell.assessed()
                .map(Assessment::starved)
                .map(all -> ShortOfOilPhrase.cell(
                        all.size(),
                        all.stream()
                                .min(Comparator.comparingDouble(Margin::headroom))
                                .map(Margin::part)
                                .orElse("")))
                .orElse(UnsolvedPhrase.CELL);
    }
}
