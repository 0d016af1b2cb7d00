package hotidle.study;

import hotidle.assess.Figures;
import hotidle.assess.Margin;
import java.util.Optional;

/**
 * Why a limit that hangs on the line fails although the pump has oil for all of them.
 *
 * @param why  which of four it is
 * @param line line pressure as it is [Pa]
 * @param set  set pressure commanded there [Pa]
 */
public record LineShort(Why why, double line, double set) {

    /** What lacks. */
    public enum Why {
        /** The line stands where it is commanded or above, and a clutch needs more. */
        COMMANDED_TOO_LITTLE,
        /** The line would do, and less stands at the piston. */
        LOST_ON_THE_WAY,
        /** The line stands where it is commanded or above, and too little oil passes at that pressure. */
        PASSES_TOO_LITTLE,
        /** The line stands below what is commanded: the regulator lets oil go that the pump has. */
        REGULATOR_LETS_GO
    }

    /** Of a limit of a judged duty; empty where it holds, hangs on no line pressure, or the pump lacks oil or has not been judged. */
    static Optional<LineShort> of(Judgement judged, Margin margin) {
        boolean enough = judged.margins().stream()
                .anyMatch(one -> one.kind() == Margin.Kind.REGULATION && one.verdict() != Margin.Verdict.FAILS);
        return margin.verdict() == Margin.Verdict.FAILS && enough
                ? judged.figures().flatMap(figures -> of(figures, margin))
                : Optional.empty();
    }

    private static Optional<LineShort> of(Figures figures, Margin margin) {
        return figures.set().isEmpty()
                ? Optional.empty()
                : why(figures, margin)
                        .map(why ->
                                new LineShort(why, figures.line(), figures.set().getAsDouble()));
    }

    private static Optional<Why> why(Figures figures, Margin margin) {
        Optional<Why> held =
                switch (margin.kind()) {
                    case APPLY, APPLY_SLIDING ->
                        Optional.of(figures.line() < margin.needed() ? Why.COMMANDED_TOO_LITTLE : Why.LOST_ON_THE_WAY);
                    case LOCKUP ->
                        figures.line() < margin.needed() ? Optional.of(Why.COMMANDED_TOO_LITTLE) : Optional.empty();
                    case LUBRICATION, COOLER, CONVERTER_CHARGE -> Optional.of(Why.PASSES_TOO_LITTLE);
                    default -> Optional.empty();
                };
        return held.map(why -> figures.low() ? Why.REGULATOR_LETS_GO : why);
    }
}
