package hotidle.answer.gauge;

import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.GaugePhrase;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.fault.FaultKind;
import hotidle.study.gauge.FitsTogether;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.Meter;
import hotidle.study.gauge.NextReading;
import hotidle.study.gauge.TestPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is said of gauge readings: what is wrong, how sure, what next. */
final class GaugeScreen {

    /** Readings that stand out, groups, and others in a group, on the first screen (chosen). */
    private static final int READINGS = 3;

    private static final int GROUPS = 4;
    private static final int OTHERS = 4;

    private final GaugeAnswer answer;
    private final GaugeFindings found;
    private final GaugePhrase phrase;
    private final CauseLines causes;
    private final ReadingLines readings;

    GaugeScreen(GaugeAnswer answer) {
        this.answer = answer;
        found = answer.findings();
        phrase = new GaugePhrase(answer.units());
        causes = new CauseLines(new CauseWords(answer.units()), found);
        readings = new ReadingLines(found, phrase);
    }

    String first() {
        FirstScreen screen = new FirstScreen(NoStallPhrase.of(answer.low()) + Caution.of(answer.commanded(), false));
        screen.add(Wrap.lines(HeadingPhrase.headed(answer.circuit(), answer.about()), "", "  "));
        screen.add(verdict());
        screen.add(readings.standOut(READINGS));
        if (found.agreement().agrees()) {
            screen.addWhereRoom(onRegulator());
        } else {
            screen.add(readings.sound());
            screen.add(Wrap.lines(headed(), "", "  "));
            String next = next(1);
            List<CauseLines.CauseLine> shown = new ArrayList<>();
            for (CauseLines.CauseLine line : causes.lines(GROUPS, OTHERS)) {
                if (line.text().lines().count() + next.lines().count() <= screen.room() - 2) {
                    screen.add(line.text());
                    shown.add(line);
                }
            }
            CauseLines.rest(shown).ifPresent(rest -> screen.add(rest.text()));
            screen.addWhereRoom(next);
        }
        screen.addWhereRoom(Wrap.lines(
                GaugePhrase.hidden(
                        found.agreement().agrees(),
                        found.invisible().size(),
                        found.causes().size()),
                "",
                "  "));
        return screen.text();
    }

    String full() {
        StringBuilder text =
                new StringBuilder(Wrap.lines(HeadingPhrase.headed(answer.circuit(), answer.about()), "", "  "));
        text.append("\n").append(Caution.whole(answer.commanded())).append("\n").append(NoStallPhrase.of(answer.low()));
        text.append("\n").append(verdict());
        text.append(Wrap.lines(
                GaugePhrase.misfit(
                        found.agreement().chiSquare(), found.agreement().degrees()),
                "",
                "  "));
        GaugeRows rows = new GaugeRows(answer);
        text.append("\n").append(rows.readings().aligned());
        text.append("\n").append(readings.standOut(found.readings().size()));
        text.append(found.agreement().agrees() ? "" : readings.sound());
        text.append(onRegulator());
        if (!found.agreement().agrees()) {
            text.append("\n").append(Wrap.lines(headed(), "", "  "));
            withRest(Integer.MAX_VALUE).forEach(text::append);
            text.append("\n").append(next(answer.next().size()));
        }
        text.append("\n").append(rows.causes().folded(Wrap.WIDTH));
        answer.fits().ifPresent(fits -> text.append("\n").append(fits(rows, fits)));
        return text.append("\n").append(Wrap.lines(GaugePhrase.ASSUMED, "", "")).toString();
    }

    /** The same a sentence each, for a page; those that belong to the one before begin with a blank. */
    List<String> said() {
        List<String> said = new ArrayList<>(List.of(
                joined(verdict()), joined(readings.standOut(found.readings().size())), joined(onRegulator())));
        if (!found.agreement().agrees()) {
            said.add(headed());
            withRest(Integer.MAX_VALUE).forEach(line -> said.add(" " + joined(line)));
            if (answer.next().isEmpty()) {
                said.add(nothingNext());
            }
            answer.next().forEach(reading -> said.add(joined(next(reading))));
        }
        return said;
    }

