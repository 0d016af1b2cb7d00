package hotidle.study.spread;

import hotidle.assess.Margin;
import hotidle.study.Judgement;
import java.util.List;
import java.util.Map;

/**
 * A unit that was drawn, and what came of it.
 *
 * @param shares     of each size drawn [-]
 * @param impossible whether its sizes cannot go together, so that there is no such unit
 * @param unsolved   duty points at which no state was found
 * @param margins    found
 */
@SuppressWarnings("ArrayRecordComponent") // a row of a block, which nobody changes
public record DrawnUnit(
        double[] shares, boolean impossible, List<String> unsolved, Map<Judgement.Key, Margin> margins) {

    /**
     * Headroom of a margin [-]: −1 where it fails without a value, as a film does in metal contact, that is none; NaN where it is not
     * known, infinite where nothing is needed.
     */
    public double headroom(Judgement.Key key) {
        Margin margin = margins.get(key);
        if (margin == null) {
            return Double.NaN;
        }
        return Double.isNaN(margin.headroom()) && margin.known() ? -1 : margin.headroom();
    }

    /** 1 where a margin is known to hold, 0 where it is known to fail or not known; NaN where the unit or its state is not there. */
    public double holds(Judgement.Key key) {
        Margin margin = margins.get(key);
        return margin == null ? Double.NaN : held(margin) ? 1 : 0;
    }

    /** Whether a margin is known to fail. */
    boolean fails(Judgement.Key key) {
        Margin margin = margins.get(key);
        return margin != null && margin.verdict() == Margin.Verdict.FAILS;
    }

    static boolean held(Margin margin) {
        return margin.verdict() == Margin.Verdict.HOLDS || margin.verdict() == Margin.Verdict.CLOSE;
    }
}
