package hotidle.part;

/**
 * A number that a kind of part gives beside its flow. Each stands once, as a constant of the part that gives it.
 *
 * @param key       what files call it, with the unit at its end, for example {@code least_film_m}
 * @param dimension what it is counted in
 * @param meaning   in a few words
 */
public record Measure(String key, QuantityKind dimension, String meaning) {

    /** What a measure is counted in, and how a key that is counted in it ends. */
    public enum QuantityKind {
        LENGTH("_m"),
        PRESSURE("_pa"),
        FORCE("_n"),
        TORQUE("_n_m"),
        POWER("_w"),
        FLOW("_m3_s"),
        DISPLACEMENT("_m3_rev"),
        /** A temperature or a difference of two. */
        TEMPERATURE("_k"),
        ANGLE("_rad"),
        /** A ratio, or 1 for yes and 0 for no. */
        NUMBER("");

        private final String ending;

        QuantityKind(String ending) {
            this.ending = ending;
        }

        /** The SI unit as it ends a key. */
        public String ending() {
            return ending;
        }
    }

    public Measure {
        if (!key.endsWith(dimension.ending)) {
            throw new IllegalArgumentException(key + " does not end in " + dimension.ending);
        }
    }

    /** Of the key alone: maps of every state ask for it. */
    @Override
    public int hashCode() {
        return key.hashCode();
    }

    /** Written out: what Java makes of a record at its first use takes its time at each start. */
    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Measure measure
                        && key.equals(measure.key)
                        && dimension == measure.dimension
                        && meaning.equals(measure.meaning));
    }

    /** A measure as it is in one state. */
    public record Reported(Measure measure, double value) {}

    /** This measure at a value [SI]. */
    Reported of(double value) {
        return new Reported(this, value);
    }
}
