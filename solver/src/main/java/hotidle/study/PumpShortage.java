package hotidle.study;

import hotidle.assess.Figures;
import hotidle.assess.Margin;
import java.util.List;
import java.util.Optional;

/**
 * The pump brings less than all that hangs on the line takes at the set pressure.
 *
 * @param line      line pressure as it is [Pa]
 * @param set       set pressure commanded [Pa]
 * @param regulated whether the regulator holds the line all the same, by keeping oil from converter, cooler and lubrication
 * @param follows   what fails because of it, each kind once
 */
public record PumpShortage(double line, double set, boolean regulated, List<Margin.Kind> follows) {

    public PumpShortage {
        follows = List.copyOf(follows);
    }

    /** Of a judged duty; empty where regulation holds or is not judged. */
    static Optional<PumpShortage> of(Judgement judged) {
        boolean fails = judged.margins().stream()
                .anyMatch(
                        margin -> margin.kind() == Margin.Kind.REGULATION && margin.verdict() == Margin.Verdict.FAILS);
        return judged.figures().filter(any -> fails).map(figures -> of(judged, figures));
    }

    private static PumpShortage of(Judgement judged, Figures figures) {
        return new PumpShortage(
                figures.line(),
                figures.set().orElseThrow(),
                figures.regulated(),
                judged.margins().stream()
                        .filter(judged::followsFromPump)
                        .map(Margin::kind)
                        .distinct()
                        .toList());
    }
}
