package hotidle.cli.live;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Rpm;
import hotidle.answer.gauge.GaugeAnswer;
import hotidle.answer.live.LiveCausesRecord;
import hotidle.answer.live.LiveFileRecord;
import hotidle.answer.live.LiveGaugesRecord;
import hotidle.answer.live.LiveGaugesRecord.BesideModel;
import hotidle.answer.live.LiveReadingsRecord;
import hotidle.answer.phrase.LivePhrase;
import hotidle.circuits.sheet.GaugeReadings;
import hotidle.circuits.sheet.MeasurementSheet;
import hotidle.circuits.sheet.ReadingsReader;
import hotidle.circuits.sheet.WrittenReadings;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.ProblemCode;
import hotidle.oil.Oil;
import hotidle.study.gauge.GaugeDiagnosis;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.GaugesAt;
import hotidle.study.gauge.Meter;
import hotidle.study.gauge.SolvedFaults;
import hotidle.study.gauge.TestPoint;
import hotidle.study.gauge.UnsolvedPointException;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;

/**
 * Gauges of the unit that a page asks for, and what readings say of it. The gauges show the unit with the faults that are laid over
 * it; causes are looked for in the unit without them, since that is what a sound build means. What is not set at a gauge is that of a
 * driving condition as written, however the page looks at it.
 */
final class LiveGauges {

    /** Readings of which is remembered what may explain them: what to read next is asked for after it (chosen). */
    private static final int REMEMBERED = 8;

    private final LiveUnit unit;
    private final Recent<Explained, GaugeDiagnosis> causes = new Recent<>(REMEMBERED);

    LiveGauges(LiveUnit unit) {
        this.unit = unit;
    }

    /** Units with faults that were solved, of the builds asked for last: some tens of megabytes each (chosen). */
    private final Recent<AskedState, SolvedFaults> solved = new Recent<>(2);

    /** What causes depend on. */
    private record Explained(AskedState sound, List<Map<String, String>> rows) {}

    /** Where the gauges stand, and each reading beside what the unit would show there. */
    LiveGaugesRecord gauges(LiveQuestion question, Runnable step) {
        AskedGauges asked = asked(question);
        Transmission made = unit.unit(question.state().drivenAsWritten());
        GaugesAt shown = GaugesAt.of(made, point(made, question.state(), asked));
        step.run();
        return LiveGaugesRecord.of(made, Meter.of(made), shown, beside(made, asked.written(), step));
    }

    private static AskedGauges asked(LiveQuestion question) {
        return question.gauges().orElseGet(AskedGauges::asDriven);
    }

    private TestPoint point(Transmission made, AskedState state, AskedGauges asked) {
        DutyPoint duty = LiveUnit.duty(made, state);
        String range = asked.range() == null ? duty.range() : asked.range();
        if (made.range(range).isEmpty()) {
            throw new WrongStateException(LivePhrase.noRange(made.circuit(), range));
        }
        OptionalDouble sump = asked.sumpTemperatureC();
        if (sump.isPresent()) {
            LiveUnit.checkTemperature(sump.getAsDouble());
        }
        asked.engineSpeedRpm().ifPresent(LiveUnit::checkSpeed);
        if (asked.commandedPa().isPresent() && !(asked.commandedPa().getAsDouble() > 0)) {
            throw new WrongStateException(LivePhrase.COMMANDED);
        }
        return new TestPoint(
                asked.engineSpeedRpm().orElse(Rpm.of(duty.speed())) / 60,
                sump.isPresent()
                        ? sump.getAsDouble() + Oil.ZERO_CELSIUS
                        : duty.temperatures().getOrDefault("sump", Oil.ZERO_CELSIUS),
                range,
                asked.commandedPa(),
                OptionalDouble.empty());
    }

    private static List<BesideModel> beside(Transmission made, WrittenReadings written, Runnable step) {
        Map<TestPoint, GaugesAt> solved = new HashMap<>();
        List<BesideModel> rows = new ArrayList<>();
        for (int i = 0; i < written.rows().size(); i++) {
            GaugeReadings read = written.only(i).read(made);
            if (!written.taken(i)) {
                rows.add(BesideModel.notTaken());
            } else if (read.wrong()) {
                Problem first = read.problems().get(0);
                rows.add(BesideModel.leftOut(first.message(), first.mend()));
            } else {
                GaugeReading reading = read.readings().get(0);
                GaugesAt there = solved.computeIfAbsent(reading.at(), at -> GaugesAt.of(made, at));
                step.run();
                rows.add(BesideModel.of(reading, there.shown(reading.meter())));
            }
        }
        return rows;
    }

    /** Whether the readings that can be taken as they stand agree with the build: at once. */
    LiveCausesRecord agreement(LiveQuestion question, Quantity.UnitSystem units) {
        return told(question, units, LiveCausesRecord.HowFar.AGREEMENT, GaugeDiagnosis::agreement);
    }

