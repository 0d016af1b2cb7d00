package hotidle.answer.window;

import hotidle.answer.NotKnown;
import hotidle.answer.UsefulPressureSentence;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.CustomerPhrase;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.OwnHeatPhrase;
import hotidle.answer.phrase.WindowPhrase;
import hotidle.assess.Assumed;
import hotidle.study.Judgement;
import hotidle.study.NoSetPressure;
import hotidle.study.Window;
import hotidle.transmission.SetPressure;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which sentence is said of a window. */
record WindowSentences(Quantity.UnitSystem units, int named, boolean assumptions) {

    /** Limits that the first screen names (chosen). */
    private static final int MOST_NAMED = 3;

    WindowSentences(Quantity.UnitSystem units) {
        this(units, Integer.MAX_VALUE, false);
    }

    private WindowPhrase phrase() {
        return new WindowPhrase(units);
    }

    /** The same in short: an assumption is called one, and of many limits the first are named. */
    String brief(WindowAnswer.BuildWindow one) {
        return new WindowSentences(units, MOST_NAMED, true).summary(one);
    }

    /** The same for somebody who does not know the trade. */
    String plain(WindowAnswer.BuildWindow one, String when) {
        CustomerPhrase phrase = new CustomerPhrase(units);
        Window window = one.window();
        List<Window.SetPoint> tried = window.points();
        return window.noneHolds().isPresent()
                ? phrase.mayNotSet(
                        when,
                        tried.get(0).pressure(),
                        tried.get(tried.size() - 1).pressure())
                : phrase.maySet(
                        when,
                        window.all().stream()
                                .map(range -> phrase.range(range.low(), range.high()))
                                .toList(),
                        one.unit().highestSet());
    }

    /** Which set pressures hold every limit, or why none does. */
    String summary(WindowAnswer.BuildWindow one) {
        Window window = one.window();
        List<Window.SetPoint> tried = window.points();
        return window.noneHolds()
                .map(why -> phrase().none(
                                one.name(),
                                tried.get(0).pressure(),
                                tried.get(tried.size() - 1).pressure(),
                                because(why)))
                .orElseGet(() -> WindowPhrase.holds(
                        one.name(),
                        window.all().stream().map(this::range).toList(),
                        now(one),
                        assumptions
                                ? NotKnown.briefOfRange(window.undecided())
                                : NotKnown.saidOfRange(window.undecided())));
    }

    /** How high it may be set. */
    String maySet(WindowAnswer.BuildWindow one) {
        Window window = one.window();
        List<Window.SetPoint> tried = window.points();
        int conditions = one.unit().judgedDuties().size();
        WindowSentences few = new WindowSentences(units, MOST_NAMED, false);
        return window.noneHolds()
                .map(why -> phrase().setToNone(
                                tried.get(0).pressure(),
                                tried.get(tried.size() - 1).pressure(),
                                conditions,
                                few.because(why)))
                .orElseGet(() -> WindowPhrase.setTo(
                        window.all().stream().map(this::range).toList(),
                        conditions,
                        NotKnown.briefOfRange(window.undecided())));
    }

    private String because(NoSetPressure why) {
        if (!why.never().isEmpty()) {
            return WindowPhrase.never(why.never().stream().map(this::told).toList(), named);
        }
        if (why.needs().isEmpty() || why.bears().isEmpty()) {
            return WindowPhrase.NOT_TOGETHER;
        }
        NoSetPressure.End needs = why.needs().get();
        NoSetPressure.End bears = why.bears().get();
        return phrase().apart(told(needs.limit()), needs.pressure(), told(bears.limit()), bears.pressure());
    }

    private String range(Window.PressureRange range) {
        return phrase().range(
                        range.low(),
                        range.high(),
                        range.lowBy()
                                .map(key -> WindowPhrase.failsBelow(told(key)))
                                .orElse(WindowPhrase.NO_LOWER),
                        range.highBy()
                                .map(key -> WindowPhrase.failsAbove(told(key)))
                                .orElse(WindowPhrase.NO_HIGHER));
    }

    private String now(WindowAnswer.BuildWindow one) {
        double set = one.unit().highestSet();
        return one.unit().command().pilot().isPresent() ? phrase().commands(set) : phrase().springSets(set);
    }

    /** What stands below the verdict of a build: what is not known, where it is too hot, and below what it cannot be set. */
    List<String> besides(WindowAnswer.BuildWindow one) {
        return Stream.of(notKnown(one), tooHot(one), lowest(one))
                .flatMap(Optional::stream)
                .toList();
    }

    /** Below what it cannot be set; empty where all pressures tried are above that. */
    private Optional<String> lowest(WindowAnswer.BuildWindow one) {
        double tried = one.window().points().get(0).pressure();
        double lowest = SetPressure.lowest(one.unit(), SetPressure.By.COMMAND_AND_SPRING);
        return lowest > 0 && tried - lowest < SetPressure.PSI
                ? Optional.of(phrase().lowest(one.name(), tried))
                : Optional.empty();
    }

    /** Where something was not found; empty where all is known. */
    Optional<String> notKnown(WindowAnswer.BuildWindow one) {
        List<Window.SetPoint> points = one.window().notKnown();
        if (points.isEmpty()) {
            return Optional.empty();
        }
        List<String> duties = points.stream()
                .flatMap(point -> point.unsolved().stream())
                .distinct()
                .toList();
        return Optional.of(phrase().notKnown(
                        one.name(),
                        duties,
                        points.size(),
                        one.window().points().size(),
                        points.get(0).pressure()));
    }

    /** Where heat leaves no temperature; empty where it does everywhere. */
    Optional<String> tooHot(WindowAnswer.BuildWindow one) {
        List<Window.SetPoint> points = one.window().tooHot();
        return points.isEmpty()
                ? Optional.empty()
                : Optional.of(new OwnHeatPhrase(units)
                        .raised(
                                one.name(),
                                points.stream()
                                        .flatMap(point -> point.noTemperature().stream())
                                        .distinct()
                                        .toList(),
                                points.get(0).pressure()));
    }

    /**
     * Up to which set pressure more torque is held; empty where nothing but clutches is judged.
     *
     * @param brief where builds stand side by side
     */
    Optional<String> useful(WindowAnswer.BuildWindow one, boolean brief) {
        return one.useful()
                .flatMap(useful -> brief
                        ? UsefulPressureSentence.brief(units, one.name(), useful)
                        : UsefulPressureSentence.of(units, one.name(), useful));
    }

    private String told(Judgement.Key key) {
        return limit(key) + (assumptions && Assumed.limit(key.kind()) ? WindowPhrase.ASSUMED : "");
    }

    static String limit(Judgement.Key key) {
        return LimitPhrase.at(key.kind(), key.part(), key.duty());
    }
}
