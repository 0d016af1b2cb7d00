package hotidle.answer.compare;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.CompareScreenPhrase;
import hotidle.answer.phrase.HeadroomPhrase;
import hotidle.answer.phrase.HubFilmPhrase;
import hotidle.answer.phrase.LinePressurePhrase;
import hotidle.answer.phrase.OnsetPhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.study.Comparison;
import hotidle.study.RunningFilm;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The deciding answers on a build: at one driving condition, and over all of them. */
record CompareFigures(Comparison comparison, Quantity.UnitSystem units) {

    /**
     * A figure.
     *
     * @param label  what it is called
     * @param narrow the same over a column of many
     * @param unit   may be empty
     * @param across what is added to its label where there is room: of what it is the worst
     * @param text   what it is of a build
     * @param brief  the same in a column, beside those that say the rest
     */
    record FigureRow(
            String label,
            String narrow,
            String unit,
            String across,
            Function<Comparison.BuildAtDuty, String> text,
            Function<Comparison.BuildAtDuty, String> brief) {

        FigureRow(
                String label,
                String narrow,
                String unit,
                String across,
                Function<Comparison.BuildAtDuty, String> text) {
            this(label, narrow, unit, across, text, text);
        }

        FigureRow(String label, String unit, String across, Function<Comparison.BuildAtDuty, String> text) {
            this(label, label, unit, across, text);
        }

        FigureRow(String label, String unit, Function<Comparison.BuildAtDuty, String> text) {
            this(label, unit, "", text);
        }

        String headed() {
            return unit.isEmpty() ? narrow : narrow + " [" + unit + "]";
        }

        String headedAcross() {
            return unit.isEmpty() ? label + across : label + across + " [" + unit + "]";
        }
    }

    /** Those of what the unit has; a cell at the condition shown, by its name, stands for its build. */
    List<FigureRow> all(String duty) {
        List<FigureRow> all = new ArrayList<>(List.of(
                new FigureRow(
                        CompareScreenPhrase.COMMANDED,
                        CompareScreenPhrase.ASKED,
                        unit(Quantity.PRESSURE),
                        "",
                        known(this::set)),
                new FigureRow(CompareScreenPhrase.GAUGE, unit(Quantity.PRESSURE), known(this::gauge)),
                new FigureRow(CompareScreenPhrase.HOLDS_FROM, "", this::holdsFrom)));
        Comparison.BuildAtDuty any = comparison.cells().get(0);
        if (!any.roles().lube().isEmpty()) {
            all.add(new FigureRow(CompareScreenPhrase.LUBRICATION, unit(Quantity.FLOW), known(this::lubrication)));
        }
        all.add(new FigureRow(CompareScreenPhrase.LOST, unit(Quantity.FLOW), known(this::lost)));
        if (any.roles().hub().isPresent()) {
            all.add(new FigureRow(
                    CompareScreenPhrase.FILM, unit(Quantity.FILM), CompareScreenPhrase.oil(duty), known(this::film)));
        }
        all.add(new FigureRow(
                CompareScreenPhrase.LINK,
                CompareScreenPhrase.LINK,
                "",
                CompareScreenPhrase.ANYWHERE,
                cell -> link(cell, failing(cell)),
                cell -> link(cell, 0)));
        comparison
                .mostPower()
                .map(most -> most.duty().name())
                .ifPresent(at -> all.add(new FigureRow(
                        CompareScreenPhrase.POWER,
                        unit(Quantity.POWER),
                        CompareScreenPhrase.place(at),
                        cell -> power(comparison.cell(cell.unit().build(), at)))));
        all.add(new FigureRow(
                CompareScreenPhrase.FAILS,
                CompareScreenPhrase.FAILS,
                "",
                "",
                cell -> fails(cell, comparison.narrowest(cell.unit().build()).isPresent()),
                cell -> fails(cell, false)));
        return all;
    }

    private String unit(Quantity quantity) {
        return quantity.in(units).unit();
    }

    private static Function<Comparison.BuildAtDuty, String> known(Function<Comparison.BuildAtDuty, String> text) {
        return cell -> cell.assessed().isPresent() ? text.apply(cell) : UnsolvedPhrase.CELL;
    }

    private static Figures figures(Comparison.BuildAtDuty cell) {
        return cell.figures().orElseThrow();
    }

    private String set(Comparison.BuildAtDuty cell) {
        return Quantity.PRESSURE.number(units, figures(cell).set().orElse(Double.NaN));
    }

    private String gauge(Comparison.BuildAtDuty cell) {
        Figures figures = figures(cell);
        return LinePressurePhrase.number(units, figures.line(), figures.set())
                + " "
                + (figures.low()
                        ? CompareScreenPhrase.LOW
                        : figures.farAboveSet() ? CompareScreenPhrase.HIGH : HeadroomPhrase.OK);
    }

    String holdsFrom(Comparison.BuildAtDuty cell) {
        return new OnsetPhrase(units).cell(cell.sweep().onset(), CompareRow.lowest(cell.sweep()));
    }

    private String lubrication(Comparison.BuildAtDuty cell) {
        double lube = figures(cell).lube();
        boolean starved = cell.starved().stream().anyMatch(margin -> margin.kind() == Margin.Kind.LUBRICATION);
        return Quantity.FLOW.number(units, lube) + " " + (starved ? CompareScreenPhrase.SHORT : HeadroomPhrase.OK);
    }

    private String lost(Comparison.BuildAtDuty cell) {
        return Quantity.FLOW.number(units, figures(cell).lost());
    }

    private String film(Comparison.BuildAtDuty cell) {
        return cell.hubFilm()
                .map(film -> film.contact()
                        ? HubFilmPhrase.CONTACT_SHORT.toUpperCase(java.util.Locale.ROOT)
                        : Quantity.FILM.number(units, film.film().getAsDouble()) + " " + verdict(film))
                .orElse(CompareScreenPhrase.NONE);
    }

    private static String verdict(RunningFilm film) {
        return film.fails() ? CompareScreenPhrase.THIN : film.known() ? HeadroomPhrase.OK : CompareScreenPhrase.OPEN;
    }

    private String link(Comparison.BuildAtDuty cell, int failing) {
        return comparison
                .weakestLink(cell.unit().build())
                .flatMap(Comparison.BuildAtDuty::weakestLink)
                .map(margin -> CompareScreenPhrase.link(margin.headroom(), failing))
                .orElse(CompareScreenPhrase.NONE);
    }

    /** At how many driving conditions the build of a cell fails. */
    private int failing(Comparison.BuildAtDuty cell) {
        return comparison.failing(cell.unit().build()).size();
    }

    /** What a link is called: a lockup has the name of its converter. */
    static String link(Margin margin) {
        return margin.kind() == Margin.Kind.LOCKUP ? CompareScreenPhrase.LOCKUP : margin.part();
    }

    private String power(Comparison.BuildAtDuty cell) {
        return cell.figures()
                .map(figures -> Quantity.POWER.number(units, figures.pumpPower()))
                .orElse(UnsolvedPhrase.CELL);
    }

    private String fails(Comparison.BuildAtDuty cell, boolean narrow) {
        return CompareScreenPhrase.failsAt(failing(cell), comparison.duties().size(), narrow);
    }
}
