package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.RegulatorPhrase;
import hotidle.answer.phrase.SecondaryPhrase;
import hotidle.assess.Consumers;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.assess.Roles;
import hotidle.network.Group;
import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.part.Converter;
import hotidle.part.PumpChamber;
import hotidle.part.Selector;
import hotidle.part.Setting;
import hotidle.result.Solution;
import hotidle.study.Comparison;
import hotidle.study.FrictionBand;
import hotidle.study.SpeedSweep;
import hotidle.transmission.Tap;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** The lines that {@code compare} shows of a circuit: those of what it has, the same at every duty point. */
final class CompareRows {

    /** One line: what it is called and what it says of a build at a duty point. */
    record Row(String label, Function<Comparison.Cell, String> text) {}

    /** What a reader of the flows must know. */
    static final String ABOUT_FLOWS =
            "Flows are volumes as they pass, at the pressure and temperature there. One and the same stream shows a few per cent"
                    + " more behind each restriction, since its air expands as pressure falls, and less behind a cooler: that is no"
                    + " leak. 'hotidle leaks' counts all oil as the pump takes it in, so that it adds up.";

    /** The same, and what else stands in the lines of a bench. */
    static final String ABOUT_BENCH =
            "A pump delivers what it sweeps (displacement x speed x filling) and what its tips drag along, less all slip,"
                    + " counted as it is at the inlet. A flow left blank: that passage is shut at this duty point. "
                    + ABOUT_FLOWS;

    /** Said where leaks fall although nothing was repaired. */
    static final String ABOUT_SHUT_LANDS =
            "What shut lands of the regulator let by counts as a leak only while it gives no oil back to the pump: once it does,"
                    + " that oil is to spare. So the leaks fall where the regulator begins to unload or to bypass, with no fit any"
                    + " tighter.";

    /** Whether some of these states give oil back to the pump and others do not. */
    static boolean someGiveBack(Stream<Figures> figures) {
        return figures.map(one -> one.recirculated() > 0).distinct().count() > 1;
    }

    private final Comparison comparison;
    private final Quantity.UnitSystem units;
    private final Transmission any;

    private CompareRows(Comparison comparison, Quantity.UnitSystem units) {
        this.comparison = comparison;
        this.units = units;
        any = comparison.units().get(0);
    }

    /** The lines of a comparison. */
    static List<Row> of(Comparison comparison, Quantity.UnitSystem units) {
        CompareRows rows = new CompareRows(comparison, units);
        return rows.any.commanded().isPresent() ? rows.regulated() : rows.bench();
    }

    /** What a circuit shows in which nothing is commanded: every gauge, what each pump delivers, and the flow on every path. */
    private List<Row> bench() {
        List<Row> rows = new ArrayList<>();
        for (Tap tap : any.taps()) {
            rows.add(gauge(tap));
        }
        for (Placed placed : any.network().parts()) {
            if (placed.part() instanceof PumpChamber) {
                rows.add(reading(
                        placed.name() + " delivers after slip",
                        Quantity.SEEPAGE,
                        state -> state.measure(placed.name(), PumpChamber.DELIVERED)
                                .orElseThrow()));
            }
            for (String key : paths(placed)) {
                rows.add(reading("flow " + key, Quantity.SEEPAGE, state -> flow(state, key)));
            }
        }
        return rows;
    }

    /** The paths through a part at any duty of any build, in the order of the file; a selector opens others in each range. */
    private Set<String> paths(Placed placed) {
        Set<String> found = new LinkedHashSet<>();
        states().flatMap(state -> state.streams().stream())
                .filter(stream -> stream.part().equals(placed.name()))
                .forEach(stream -> found.add(stream.key()));
        if (placed.part() instanceof Selector selector) {
            Set<String> written = new LinkedHashSet<>();
            selector.links().forEach(link -> written.add(placed.name() + "." + link.name()));
            written.retainAll(found);
            return written;
        }
        return found;
    }

    private Stream<Solution> states() {
        return comparison.cells().stream().flatMap(cell -> cell.outcome().state().stream());
    }

    /** NaN, shown blank, where the path is shut at this duty. */
    private static double flow(Solution state, String key) {
        return state.streams().stream()
                .filter(stream -> stream.key().equals(key))
                .mapToDouble(Solution.PartStream::volume)
                .findFirst()
                .orElse(Double.NaN);
    }

    private Row reading(String label, Quantity quantity, Function<Solution, Double> of) {
        return new Row(
                label + " [" + quantity.in(units).unit() + "]",
                cell -> cell.outcome()
                        .state()
                        .map(of)
                        .map(value -> blank(quantity, value))
                        .orElse("unsolved"));
    }

