package hotidle.answer;

import hotidle.answer.phrase.NotKnownPhrase;
import hotidle.study.Judgement;
import java.util.List;

/** Limits of which it is not known whether they hold, as a study names them. */
public final class NotKnown {

    private NotKnown() {}

    /** What is said of them once a build; empty without any. */
    public static String said(List<Judgement.Key> keys) {
        return NotKnownPhrase.of(limits(keys), "");
    }

    /** What is said of those of a range of set pressures: at the one that a build has, some of them may be known. */
    public static String saidOfRange(List<Judgement.Key> keys) {
        return NotKnownPhrase.of(limits(keys), NotKnownPhrase.SOMEWHERE);
    }

    /** The same in a line. */
    public static String brief(List<Judgement.Key> keys) {
        return NotKnownPhrase.brief(limits(keys), "");
    }

    /** Those of a range of set pressures in a line. */
    public static String briefOfRange(List<Judgement.Key> keys) {
        return NotKnownPhrase.brief(limits(keys), NotKnownPhrase.SOMEWHERE);
    }

    /** The same beneath a table of limits that are known, with the reason or without. */
    public static String beside(List<Judgement.Key> keys, boolean why) {
        return NotKnownPhrase.beside(limits(keys), why);
    }

    private static List<NotKnownPhrase.OpenLimit> limits(List<Judgement.Key> keys) {
        return keys.stream()
                .map(key -> new NotKnownPhrase.OpenLimit(key.kind(), key.part(), key.duty()))
                .toList();
    }
}
