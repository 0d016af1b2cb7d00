package hotidle.answer.phrase;

import java.util.ArrayList;
import java.util.List;

/** What is said of a circuit in which nothing is commanded. */
public final class BenchPhrase {

    private BenchPhrase() {}

    /** States that were not found, the first of them named. */
    public static String notKnown(int states, String first) {
        return "NOT KNOWN: no steady state was found of " + first
                + (states > 1 ? " and at " + CountPhrase.of(states - 1, "place") + " more" : "") + ".";
    }

    /** What is left for the whole text; empty where nothing is. */
    public static String more(int rows, int duties, int builds) {
        List<String> left = new ArrayList<>();
        if (rows > 0) {
            left.add(CountPhrase.of(rows, "more line"));
        }
        if (duties > 0) {
            left.add(CountPhrase.of(duties, "more driving condition"));
        }
        if (builds > 0) {
            left.add(CountPhrase.of(builds, "more build"));
        }
        return left.isEmpty() ? "" : String.join(", ", left) + " with --full.";
    }
}