    private String blank(Quantity quantity, double value) {
        return Double.isNaN(value) ? "" : quantity.number(units, value);
    }

    private List<Row> regulated() {
        Roles roles = Roles.of(any);
        List<Row> rows = new ArrayList<>(List.of(
                number("set pressure commanded", Quantity.PRESSURE, f -> f.set().orElse(Double.NaN)),
                number("line pressure", Quantity.PRESSURE, Figures::line),
                number(
                        "  override (line less set)",
                        Quantity.PRESSURE,
                        f -> f.override().orElse(Double.NaN)),
                word("  regulator", f -> RegulatorPhrase.of(f.regulator(), f.inletStarved()))));
        if (comparison.units().stream().anyMatch(FrictionBand::asked)) {
            rows.add(new Row(
                    "  within spool friction [" + Quantity.PRESSURE.in(units).unit() + "]", this::band));
        }
        rows.addAll(List.of(speed("onset of regulation", SpeedSweep::onset)));
        rows.addAll(slides());
        if (roles.secondary().isPresent()) {
            rows.add(word("secondary chamber", f -> SecondaryPhrase.of(f.secondary())));
            rows.add(speed("secondary unloads from", SpeedSweep::unloading));
        }
        if (roles.bypass().isPresent()) {
            rows.add(speed("primary bypasses from", SpeedSweep::bypassing));
        }
        if (roles.converter().isPresent()) {
            rows.add(number(
                    "converter charge", Quantity.PRESSURE, f -> f.charge().orElse(Double.NaN)));
        }
        if (roles.converter().isPresent() && anyLockup()) {
            rows.add(new Row("lockup", cell -> word(cell.duty().lockup())));
            rows.add(reading("  apply less release pressure", Quantity.PRESSURE, this::lockupDrop));
        }
        if (roles.cooler().isPresent()) {
            rows.add(number("cooler flow", Quantity.FLOW, f -> f.cooler().orElse(Double.NaN)));
        }
        if (!roles.lube().isEmpty()) {
            rows.add(number("lube flow", Quantity.FLOW, Figures::lube));
            rows.add(new Row("  needed [" + Quantity.FLOW.in(units).unit() + "]", this::lubeNeeded));
        }
        if (roles.converter().isPresent()
                || roles.cooler().isPresent()
                || !roles.lube().isEmpty()) {
            rows.add(new Row("short of oil", CompareRows::starved));
        }
        rows.addAll(List.of(
                number("pump delivery before slip", Quantity.FLOW, Figures::swept),
                number("  slip in the pump", Quantity.FLOW, Figures::slip),
                number("  lost to leaks", Quantity.FLOW, Figures::leak),
                number("  back to the inlet at the regulator", Quantity.FLOW, Figures::recirculated),
                number("  used by the solenoids", Quantity.FLOW, f -> f.used().getOrDefault(Group.SOLENOIDS, 0.0))));
        if (roles.hub().isPresent()) {
            rows.addAll(List.of(
                    number(
                            "hub load",
                            Quantity.FORCE,
                            f -> f.hub().orElseThrow().load()),
                    new Row("hub film [" + Quantity.FILM.in(units).unit() + "]", this::film),
                    new Row("  least over speed", this::leastFilmText),
                    new Row("    at [rpm]", this::leastFilmSpeed),
                    new Row("  least allowed (assumed)", this::permissibleFilm)));
        }
        rows.add(number("pump power", Quantity.POWER, Figures::pumpPower));
        any.taps().stream().filter(tap -> !tap.node().equals(roles.line())).forEach(tap -> rows.add(gauge(tap)));
        return rows;
    }

    private Row gauge(Tap tap) {
        return reading("gauge at " + tap.name(), Quantity.PRESSURE, state -> state.pressure(tap.node()));
    }

    /** How far the slide of a variable pump is from its full displacement, and the pressure that moves it. */
    private List<Row> slides() {
        List<Row> rows = new ArrayList<>();
        for (Placed placed : any.network().parts()) {
            if (placed.part() instanceof PumpChamber pump && pump.slide().isPresent()) {
                rows.add(reading(
                        placed.name() + " slide, share of full displacement",
                        Quantity.SHARE,
                        state -> pump.slide().get().share(state.own(placed.name(), "position"))));
                rows.add(reading(
                        "  control pressure",
                        Quantity.PRESSURE,
                        state -> state.pressure(placed.nodes().get(PumpChamber.CONTROL))));
            }
        }
        return rows;
    }

