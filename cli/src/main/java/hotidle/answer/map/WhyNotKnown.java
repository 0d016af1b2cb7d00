package hotidle.answer.map;

import hotidle.answer.phrase.MapPhrase;
import hotidle.study.WindowMap;

/** Why a point of a map is not known. */
final class WhyNotKnown {

    private WhyNotKnown() {}

    /** The reason; empty where the point is known. */
    static String of(WindowMap.MapCell cell) {
        return cell.why()
                .map(why -> switch (why.obstacle()) {
                    case SIZE_IMPOSSIBLE -> MapPhrase.IMPOSSIBLE;
                    case UNSOLVED -> MapPhrase.unsolved(why.duty().orElseThrow());
                    case NOTHING_JUDGED -> MapPhrase.NOTHING_JUDGED;
                })
                .orElse("");
    }
}
