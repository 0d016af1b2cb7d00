package hotidle.transmission;

import java.util.List;

/** By what sets of jobs are told apart. */
public enum JobCost {
    PRICE,
    HOURS,
    JOBS;

    /** Prices where every job has one, else hours where every job has them, else the number of jobs. */
    public static JobCost of(List<Job> jobs) {
        if (!jobs.isEmpty() && jobs.stream().allMatch(job -> job.price().isPresent())) {
            return PRICE;
        }
        return !jobs.isEmpty() && jobs.stream().allMatch(job -> job.hours().isPresent()) ? HOURS : JOBS;
    }

    /** What a job costs by it. */
    public double cost(Job job) {
        return switch (this) {
            case PRICE -> job.price().orElseThrow();
            case HOURS -> job.hours().orElseThrow();
            case JOBS -> 1;
        };
    }

    /** What several cost. */
    public double cost(List<Job> jobs) {
        return jobs.stream().mapToDouble(this::cost).sum();
    }
}