    /** Between which line pressures friction lets the unit stand; blank for a build whose spools are free. */
    private String band(Comparison.Cell cell) {
        if (!FrictionBand.asked(cell.unit())) {
            return "";
        }
        return cell.outcome()
                .state()
                .flatMap(state -> FrictionBand.of(cell.unit(), state))
                .map(band -> Quantity.PRESSURE.number(units, band.low()) + " to "
                        + Quantity.PRESSURE.number(units, band.high()))
                .orElse("unsolved");
    }

    /** A lockup state in the word of the file. */
    static String word(Setting.Lockup lockup) {
        return lockup.name().toLowerCase(Locale.ROOT);
    }

    private boolean anyLockup() {
        return comparison.cells().stream().anyMatch(cell -> cell.duty().lockup() != Setting.Lockup.OFF);
    }

    /** NaN, shown blank, with lockup off: the oil then runs the other way. */
    private double lockupDrop(Solution state) {
        return state.conditions().lockup() == Setting.Lockup.OFF
                ? Double.NaN
                : state.measure(Roles.of(any).converter().orElseThrow().name(), Converter.APPLY_LESS_RELEASE)
                        .orElse(Double.NaN);
    }

    private Row number(String label, Quantity quantity, Function<Figures, Double> figure) {
        return new Row(
                label + " [" + quantity.in(units).unit() + "]",
                cell -> cell.figures()
                        .map(figures -> quantity.number(units, figure.apply(figures)))
                        .orElse("unsolved"));
    }

    private static Row word(String label, Function<Figures, String> figure) {
        return new Row(label, cell -> cell.figures().map(figure).orElse("unsolved"));
    }

    private Row speed(String label, Function<SpeedSweep, OptionalDouble> of) {
        return new Row(label + " [rpm]", cell -> {
            OptionalDouble speed = of.apply(cell.sweep());
            double lowest = cell.sweep().rising().get(0).conditions().speed();
            return speed.isEmpty()
                    ? "none"
                    : (speed.getAsDouble() <= lowest ? "<= " : "") + Quantity.SPEED.number(units, speed.getAsDouble());
        });
    }

    private String lubeNeeded(Comparison.Cell cell) {
        return Quantity.FLOW.number(units, Roles.of(cell.unit()).lubeNeeded(cell.duty()));
    }

    /** How many of converter, cooler and lube branches get less than they need, and the worst of them. */
    private static String starved(Comparison.Cell cell) {
        return cell.outcome()
                .state()
                .map(state -> {
                    List<Margin> starved = Consumers.starved(cell.unit(), cell.duty(), state);
                    return starved.stream()
                            .min(Comparator.comparingDouble(Margin::rank))
                            .map(worst -> starved.size() == 1
                                    ? "SHORT: " + worst.part()
                                    : "SHORT: " + starved.size() + " (most: " + worst.part() + ")")
                            .orElse("none");
                })
                .orElse("unsolved");
    }

    private String film(Comparison.Cell cell) {
        return cell.figures()
                .map(f -> f.hub().orElseThrow().metalContact()
                        ? "metal contact"
                        : Quantity.FILM.number(
                                units, f.hub().orElseThrow().leastFilm().orElseThrow()))
                .orElse("unsolved");
    }

    private String leastFilmText(Comparison.Cell cell) {
        if (!cell.sweep().contactSpeeds().isEmpty()) {
            return "metal contact";
        }
        return leastFilm(cell).map(film -> Quantity.FILM.number(units, film)).orElse("-");
    }

    /** The hub's least film over speed [m]; empty without a film. */
    static Optional<Double> leastFilm(Comparison.Cell cell) {
        return cell.sweep()
                .thinnestFilm()
                .map(state -> state.measure(hub(cell), Bushing.LEAST_FILM).orElseThrow());
    }

    private static String hub(Comparison.Cell cell) {
        return Roles.of(cell.unit()).hub().map(Placed::name).orElse("");
    }

    private String leastFilmSpeed(Comparison.Cell cell) {
        List<Double> contact = cell.sweep().contactSpeeds();
        if (!contact.isEmpty()) {
            return Quantity.SPEED.number(units, contact.get(0)) + " to "
                    + Quantity.SPEED.number(units, contact.get(contact.size() - 1));
        }
        return cell.sweep()
                .thinnestFilm()
                .map(state -> Quantity.SPEED.number(units, state.conditions().speed()))
                .orElse("-");
    }

    private String permissibleFilm(Comparison.Cell cell) {
        return cell.outcome()
                .state()
                .map((Solution state) -> Quantity.FILM.number(
                        units,
                        state.measure(hub(cell), Bushing.PERMISSIBLE_FILM).orElseThrow()))
                .orElse("unsolved");
    }
}
