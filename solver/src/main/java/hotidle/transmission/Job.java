package hotidle.transmission;

import java.util.OptionalDouble;

/**
 * Work that a shop does in one go, as restoring a pump: it changes several sizes at once.
 *
 * @param name  as the user calls it
 * @param about what is done; may be empty
 * @param hours it takes; empty where nobody said
 * @param price of it, in whatever money the user counts; empty where nobody said
 */
public record Job(String name, String about, OptionalDouble hours, OptionalDouble price) {

    /** @throws IllegalArgumentException where hours or price are below zero or no number */
    public Job {
        if (!(hours.orElse(0) >= 0) || !(price.orElse(0) >= 0)) {
            throw new IllegalArgumentException("hours and price of job " + name + " must be zero or more");
        }
    }

    /** A job of which neither hours nor price are known. */
    public static Job of(String name, String about) {
        return new Job(name, about, OptionalDouble.empty(), OptionalDouble.empty());
    }
}