    /** And what may explain them. */
    LiveCausesRecord likely(LiveQuestion question, Quantity.UnitSystem units, Runnable step) {
        return told(
                question, units, LiveCausesRecord.HowFar.CAUSES, (build, readings) -> causes(question, readings, step));
    }

    /** And what to read next: all that {@code gauge} answers to them. */
    LiveCausesRecord causes(LiveQuestion question, Quantity.UnitSystem units, Runnable step) {
        return told(
                question,
                units,
                LiveCausesRecord.HowFar.ALL,
                (build, readings) -> causes(question, readings, step).withNext(build, step));
    }

    /** Solves what readings at these places will be compared with once they are taken, while nothing else is asked. */
    Map<String, Object> ahead(LiveQuestion question, Runnable step) {
        try {
            readings(question).ifPresent(places -> solved(sound(question)).solve(places.readings(), step));
        } catch (UnsolvedPointException unsolved) {
            return Map.of("solved", false); // said once a reading is taken there
        }
        return Map.of("solved", true);
    }

    private GaugeDiagnosis causes(LiveQuestion question, List<GaugeReading> readings, Runnable step) {
        AskedState sound = sound(question);
        return causes.of(
                new Explained(sound, asked(question).readings()),
                () -> GaugeDiagnosis.causes(solved(sound), readings, step));
    }

    private SolvedFaults solved(AskedState sound) {
        return solved.of(sound, () -> new SolvedFaults(unit.adjustable(sound)));
    }

    private static AskedState sound(LiveQuestion question) {
        return question.state().withoutFaults().drivenAsWritten();
    }

    private LiveCausesRecord told(
            LiveQuestion question,
            Quantity.UnitSystem units,
            LiveCausesRecord.HowFar much,
            BiFunction<Adjustable, List<GaugeReading>, GaugeDiagnosis> diagnosis) {
        Transmission made = unit.unit(sound(question));
        List<GaugeReading> readings = readings(question)
                .orElseThrow(() -> new WrongStateException(LivePhrase.NO_READINGS))
                .readings();
        try {
            GaugeDiagnosis found = diagnosis.apply(unit.adjustable(sound(question)), readings);
            return LiveCausesRecord.of(much, GaugeAnswer.of(units, unit.circuit(), made, sheet(question), found));
        } catch (UnsolvedPointException unsolved) {
            throw new WrongStateException(LivePhrase.notExpected(
                    made.build(),
                    unsolved.point().range(),
                    Rpm.of(unsolved.point().speed())));
        }
    }

    /** The readings that can be taken as they stand; empty where there is none. */
    Optional<GaugeReadings> readings(LiveQuestion question) {
        WrittenReadings written = asked(question).written();
        Transmission made = unit.unit(sound(question));
        List<GaugeReading> readings = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < written.rows().size(); i++) {
            if (written.taken(i)) {
                GaugeReadings one = written.only(i).read(made);
                if (!one.wrong()) {
                    readings.addAll(one.readings());
                    notes.addAll(one.notes());
                }
            }
        }
        return readings.isEmpty() ? Optional.empty() : Optional.of(new GaugeReadings(readings, notes, List.of()));
    }

    /** Name of the sheet that the readings come from. */
    static String sheet(LiveQuestion question) {
        String file = asked(question).file();
        return file == null ? LivePhrase.TYPED_IN : file;
    }

    /** The readings as a sheet that {@code gauge} reads; the mark at its beginning tells every spreadsheet that it is UTF-8. */
    LiveFileRecord file(LiveQuestion question) {
        return new LiveFileRecord(
                unit.circuit().name() + "-readings.csv",
                "\uFEFF" + asked(question).written().csv());
    }

    /** The rows of a sheet, or what is wrong with it: it is taken over whole or not at all. */
    LiveReadingsRecord taken(LiveQuestion question) {
        AskedGauges asked = asked(question);
        if (asked.sheet() == null) {
            throw new WrongStateException(LivePhrase.NO_READINGS);
        }
        String text = asked.sheet().startsWith("\uFEFF") ? asked.sheet().substring(1) : asked.sheet();
        MeasurementSheet sheet = new MeasurementSheet(sheet(question), text);
        List<Problem> problems = ReadingsReader.read(sheet, unit.unit(question.state())).problems().stream()
                .filter(problem -> problem.code() != ProblemCode.NO_READINGS)
                .toList();
        return problems.stream().anyMatch(problem -> problem.severity() == Problem.Severity.ERROR)
                ? LiveReadingsRecord.refused(problems)
                : LiveReadingsRecord.taken(WrittenReadings.of(sheet).rows(), problems);
    }
}
