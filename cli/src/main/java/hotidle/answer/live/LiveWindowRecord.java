package hotidle.answer.live;

import hotidle.answer.format.Quantity;
import hotidle.answer.window.WindowAnswer;
import hotidle.study.Window;
import java.util.List;

/**
 * Which set pressures hold the line and every limit.
 *
 * @param ranges   of set pressure [Pa] in which all hold, rising
 * @param said     the same in a sentence, with what fails first beyond; empty where nothing commands the line
 * @param notKnown what of it was not found, in a sentence; empty where all is known
 */
public record LiveWindowRecord(List<HeldRange> ranges, String said, String notKnown) {

    /** Of a circuit whose line nothing commands. */
    public static final LiveWindowRecord NOTHING_COMMANDED = new LiveWindowRecord(List.of(), "", "");

    /** From which to which set pressure all hold [Pa]. */
    public record HeldRange(double lowPa, double highPa) {
        static HeldRange of(Window.PressureRange range) {
            return new HeldRange(range.low(), range.high());
        }
    }

    public LiveWindowRecord {
        ranges = List.copyOf(ranges);
    }

    public static LiveWindowRecord of(Quantity.UnitSystem units, WindowAnswer.BuildWindow one) {
        return new LiveWindowRecord(
                one.window().all().stream().map(HeldRange::of).toList(),
                WindowAnswer.maySet(units, one),
                WindowAnswer.notKnown(units, one).orElse(""));
    }
}
