package hotidle.answer.phrase;

import hotidle.answer.format.Wrap;
import java.util.List;

/** The caution that a unit with low idle pressure is not stall-tested (common practice). */
public final class NoStallPhrase {

    private NoStallPhrase() {}

    /** The caution for the builds concerned, wrapped; empty without any. */
    public static String of(List<String> builds) {
        return builds.isEmpty()
                ? ""
                : Wrap.lines(
                        "IDLE PRESSURE IS LOW with " + String.join(", ", builds)
                                + ": no stall test, whatever is worked out for one here.",
                        "",
                        "");
    }
}
