package hotidle.answer.spring;

import hotidle.answer.Answer;
import hotidle.answer.UsefulPressureSentence;
import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.margins.MarginSentences;
import hotidle.answer.phrase.SpringCommands;
import hotidle.answer.phrase.SpringPhrase;
import hotidle.assess.Figures;
import hotidle.study.SpringStudy;
import hotidle.study.SpringStudy.ChangeEffect;
import hotidle.study.SpringStudy.DutyEffect;
import hotidle.study.SpringStudy.JudgedChange;
import hotidle.study.UsefulPressure;
import hotidle.transmission.Command;
import hotidle.transmission.SpringChange;
import hotidle.transmission.SpringChange.Lever;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * How a regulator comes to another set pressure.
 *
 * @param units   of the user
 * @param circuit as the user named it, with the sheet that its build is from
 * @param study   what was found
 * @param asked   how the build is asked for behind {@code --build}, jobs and all
 * @param judged  the first change that can be made, at every limit; empty where none can, or the pump cannot hold the pressure
 * @param useful  up to which set pressure more torque is held; empty where torque cannot be asked of the unit
 */
public record SpringAnswer(
        UnitSystem units,
        String circuit,
        SpringStudy study,
        String asked,
        Optional<JudgedChange> judged,
        Optional<UsefulPressure> useful)
        implements Answer {

    /** Of a build as the file has it, neither judged nor torque asked. */
    public SpringAnswer(UnitSystem units, String circuit, SpringStudy study) {
        this(units, circuit, study, study.unit().build(), Optional.empty(), Optional.empty());
    }

    @Override
    public String screen() {
        FirstScreen screen = new FirstScreen(Wrap.lines(caution(), "", "  ")).add(tables());
        List<String> said = new ArrayList<>(sentences());
        if (!study.pumpCannot()) {
            said.add(next());
            said.add(SpringPhrase.MEANT);
            idleBecomes(true).ifPresent(said::add);
        }
        said.addAll(noHeights());
        for (String sentence : said) {
            String lines = Wrap.lines(sentence, "", "  ");
            if (lines.lines().count() <= screen.room() - KEPT_LINES) {
                screen.add(lines);
            }
        }
        return screen.text();
    }

    /** What stands above the screen of jobs and of a sheet. */
    private static final int KEPT_LINES = 2;

    @Override
    public String full() {
        List<String> said = new ArrayList<>(sentences());
        said.add(SpringPhrase.MEANT);
        idleBecomes(true).ifPresent(said::add);
        said.addAll(noHeights());
        said.add(next());
        said.add(caution());
        StringBuilder text = new StringBuilder(tables());
        said.forEach(sentence -> text.append(Wrap.lines(sentence, "", "  ")));
        return text.toString();
    }

    /** As much as the set pressure that is there is no less, but for rounding (ours) [-]. */
    private static final double ROUNDING = 1e-6;

    private String caution() {
        return SpringPhrase.caution(study.pressure() >= study.now() * (1 - ROUNDING));
    }

    private String next() {
        return SpringPhrase.next(SpringCommands.window(circuit, asked, study.least(), study.pressure()));
    }

    private String tables() {
        SpringPhrase phrase = new SpringPhrase(units);
        SpringRows rows = new SpringRows(units, study);
        StringBuilder text = new StringBuilder();
        if (study.pumpCannot()) {
            text.append(Wrap.lines(
                    phrase.pumpCannot(
                            build(), idle(), study.pressure(), SpringCommands.leaks(circuit, asked, study.pressure())),
                    "",
                    "  "));
        }
        judged.map(this::verdict).ifPresent(said -> text.append(Wrap.lines(said, "", "  ")));
        text.append(Wrap.lines(phrase.asked(build(), study.now(), study.pressure(), level()), "", "  "));
        TextTable changes = new TextTable(SpringRows.CHANGES);
        study.ways().forEach(way -> changes.add(rows.change(way.change())));
        text.append(changes.aligned()).append('\n');
        TextTable moved = new TextTable(rows.moved());
        rows.rows().forEach(moved::add);
        return text.append(moved.aligned()).toString();
    }

    /** What the build with that change comes to, and its first limit. */
    String verdict(JudgedChange one) {
        return new MarginSentences(units)
                .verdict(
                        SpringPhrase.withThat(build(), name(one.change())),
                        one.build().verdict());
    }

    /** Whether as much is commanded whatever the engine's torque. */
    private boolean level() {
        return Math.abs(study.asIs().noTorque() - study.now()) <= Command.AGREE;
    }

    /** Shims are put in up to this (common practice) [m]. */
    private static final double MOST_SHIMS = 4e-3;

    private List<String> sentences() {
        List<String> said = new ArrayList<>(lowered());
        List<SpringStudy.Way> made = study.made();
        idleBecomes(false).ifPresent(said::add);
        UsefulPressureSentence.beyond(units, build(), useful).ifPresent(said::add);
        List<String> low = low();
        if (!low.isEmpty() && !study.pumpCannot()) {
            said.add(SpringPhrase.low(idle(), low));
        }
        List<String> relief =
                where(made, at -> at.figures().map(Figures::reliefOpen).orElse(false));
        if (!relief.isEmpty()) {
            said.add(SpringPhrase.relief(relief));
        }
        List<String> end = where(made, DutyEffect::atStop);
        if (!end.isEmpty()) {
            said.add(SpringPhrase.atEnd(end));
        }
        if (shim().orElse(0) > MOST_SHIMS) {
            said.add(SpringPhrase.MANY_SHIMS);
        }
        return said;
    }

    /** Added [m], below zero taken out; empty where no shim does it. */
    private OptionalDouble shim() {
        return study.ways().stream()
                .map(SpringStudy.Way::change)
                .filter(change -> change.lever() == Lever.SHIM)
                .flatMapToDouble(change -> change.needed().stream())
                .findFirst();
    }

    /** How less pressure is come to. */
    private List<String> lowered() {
        if (shim().orElse(0) < -SpringRows.LEAST_SHIM) {
            return List.of(SpringPhrase.shimOut(Quantity.SIZE.with(units, -shim().getAsDouble())));
        }
        return study.pressure() < study.least()
                ? study.asIs().idle().figures().stream()
                        .map(at -> new SpringPhrase(units).tooLow(study.least(), study.now(), idle(), at.line()))
                        .toList()
                : List.of();
    }

    private List<String> noHeights() {
        boolean none = study.ways().stream()
                .filter(way -> way.change().lever() == Lever.PRELOAD)
                .allMatch(way -> way.change().overStop().isEmpty());
        return none ? List.of(SpringPhrase.noHeights(study.unit().command().regulator())) : List.of();
    }

    /**
     * Empty where no spring does it, or where a state was not found.
     *
     * @param alike of the units of which other commands, behind the same option, ask the same at idle; of no others
     */
    private Optional<String> idleBecomes(boolean alike) {
        OptionalDouble now = commanded(study.asIs());
        OptionalDouble then = study.made().stream()
                .filter(way -> way.change().lever() == Lever.PRELOAD)
                .flatMapToDouble(way -> commanded(way.effect().orElseThrow()).stream())
                .findFirst();
        if (now.isEmpty() || then.isEmpty()) {
            return Optional.empty();
        }
        double other = study.idleByCommand().orElse(then.getAsDouble());
        if ((Math.abs(other - then.getAsDouble()) <= Command.AGREE) != alike) {
            return Optional.empty();
        }
        SpringPhrase phrase = new SpringPhrase(units);
        return Optional.of(
                alike
                        ? phrase.idleAlike(idle(), now.getAsDouble(), then.getAsDouble())
                        : phrase.idleOther(idle(), now.getAsDouble(), then.getAsDouble(), study.pressure(), other));
    }

    private static OptionalDouble commanded(ChangeEffect effect) {
        return effect.idle().figures().map(Figures::set).orElse(OptionalDouble.empty());
    }

    /** The changes with which the pump cannot hold what is asked at idle. */
    private List<String> low() {
        return study.made().stream()
                .filter(way -> way.effect().orElseThrow().lowAtIdle())
                .map(way -> name(way.change()))
                .toList();
    }

    private String build() {
        return study.unit().build();
    }

    private String idle() {
        return study.asIs().idle().duty().name();
    }

    private static String name(SpringChange change) {
        return SpringPhrase.column(change.lever(), change.signal());
    }

    private static List<String> where(List<SpringStudy.Way> made, Predicate<DutyEffect> so) {
        List<String> found = new ArrayList<>();
        for (SpringStudy.Way way : made) {
            List<String> duties = way.effect().orElseThrow().duties().stream()
                    .filter(so)
                    .map(at -> at.duty().name())
                    .toList();
            if (!duties.isEmpty()) {
                found.add(SpringPhrase.at(name(way.change()), duties));
            }
        }
        return found;
    }

    @Override
    public TextTable table() {
        String psi = " " + Quantity.PRESSURE.in(units).unit();
        TextTable table =
                new TextTable(List.of("change", "duty", "commanded" + psi, "line" + psi, "converter charge" + psi));
        add(table, "none", study.asIs());
        study.made().forEach(way -> add(table, name(way.change()), way.effect().orElseThrow()));
        return table;
    }

    private void add(TextTable table, String change, ChangeEffect effect) {
        for (DutyEffect at : effect.duties()) {
            table.add(List.of(
                    change,
                    at.duty().name(),
                    number(at.figures().map(Figures::set).orElse(OptionalDouble.empty())),
                    number(at.figures().stream().mapToDouble(Figures::line).findFirst()),
                    number(at.figures().map(Figures::charge).orElse(OptionalDouble.empty()))));
        }
    }

    private String number(OptionalDouble pressure) {
        return pressure.isEmpty() ? "" : Quantity.PRESSURE.number(units, pressure);
    }

    @Override
    public Object json() {
        return SpringRecord.of(this);
    }

    @Override
    public boolean complete() {
        return study.known();
    }
}
