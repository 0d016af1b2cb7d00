package hotidle.cli.live;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Rpm;
import hotidle.answer.gauge.CauseWords;
import hotidle.answer.live.LessonGaugeRecord;
import hotidle.answer.live.LessonRevealRecord;
import hotidle.answer.live.LessonReviewRecord;
import hotidle.answer.phrase.HiddenFaultPhrase;
import hotidle.answer.phrase.HiddenFaultPhrase.Judged;
import hotidle.answer.phrase.UnitFaultPhrase;
import hotidle.circuits.WrittenFault;
import hotidle.fault.UnitFault;
import hotidle.study.gauge.FittedFault;
import hotidle.study.gauge.Galleries;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.GaugeValues;
import hotidle.study.gauge.LessonFaults;
import hotidle.study.gauge.LessonReview;
import hotidle.study.gauge.NextReading;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A lesson that is over.
 *
 * @param circuit its name
 * @param answer  name of the fault that was named; empty where none was
 * @param rows    read by the pupil
 */
record RevealedLesson(
        String circuit,
        Quantity.UnitSystem units,
        Lessons.OpenLesson open,
        String answer,
        List<GaugeReading.Row> rows,
        Runnable step) {

    /** Speeds of the curve [rev/s]: 500 to 3500 rpm in steps of 50 (chosen). */
    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(10, 70).mapToObj(i -> i * 50 / 60.0).toList();

    /** Gauges named at which the fault shows (chosen). */
    private static final int MOST_SHOWN = 3;

    /** Readings of the pupil that are looked back at, those furthest from what a sound unit reads: each costs time (ours). */
    private static final int MOST_REVIEWED = 24;

    /** What it was. */
    LessonRevealRecord reveal() {
        UnitFault fault = open.fault().fault();
        Optional<UnitFault> named = named();
        Optional<FittedFault> explained = named.flatMap(this::fitted);
        Optional<UnitFault.Sized> fitted = explained.map(FittedFault::fault);
        Optional<Transmission> answered =
                fitted.flatMap(one -> one.fault().in(open.lesson().build(), one.size()));
        List<LessonFaults.Shown> shown = different();
        String written = WrittenFault.of(open.fault());
        String build = open.sound().build();
        return new LessonRevealRecord(
                written,
                HiddenFaultPhrase.fault(build, UnitFaultPhrase.named(fault.kind(), fault.part()), size(open.fault())),
                HiddenFaultPhrase.judged(
                        judged(named), explained.filter(FittedFault::explains).isPresent()),
                named.map(one -> HiddenFaultPhrase.answer(
                                UnitFaultPhrase.named(one.kind(), one.part()),
                                fitted.map(this::size).orElse(""),
                                fitted.isPresent() && !rows.isEmpty()))
                        .orElse(""),
                rows.stream().map(row -> line(row, answered)).toList(),
                shown.stream().map(one -> line(one.row(), answered)).toList(),
                gentlest(),
                curve(shown.get(0).row(), answered),
                HiddenFaultPhrase.command(circuit, build, written));
    }

    private String size(UnitFault.Sized one) {
        return new CauseWords(units).size(one.fault(), one.size());
    }

    private Optional<UnitFault> named() {
        return open.lesson().faults().stream()
                .filter(one -> one.name().equals(answer))
                .findFirst();
    }

    /** The named fault as large as explains the readings best; without readings half of what it can be. */
    private Optional<FittedFault> fitted(UnitFault named) {
        List<GaugeReading> read = read();
        return read.isEmpty()
                ? Optional.of(new FittedFault(named.of(named.sizeAt(0.5)), false))
                : FittedFault.of(open.lesson().build(), named, read);
    }

    /**
     * A reading of the pupil.
     *
     * @param off by so many deviations it differs from what a sound unit reads [-]
     */
    private record Taken(GaugeReading reading, double off) {}

    /** Readings where both units have a state, in the order in which they were taken; of too many those furthest off. */
    private List<GaugeReading> read() {
        List<Taken> taken =
                rows.stream().distinct().flatMap(row -> taken(row).stream()).toList();
        Set<Taken> furthest = taken.stream()
                .sorted(Comparator.comparingDouble((Taken one) -> -one.off()))
                .limit(MOST_REVIEWED)
                .collect(Collectors.toSet());
        return taken.stream().filter(furthest::contains).map(Taken::reading).toList();
    }

    private Optional<Taken> taken(GaugeReading.Row row) {
        OptionalDouble value = GaugeValues.of(open.faulty(), row);
        step.run();
        return value.isEmpty()
                ? Optional.empty()
                : open.lesson().band(row).map(sound -> {
                    double shown = LiveLesson.dial(value.getAsDouble());
                    return new Taken(
                            LessonReview.reading(row, shown), Math.abs(shown - sound.mean()) / sound.deviation());
                });
    }

    private Judged judged(Optional<UnitFault> named) {
        if (named.isEmpty()) {
            return Judged.NONE;
        }
        UnitFault fault = open.fault().fault();
        UnitFault other = named.get();
        if (other.name().equals(fault.name())) {
            return Judged.RIGHT;
        }
        if (gallery(other).equals(gallery(fault))) {
            return Judged.ALIKE;
        }
        if (other.kind() == fault.kind()) {
            return Judged.KIND;
        }
        return other.part().equals(fault.part()) ? Judged.PART : Judged.WRONG;
    }

    private String gallery(UnitFault fault) {
        return Galleries.of(open.sound().network(), fault);
    }

    /** Where the fault shows most, no two of the same gauge. */
    private List<LessonFaults.Shown> different() {
        List<LessonFaults.Shown> different = new ArrayList<>();
        for (LessonFaults.Shown one : open.lesson().shown(open.fault())) {
            if (different.size() < MOST_SHOWN
                    && different.stream()
                            .noneMatch(other ->
                                    other.row().meter().equals(one.row().meter()))) {
                different.add(one);
            }
        }
        return different;
    }

    private String gentlest() {
        return open.lesson()
                .gentlest(open.fault())
                .map(one -> new HiddenFaultPhrase(units).gentlest(place(one.row()), one.value(), one.sound()))
                .orElse("");
    }

    private String place(GaugeReading.Row row) {
        double temperature = row.at().temperature();
        return new HiddenFaultPhrase(units)
                .place(
                        row.meter().name(),
                        row.at().speed(),
                        row.at().range(),
                        Double.isNaN(temperature) ? OptionalDouble.empty() : OptionalDouble.of(temperature));
    }

    private LessonRevealRecord.ReadLine line(GaugeReading.Row row, Optional<Transmission> answered) {
        step.run();
        return new LessonRevealRecord.ReadLine(
                place(row),
                LessonGaugeRecord.of(row),
                GaugeValues.of(open.faulty(), row),
                GaugeValues.of(open.sound(), row),
                answered.map(unit -> GaugeValues.of(unit, row)).orElse(OptionalDouble.empty()));
    }

    private LessonRevealRecord.GaugeCurve curve(GaugeReading.Row row, Optional<Transmission> answered) {
        return new LessonRevealRecord.GaugeCurve(
                place(row),
                SPEEDS.stream().map(Rpm::of).toList(),
                GaugeValues.overSpeed(open.sound(), row, SPEEDS, step),
                GaugeValues.overSpeed(open.faulty(), row, SPEEDS, step),
                answered.map(unit -> GaugeValues.overSpeed(unit, row, SPEEDS, step))
                        .orElse(List.of()));
    }

    /**
     * What the readings told, and which to take next. A page that takes each time what is told here, from where the fault shows most on,
     * goes a short way to it.
     *
     * @throws WrongStateException where there is no reading
     */
    LessonReviewRecord review() {
        List<GaugeReading> read = read();
        if (read.isEmpty()) {
            throw new WrongStateException(HiddenFaultPhrase.READINGS);
        }
        LessonReview review =
                LessonReview.of(open.lesson().build(), open.fault().fault(), read, step);
        return new LessonReviewRecord(
                HiddenFaultPhrase.told(
                        read.size(),
                        (int) rows.stream().distinct().count(),
                        review.agrees(),
                        review.share(),
                        review.left()),
                HiddenFaultPhrase.after(review.agrees(), review.share(), review.left()),
                review.found(),
                review.agrees()
                        ? HiddenFaultPhrase.SHOWS_ELSEWHERE
                        : review.next().map(this::next).orElse(HiddenFaultPhrase.NOTHING_NEXT),
                review.next().map(NextReading::row).map(LessonGaugeRecord::of));
    }

    private String next(NextReading reading) {
        return new HiddenFaultPhrase(units)
                .next(
                        place(reading.row()),
                        reading.predicted().stream()
                                .map(one -> UnitFaultPhrase.brief(
                                        one.cause().fault().kind(),
                                        one.cause().fault().part()))
                                .toList(),
                        reading.predicted().stream()
                                .map(NextReading.Prediction::value)
                                .toList());
    }
}
