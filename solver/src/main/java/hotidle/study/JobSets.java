package hotidle.study;

import hotidle.transmission.Job;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * Sets of jobs in the order in which they are tried.
 *
 * @param jobs to choose from
 * @param most jobs in the largest set that is tried; less than all where the sets would be too many
 */
record JobSets(List<Job> jobs, int most) {

    /** Sets that are tried at most: all of fourteen jobs (chosen; a few milliseconds each). */
    private static final int MOST_SETS = 1 << 14;

    /** Costs that differ by less than this are the same: rounding (ours). */
    private static final double SAME = 1e-6;

    static JobSets of(List<Job> jobs) {
        int most = 0;
        double sets = 1;
        double ofSize = 1;
        while (most < jobs.size() && sets + ofSize * (jobs.size() - most) / (most + 1) <= MOST_SETS) {
            ofSize = ofSize * (jobs.size() - most) / (most + 1);
            sets += ofSize;
            most++;
        }
        return new JobSets(List.copyOf(jobs), most);
    }

    /** Whether every set is tried. */
    boolean complete() {
        return most == jobs.size();
    }

    /** Sets that cost the same together, the cheapest first; among those that cost the same, fewer jobs come first. */
    List<List<List<Job>>> byCost(ToDoubleFunction<Job> cost) {
        SortedMap<CostAndSize, List<List<Job>>> levels = new TreeMap<>();
        for (int size = 0; size <= most; size++) {
            for (List<Job> set : ofSize(size)) {
                double sum = set.stream().mapToDouble(cost).sum();
                double rounded = Math.round(sum / SAME) * SAME;
                levels.computeIfAbsent(new CostAndSize(rounded, size), level -> new ArrayList<>())
                        .add(set);
            }
        }
        return List.copyOf(levels.values());
    }

    private record CostAndSize(double cost, int size) implements Comparable<CostAndSize> {
        @Override
        public int compareTo(CostAndSize other) {
            int first = Double.compare(cost, other.cost);
            return first == 0 ? Integer.compare(size, other.size) : first;
        }
    }

    private List<List<Job>> ofSize(int size) {
        List<List<Job>> sets = new ArrayList<>();
        choose(0, size, new BitSet(), sets);
        return sets;
    }

    private void choose(int from, int left, BitSet chosen, List<List<Job>> sets) {
        if (left == 0) {
            sets.add(chosen.stream().mapToObj(jobs::get).toList());
            return;
        }
        for (int i = from; i <= jobs.size() - left; i++) {
            chosen.set(i);
            choose(i + 1, left - 1, chosen, sets);
            chosen.clear(i);
        }
    }
}
