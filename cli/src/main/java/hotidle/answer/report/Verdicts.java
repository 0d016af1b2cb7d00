package hotidle.answer.report;

import hotidle.answer.phrase.CustomerPhrase.Looks;
import hotidle.assess.Margin;
import hotidle.study.JudgedBuild;
import java.util.Locale;
import java.util.Optional;

/** How the verdict on a build looks; its words say the same. */
final class Verdicts {

    private Verdicts() {}

    static Looks looks(JudgedBuild build) {
        Optional<Margin.Verdict> first =
                build.verdict().first().map(limit -> limit.margin().verdict());
        if (build.verdict().dragging().isPresent() || first.equals(Optional.of(Margin.Verdict.FAILS))) {
            return Looks.FAILS;
        }
        if (!build.known() || first.isEmpty() || first.get() == Margin.Verdict.NOT_KNOWN) {
            return Looks.OPEN;
        }
        return first.get() == Margin.Verdict.CLOSE ? Looks.NARROW : Looks.HOLDS;
    }

    /** As words of the style sheet. */
    static String style(JudgedBuild build) {
        return "verdict " + looks(build).name().toLowerCase(Locale.ROOT);
    }
}
