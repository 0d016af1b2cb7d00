package hotidle.torture;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Counts verdicts. */
public final class Tally {

    private final Map<String, Long> solvedBy = new TreeMap<>();
    private final Map<String, Long> unsolved = new TreeMap<>();
    private final Map<String, Long> thrown = new TreeMap<>();
    private final Map<Verdict.Mark, Long> marks = new EnumMap<>(Verdict.Mark.class);
    private long cases;
    private double worst;
    private double worstForce;

    /** Counts one. */
    public synchronized void add(Verdict verdict) {
        cases++;
        if (verdict.method().isEmpty()) {
            unsolved.merge(verdict.reason(), 1L, Long::sum);
        } else {
            solvedBy.merge(verdict.method(), 1L, Long::sum);
            worst = Math.max(worst, verdict.imbalance());
            worstForce = Math.max(worstForce, verdict.force());
            verdict.marks().forEach(mark -> marks.merge(mark, 1L, Long::sum));
        }
    }

    /** Counts one that threw. */
    public synchronized void add(RuntimeException fault) {
        cases++;
        thrown.merge(fault.getClass().getSimpleName(), 1L, Long::sum);
    }

    public synchronized long unsolved() {
        return sum(unsolved);
    }

    public synchronized long thrown() {
        return sum(thrown);
    }

    public synchronized long cases() {
        return cases;
    }

    /** Largest imbalance of any node in any state that was given as solved, as a share of its scale [-]. */
    public synchronized double worst() {
        return worst;
    }

    /** Largest force left on any spool in any state that was given as solved, as a share of its scale [-]. */
    public synchronized double worstForce() {
        return worstForce;
    }

    /** Share of the solved states with a mark [-]. */
    public synchronized double share(Verdict.Mark mark) {
        return marks.getOrDefault(mark, 0L) / (double) Math.max(sum(solvedBy), 1);
    }

    /** One line. */
    public synchronized String json(long seed, double seconds) {
        String mix = java.util.Arrays.stream(Verdict.Mark.values())
                .map(mark ->
                        String.format(Locale.ROOT, "\"%s\": %.4f", mark.name().toLowerCase(Locale.ROOT), share(mark)))
                .collect(Collectors.joining(", "));
        return String.format(
                Locale.ROOT,
                "{\"cases\": %d, \"seed\": %d, \"solved_by\": %s, \"unsolved\": %s, \"unsolved_share\": %.3g, \"thrown\": %s,"
                        + " \"worst_imbalance\": %.3g, \"worst_spool_force\": %.3g, \"mix\": {%s}, \"ms_a_case\": %.3f}",
                cases,
                seed,
                json(solvedBy),
                json(unsolved),
                sum(unsolved) / (double) Math.max(cases, 1),
                json(thrown),
                worst,
                worstForce,
                mix,
                1e3 * seconds / Math.max(cases, 1));
    }

    private static long sum(Map<String, Long> counts) {
        return counts.values().stream().mapToLong(Long::longValue).sum();
    }

    private static String json(Map<String, Long> counts) {
        return counts.entrySet().stream()
                .map(entry -> "\"" + entry.getKey() + "\": " + entry.getValue())
                .collect(Collectors.joining(", ", "{", "}"));
    }
}
