package hotidle.part;

/**
 * A number that a part reports beside its flow.
 *
 * @param name  with the unit at its end, for example {@code least_film_m}
 * @param value SI
 */
public record Measure(String name, double value) {}
