package hotidle.answer.compare;

import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.CompareScreenPhrase;
import hotidle.answer.phrase.FaultPhrase;
import hotidle.study.Comparison;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The first screen of builds of which a set pressure is commanded: the deciding answers, the driving conditions that change a verdict,
 * and what is to be said.
 *
 * @param duty    the driving condition shown
 * @param heading over it
 * @param foot    cautions under it
 * @param asked   an engine torque that builds are to hold; may be empty
 */
record CompareScreen(
        Comparison comparison,
        DutyPoint duty,
        String heading,
        List<String> sentences,
        String foot,
        Optional<TorqueAsked> asked,
        Quantity.UnitSystem units) {

    /** More builds than these stand below each other (chosen). */
    private static final int MOST_ACROSS = 5;

    /** Lines kept for sentences where rows of driving conditions would take them (chosen). */
    private static final int FOR_SENTENCES = 5;

    /** More is not read (chosen). */
    private static final int MOST_SENTENCES = 6;

    String text() {
        FirstScreen screen = new FirstScreen(foot);
        screen.add(heading);
        if (comparison.units().size() > MOST_ACROSS) {
            down(screen);
        } else {
            across(screen);
        }
        sentences.stream()
                .limit(MOST_SENTENCES)
                .forEach(sentence -> screen.addWhereRoom(Wrap.lines(sentence, "", "  ")));
        return screen.text();
    }

    /** All of its tables, whatever room a screen has. */
    TextTable whole() {
        if (comparison.units().size() > MOST_ACROSS) {
            return figuresAcross(comparison.units());
        }
        TextTable table = figuresDown(false);
        comparison.changing(duty.name()).forEach(at -> table.add(at(at)));
        return table;
    }

    private Comparison.BuildAtDuty shown(Transmission unit) {
        return comparison.cell(unit.build(), duty.name());
    }

    private List<CompareFigures.FigureRow> figures() {
        List<CompareFigures.FigureRow> all = new ArrayList<>(new CompareFigures(comparison, units).all(duty.name()));
        asked.ifPresent(torque -> all.add(
                all.size() - 1,
                new CompareFigures.FigureRow(
                        torque.label(units), "", cell -> torque.cell(cell.unit().build(), units))));
        return all;
    }

    /** Where builds side by side are too wide, in brief. */
    private TextTable figuresDown() {
        TextTable table = figuresDown(false);
        boolean fits = table.fitted(Wrap.WIDTH).lines().allMatch(line -> line.length() <= Wrap.WIDTH);
        return fits ? table : figuresDown(true);
    }

    private TextTable figuresDown(boolean brief) {
        List<String> head = new ArrayList<>(List.of(""));
        comparison.units().forEach(unit -> head.add(unit.build()));
        TextTable table = new TextTable(head);
        for (CompareFigures.FigureRow figure : figures()) {
            List<String> row = new ArrayList<>(List.of(figure.headedAcross()));
            comparison.units().forEach(unit -> row.add((brief ? figure.brief() : figure.text()).apply(shown(unit))));
            table.add(row);
        }
        return table;
    }

    private void across(FirstScreen screen) {
        TextTable table = figuresDown();
        List<DutyPoint> changing = comparison.changing(duty.name());
        int lines = (int) table.fitted(Wrap.WIDTH).lines().count();
        int rows = Math.max(0, screen.room() - lines - FOR_SENTENCES);
        int shown = changing.size() <= rows ? changing.size() : Math.max(0, rows - 1);
        changing.subList(0, shown).forEach(at -> table.add(at(at)));
        screen.add(table.fitted(Wrap.WIDTH));
        if (shown < changing.size()) {
            screen.add(Wrap.lines(
                    CompareScreenPhrase.more(changing.subList(shown, changing.size()).stream()
                            .map(DutyPoint::name)
                            .toList()),
                    "",
                    "  "));
        }
    }

    /** What fails first in each build at another driving condition. */
    private List<String> at(DutyPoint other) {
        List<String> row = new ArrayList<>(List.of(CompareScreenPhrase.at(other.name())));
        comparison
                .units()
                .forEach(unit -> row.add(comparison.cell(unit.build(), other.name()).faults().stream()
                        .findFirst()
                        .map(new FaultPhrase(units)::cell)
                        .orElse(FaultPhrase.OK)));
        return row;
    }

    private void down(FirstScreen screen) {
        List<Transmission> builds = new ArrayList<>(comparison.units());
        int rows = screen.room() - FOR_SENTENCES - 3;
        List<Transmission> left = List.of();
        if (builds.size() > rows) {
            builds.sort(java.util.Comparator.comparingInt(
                    unit -> -comparison.failing(unit.build()).size()));
            left = builds.subList(rows, builds.size());
            builds = builds.subList(0, rows);
        }
        screen.add(figuresAcross(builds).fitted(Wrap.WIDTH));
        if (!left.isEmpty()) {
            screen.add(more(left));
        }
    }

    private TextTable figuresAcross(List<Transmission> builds) {
        List<CompareFigures.FigureRow> figures = figures();
        List<String> head = new ArrayList<>(List.of(CompareScreenPhrase.BUILD));
        figures.forEach(figure -> head.add(figure.headed()));
        TextTable table = new TextTable(head);
        for (Transmission unit : builds) {
            List<String> row = new ArrayList<>(List.of(unit.build()));
            figures.forEach(figure -> row.add(figure.brief().apply(shown(unit))));
            table.add(row);
        }
        return table;
    }

    private String more(List<Transmission> left) {
        List<Transmission> failing = left.stream()
                .filter(unit -> !comparison.failing(unit.build()).isEmpty())
                .toList();
        return Wrap.lines(
                CompareScreenPhrase.moreBuilds(
                        left.size(),
                        failing.size(),
                        failing.isEmpty() ? "" : failing.get(0).build()),
                "",
                "  ");
    }
}
