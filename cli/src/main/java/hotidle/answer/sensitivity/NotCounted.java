package hotidle.answer.sensitivity;

import hotidle.answer.phrase.SensitivityPhrase;
import hotidle.assess.Margin;
import hotidle.study.LeftOut;
import java.util.List;

/** What has no slope, each with its reason. */
final class NotCounted {

    private NotCounted() {}

    static List<String> of(List<LeftOut> all) {
        return all.stream().map(NotCounted::of).toList();
    }

    private static String of(LeftOut one) {
        String margin = one.kind().map(Margin.Kind::word).orElse("");
        return switch (one.cause()) {
            case HELD_LINE_UNSOLVED -> SensitivityPhrase.heldLineUnsolved(margin, one.duty());
            case VALUE_NOT_KNOWN -> SensitivityPhrase.valueNotKnown(margin, one.name(), one.duty());
            case NOTHING_NEEDED -> SensitivityPhrase.nothingNeeded(margin, one.name(), one.duty());
            case SIZE_IS_NIL -> SensitivityPhrase.nil(one.name());
            case SIZE_IS_FIXED -> SensitivityPhrase.fixed(one.name());
        };
    }
}
