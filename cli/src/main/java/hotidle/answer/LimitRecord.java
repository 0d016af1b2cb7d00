package hotidle.answer;

import hotidle.study.Judgement;
import java.util.List;

/** A limit at a duty as JSON. */
public record LimitRecord(String duty, String margin, String part) {

    public static LimitRecord of(Judgement.Key key) {
        return new LimitRecord(key.duty(), key.kind().word(), key.part());
    }

    public static List<LimitRecord> of(List<Judgement.Key> keys) {
        return keys.stream().map(LimitRecord::of).toList();
    }
}
