package hotidle.answer;

import hotidle.answer.phrase.NotKnownPhrase;
import hotidle.study.Judgement;
import java.util.List;

/** Limits of which it is not known whether they hold, as a study names them. */
public final class NotKnown {

    private NotKnown() {}

    /** What is said of them once a build; empty without any. */
    public static String said(List<Judgement.Key> keys) {
        return NotKnownPhrase.of(keys.stream()
                .map(key -> new NotKnownPhrase.OpenLimit(key.kind(), key.part(), key.duty()))
                .toList());
    }
}