    /** The same part by part. */
    ToldReadings told() {
        boolean agrees = found.agreement().agrees();
        return new ToldReadings(
                agrees,
                joined(verdict()),
                joined(readings.standOut(found.readings().size())),
                joined(onRegulator()),
                agrees ? "" : headed(),
                agrees
                        ? List.of()
                        : withRest(OTHERS).stream().map(GaugeScreen::joined).toList(),
                agrees || answer.next().isEmpty()
                        ? List.of()
                        : answer.next().stream()
                                .map(reading -> joined(next(reading)))
                                .toList(),
                agrees || !answer.next().isEmpty() ? "" : nothingNext(),
                new GaugeRows(answer).causes().head(),
                new GaugeRows(answer).causes().body(),
                GaugePhrase.ASSUMED,
                joined(NoStallPhrase.of(answer.low())));
    }

    private static String joined(String lines) {
        return lines.strip().replaceAll("\\s+", " ");
    }

    /** The most likely sizes of all fits together. */
    private String fits(GaugeRows rows, FitsTogether fits) {
        if (!fits.settled()) {
            return Wrap.lines(GaugePhrase.NO_FITS, "", "  ");
        }
        int told = fits.told().size();
        return Wrap.lines(GaugePhrase.fits(fits.chiSquare(), found.agreement().degrees()), "", "  ")
                + (told == 0 ? "" : "\n" + rows.fits(fits).aligned() + "\n")
                + Wrap.lines(GaugePhrase.untold(fits.sizes().size() - told, told), "", "  ");
    }

    private String verdict() {
        GaugeFindings.Agreement agreement = found.agreement();
        return Wrap.lines(
                GaugePhrase.verdict(
                        answer.build(),
                        found.readings().size(),
                        answer.file(),
                        agreement.agrees(),
                        agreement.probability(),
                        agreement.agrees() || agreement.probability() < GaugeFindings.DISAGREE),
                "",
                "  ");
    }

    /** Over the causes. */
    private String headed() {
        return GaugePhrase.causes(found.nothingFits(), found.agreement().degrees());
    }

    /** All causes, and what is left to those that are not named. */
    private List<String> withRest(int others) {
        List<CauseLines.CauseLine> lines = causes.lines(Integer.MAX_VALUE, others);
        return Stream.concat(lines.stream(), CauseLines.rest(lines).stream())
                .map(CauseLines.CauseLine::text)
                .toList();
    }

    private String nothingNext() {
        long single = found.groups().stream()
                .mapToLong(group -> group.causes().size())
                .sum();
        if (found.nothingFits()) {
            return GaugePhrase.FIRST_CHECK;
        }
        return single == 1 ? GaugePhrase.ONE_LEFT : GaugePhrase.NOTHING_NEXT;
    }

    private String next(int most) {
        if (answer.next().isEmpty()) {
            return Wrap.lines(nothingNext(), "", "  ");
        }
        return answer.next().stream().limit(most).map(this::next).collect(Collectors.joining());
    }

    private String next(NextReading next) {
        TestPoint at = next.row().at();
        List<NextReading.Prediction> predicted =
                next.predicted().subList(0, Math.min(next.predicted().size(), GROUPS));
        return Wrap.lines(
                phrase.next(
                        readings.place(next.row()),
                        next.row().meter().reads() == Meter.Reads.PRESSURE,
                        at.commanded().isPresent()
                                ? phrase.commanded(at.commanded().getAsDouble())
                                : "",
                        NamedAlike.of(predicted),
                        predicted.stream().map(NextReading.Prediction::value).toList()),
                "",
                "  ");
    }

    /** What is to be said where every reading stands on the regulator and no leak of a usual size can show. */
    private String onRegulator() {
        boolean leaks = found.causes().stream()
                .anyMatch(cause -> cause.visible()
                        && cause.fault().kind().sizeOf() == FaultKind.SizeOf.WEAR
                        && cause.hidden() < 1);
        GaugeAnswer.Hardest hardest = answer.hardest();
        return found.regulated() < found.readings().size() || leaks
                ? ""
                : Wrap.lines(
                        phrase.onRegulator(
                                found.readings().size(),
                                found.readings().stream().anyMatch(hardest::readAt)
                                        ? ""
                                        : phrase.hardest(hardest.speed(), hardest.temperature(), hardest.commanded())),
                        "",
                        "  ");
    }
}
