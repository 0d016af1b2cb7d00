package hotidle.answer;

import hotidle.study.BuildVerdict;
import hotidle.study.Judgement;
import java.util.List;

/** A limit at a duty as JSON. */
public record LimitRecord(String duty, String margin, String part) {

    public static LimitRecord of(Judgement.Key key) {
        return new LimitRecord(key.duty(), key.kind().word(), key.part());
    }

    /** The limit that is told first. */
    public static LimitRecord of(BuildVerdict.FirstLimit first) {
        return new LimitRecord(
                first.duty(), first.margin().kind().word(), first.margin().part());
    }

    public static List<LimitRecord> of(List<Judgement.Key> keys) {
        return keys.stream().map(LimitRecord::of).toList();
    }
}
