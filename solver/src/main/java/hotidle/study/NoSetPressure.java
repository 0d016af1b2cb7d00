package hotidle.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Why no set pressure that was tried holds every limit.
 *
 * @param never limits that hold at none of them, each with the duty at which it comes nearest
 * @param needs where all hold somewhere, the limit that needs the highest pressure; empty where none needs a least one
 * @param bears and the one that bears the lowest; empty where none has a highest one
 */
public record NoSetPressure(List<Judgement.Key> never, Optional<End> needs, Optional<End> bears) {

    /** A limit and the set pressure [Pa] up to which, or down to which, it holds. */
    public record End(Judgement.Key limit, double pressure) {}

    public NoSetPressure {
        never = List.copyOf(never);
    }

    /** Of a window; empty where some set pressure holds every limit. */
    static Optional<NoSetPressure> of(Window window) {
        return window.all().isEmpty() ? Optional.of(why(window.spans())) : Optional.empty();
    }

    private static NoSetPressure why(List<Window.Span> spans) {
        List<Judgement.Key> never = spans.stream()
                .filter(span -> span.ranges().isEmpty())
                .map(span -> span.worst().orElseThrow())
                .toList();
        if (!never.isEmpty()) {
            return new NoSetPressure(never, Optional.empty(), Optional.empty());
        }
        Optional<End> needs = spans.stream()
                .map(span -> span.ranges().get(0))
                .filter(range -> range.lowBy().isPresent())
                .map(range -> new End(range.lowBy().orElseThrow(), range.low()))
                .max(Comparator.comparingDouble(End::pressure));
        Optional<End> bears = spans.stream()
                .map(span -> span.ranges().get(span.ranges().size() - 1))
                .filter(range -> range.highBy().isPresent())
                .map(range -> new End(range.highBy().orElseThrow(), range.high()))
                .min(Comparator.comparingDouble(End::pressure));
        return new NoSetPressure(List.of(), needs, bears);
    }
}
