package hotidle.answer.phrase;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Clutches and bands of which nothing is judged. */
public final class NotJudgedPhrase {

    private NotJudgedPhrase() {}

    /** Their names, each with the ranges that apply it. */
    public static String of(Map<String, List<String>> ranges) {
        String names = ranges.entrySet().stream()
                .map(one -> one.getKey() + " (" + String.join(", ", one.getValue()) + ")")
                .collect(Collectors.joining(", "));
        return "Not judged, since no driving condition is in a range that applies it: " + names
                + ". 'margins' says nothing of it before there is a driving condition in such a range.";
    }
}
