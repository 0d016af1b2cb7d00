package hotidle.answer.gauge;

import hotidle.answer.phrase.GaugePhrase;
import hotidle.study.gauge.Cause;
import hotidle.study.gauge.NextReading;
import java.util.ArrayList;
import java.util.List;

/** What a next reading would tell apart: all causes that read alike there, by their parts where these are enough. */
final class NamedAlike {

    private NamedAlike() {}

    /** A name for each prediction. */
    static List<String> of(List<NextReading.Prediction> predicted) {
        List<Cause> all =
                predicted.stream().flatMap(one -> one.alike().stream()).toList();
        long parts = all.stream().map(cause -> cause.fault().part()).distinct().count();
        boolean enough = parts == all.size()
                && all.stream().noneMatch(cause -> cause.fault().part().isEmpty());
        List<String> names = new ArrayList<>();
        for (NextReading.Prediction one : predicted) {
            names.add(GaugePhrase.anyOf(one.alike().stream()
                    .map(cause -> enough ? cause.fault().part() : CauseWords.brief(cause))
                    .toList()));
        }
        return names;
    }
}
