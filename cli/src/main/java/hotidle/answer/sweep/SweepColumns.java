package hotidle.answer.sweep;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.HubFilmPhrase;
import hotidle.answer.phrase.RegulatorPhrase;
import hotidle.answer.phrase.SecondaryPhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.assess.Roles;
import hotidle.result.Solution;
import hotidle.study.FrictionBand;
import hotidle.study.FrictionBands;
import hotidle.study.SpeedSweep;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;

/** The columns that {@code sweep} shows of a unit at each engine speed: those of what it has. */
final class SweepColumns {

    /** One column: its head, and what it says of a state. */
    record Column(String head, BiFunction<Figures, Solution, String> text) {

        /** What it says of a state. */
        String of(Assessment state) {
            return text.apply(state.figures(), state.state());
        }

        /** Whether speeds that differ in it differ for a reader: not where it only runs along with them. */
        boolean decides() {
            return ALONG.stream().noneMatch(word -> head.startsWith(word + " "));
        }
    }

    /** First words of the columns that change with speed while all else stays. */
    private static final List<String> ALONG = List.of("slip", "leaks", "back", "power");

    private final Quantity.UnitSystem units;

    private SweepColumns(Quantity.UnitSystem units) {
        this.units = units;
    }

    /** The columns of a unit. */
    static List<Column> of(SpeedSweep sweep, FrictionBands bands, Quantity.UnitSystem units) {
        Transmission unit = sweep.unit();
        SweepColumns columns = new SweepColumns(units);
        List<Column> all =
                new ArrayList<>(unit.commanded().isPresent() ? columns.regulated(sweep.roles()) : columns.bench(unit));
        if (bands.asked(unit)) {
            all.add(columns.band(bands, "line at least", FrictionBand::low));
            all.add(columns.band(bands, "at most", FrictionBand::high));
        }
        return all;
    }

    /** Those that a first screen has: without what only follows. */
    static List<Column> deciding(SpeedSweep sweep, FrictionBands bands, Quantity.UnitSystem units) {
        return of(sweep, bands, units).stream()
                .filter(column -> SPARED.subList(0, 4).stream()
                        .noneMatch(word -> column.head().startsWith(word + " ")))
                .toList();
    }

    /** First words of the columns that are left out first where there is no room for all. */
    private static final List<String> SPARED = List.of("back", "cooler", "charge", "hub", "power", "leaks", "slip");

    /** Which column says least. */
    static int least(List<Column> columns) {
        for (String word : SPARED) {
            for (int i = 0; i < columns.size(); i++) {
                if (columns.get(i).head().startsWith(word + " ")) {
                    return i;
                }
            }
        }
        return columns.size() - 1;
    }

    /** An end of the band that spool friction leaves the line. */
    private Column band(FrictionBands bands, String name, Function<FrictionBand, Double> end) {
        return new Column(
                headed(name, Quantity.PRESSURE),
                (figures, state) -> bands.of(state)
                        .map(band -> Quantity.PRESSURE.number(units, end.apply(band)))
                        .orElse(UnsolvedPhrase.CELL));
    }

    private List<Column> bench(Transmission unit) {
        List<Column> columns = new ArrayList<>();
        unit.taps()
                .forEach(tap -> columns.add(new Column(
                        headed(tap.name(), Quantity.PRESSURE),
                        (figures, state) -> Quantity.PRESSURE.number(units, state.pressure(tap.node())))));
        columns.add(number("power", Quantity.POWER, Figures::pumpPower));
        return columns;
    }

    private List<Column> regulated(Roles roles) {
        List<Column> columns = new ArrayList<>(List.of(
                known("set", Quantity.PRESSURE, Figures::set),
                number("line", Quantity.PRESSURE, Figures::line),
                word("regulator", f -> RegulatorPhrase.of(f.regulator(), f.inletStarved()))));
        if (roles.secondary().isPresent()) {
            columns.add(word("secondary", f -> SecondaryPhrase.of(f.secondary())));
        }
        if (roles.converter().isPresent()) {
            columns.add(known("charge", Quantity.PRESSURE, Figures::charge));
        }
        if (roles.cooler().isPresent()) {
            columns.add(known("cooler", Quantity.FLOW, Figures::cooler));
        }
        if (!roles.lube().isEmpty()) {
            columns.add(number("lube", Quantity.FLOW, Figures::lube));
        }
        columns.add(number("slip", Quantity.FLOW, Figures::slip));
        columns.add(number("leaks", Quantity.FLOW, Figures::leak));
        columns.add(number("back", Quantity.FLOW, Figures::recirculated));
        if (roles.hub().isPresent()) {
            columns.add(number(
                    "hub load", Quantity.FORCE, f -> f.hub().orElseThrow().load()));
            columns.add(new Column(
                    headed("film", Quantity.FILM),
                    (f, state) -> f.hub().orElseThrow().metalContact()
                            ? HubFilmPhrase.CONTACT_SHORT
                            : Quantity.FILM.number(
                                    units, f.hub().orElseThrow().leastFilm().orElseThrow())));
        }
        columns.add(number("power", Quantity.POWER, Figures::pumpPower));
        return columns;
    }

    private String headed(String name, Quantity quantity) {
        return name + " " + quantity.in(units).unit();
    }

    private Column number(String name, Quantity quantity, Function<Figures, Double> figure) {
        return new Column(headed(name, quantity), (f, state) -> quantity.number(units, figure.apply(f)));
    }

    private Column known(String name, Quantity quantity, Function<Figures, OptionalDouble> figure) {
        return new Column(headed(name, quantity), (f, state) -> quantity.number(units, figure.apply(f)));
    }

    private static Column word(String name, Function<Figures, String> figure) {
        return new Column(name, (f, state) -> figure.apply(f));
    }
}
