package hotidle.result;

import java.util.List;

/**
 * Why there is no answer.
 *
 * @param residual largest imbalance left, as a share of its scale [-]
 * @param culprit  node or part that will not settle
 * @param tried    what was tried, in order
 */
public record Unsolved(double residual, String culprit, List<String> tried) {
    public Unsolved {
        tried = List.copyOf(tried);
    }
}
