package hotidle.study.gauge;

import java.util.List;

/**
 * A reading that would tell leading causes apart.
 *
 * @param row         what to read, at what
 * @param information that it is expected to give, over what is missing to know the cause for certain [-], 0 to 1
 * @param predicted   what each of the leading causes makes of it, the most likely first
 * @param sound       what a sound unit reads there
 * @param deviation   of such a reading on a known unit, gauge included
 */
public record NextReading(
        GaugeReading.Row row, double information, List<Prediction> predicted, double sound, double deviation) {

    /**
     * What is read there if a cause is the one.
     *
     * @param cause the most likely of those that no gauge tells apart from it
     * @param alike all of those, that one first
     * @param value [Pa] or [m³/s]
     */
    public record Prediction(Cause cause, List<Cause> alike, double value) {

        public Prediction {
            alike = List.copyOf(alike);
        }

        /** Of a cause that is alone. */
        public Prediction(Cause cause, double value) {
            this(cause, List.of(cause), value);
        }
    }

    public NextReading {
        predicted = List.copyOf(predicted);
    }
}
