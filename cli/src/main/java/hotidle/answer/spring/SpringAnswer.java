package hotidle.answer.spring;

import hotidle.answer.Answer;
import hotidle.answer.UsefulPressureSentence;
import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.SpringCommands;
import hotidle.answer.phrase.SpringPhrase;
import hotidle.assess.Figures;
import hotidle.study.SpringStudy;
import hotidle.study.SpringStudy.ChangeEffect;
import hotidle.study.SpringStudy.DutyEffect;
import hotidle.study.UsefulPressure;
import hotidle.transmission.Command;
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
 * @param useful  up to which set pressure more torque is held; empty where torque cannot be asked of the unit
 */
public record SpringAnswer(
        UnitSystem units, String circuit, SpringStudy study, String asked, Optional<UsefulPressure> useful)
        implements Answer {

    /** Of a build as the file has it, torque not asked. */
    public SpringAnswer(UnitSystem units, String circuit, SpringStudy study) {
        this(units, circuit, study, study.unit().build(), Optional.empty());
    }

    @Override
    public String screen() {
        FirstScreen screen = new FirstScreen(Wrap.lines(caution(), "", "  ")).add(tables());
        List<String> said = new ArrayList<>(sentences());
        if (!pumpCannot()) {
            said.add(next());
            said.add(SpringPhrase.MEANT);
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
        said.addAll(noHeights());
        said.add(next());
        said.add(caution());
        StringBuilder text = new StringBuilder(tables());
        said.forEach(sentence -> text.append(Wrap.lines(sentence, "", "  ")));
        return text.toString();
    }

    private String caution() {
        return SpringPhrase.caution(study.pressure() >= study.now());
    }

    private String next() {
        return SpringPhrase.next(SpringCommands.window(circuit, asked, study.least(), study.pressure()));
    }

    private String tables() {
        SpringPhrase phrase = new SpringPhrase(units);
        SpringRows rows = new SpringRows(units, study);
        StringBuilder text = new StringBuilder();
        if (pumpCannot()) {
            text.append(Wrap.lines(
                    phrase.pumpCannot(
                            build(), idle(), study.pressure(), SpringCommands.leaks(circuit, asked, study.pressure())),
                    "",
                    "  "));
        }
        text.append(Wrap.lines(phrase.asked(build(), study.now(), study.pressure(), level()), "", "  "));
        TextTable changes = new TextTable(SpringRows.CHANGES);
        study.ways().forEach(way -> changes.add(rows.change(way.change())));
        text.append(changes.aligned()).append('\n');
        TextTable moved = new TextTable(rows.moved());
        rows.rows().forEach(moved::add);
        return text.append(moved.aligned()).toString();
    }

    /** Whether as much is commanded whatever the engine's torque. */
    private boolean level() {
        return Math.abs(study.asIs().noTorque() - study.now()) <= Command.AGREE;
    }

    /** Shims are put in up to this (common practice) [m]. */
    private static final double MOST_SHIMS = 4e-3;

    private List<String> sentences() {
        List<String> said = new ArrayList<>(lowered());
        List<SpringStudy.Way> made = made();
        UsefulPressureSentence.beyond(units, build(), useful).ifPresent(said::add);
        List<String> low = low();
        if (!low.isEmpty() && !pumpCannot()) {
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
        if (shim().orElse(0) < 0) {
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

    private List<SpringStudy.Way> made() {
        return new SpringRows(units, study).made();
    }

    /** The changes with which the pump cannot hold what is asked at idle. */
    private List<String> low() {
        return made().stream()
                .filter(way -> idleLow(way.effect().orElseThrow()))
                .map(SpringAnswer::name)
                .toList();
    }

    /** Whether that is so with each of them. */
    private boolean pumpCannot() {
        return !made().isEmpty() && low().size() == made().size();
    }

    private String build() {
        return study.unit().build();
    }

    private String idle() {
        return study.asIs().idle().duty().name();
    }

    private static String name(SpringStudy.Way way) {
        return SpringPhrase.column(way.change().lever(), way.change().signal());
    }

    private static List<String> where(List<SpringStudy.Way> made, Predicate<DutyEffect> so) {
        List<String> found = new ArrayList<>();
        for (SpringStudy.Way way : made) {
            List<String> duties = way.effect().orElseThrow().duties().stream()
                    .filter(so)
                    .map(at -> at.duty().name())
                    .toList();
            if (!duties.isEmpty()) {
                found.add(SpringPhrase.at(name(way), duties));
            }
        }
        return found;
    }

    private static boolean idleLow(ChangeEffect effect) {
        return effect.idle()
                .figures()
                .map(f -> f.set().isPresent() && f.line() < f.set().getAsDouble() - Command.AGREE)
                .orElse(false);
    }

    @Override
    public TextTable table() {
        String psi = " " + Quantity.PRESSURE.in(units).unit();
        TextTable table =
                new TextTable(List.of("change", "duty", "commanded" + psi, "line" + psi, "converter charge" + psi));
        add(table, "none", study.asIs());
        new SpringRows(units, study)
                .made()
                .forEach(way -> add(table, name(way), way.effect().orElseThrow()));
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
