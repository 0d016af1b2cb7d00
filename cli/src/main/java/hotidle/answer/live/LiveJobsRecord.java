package hotidle.answer.live;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.JobMovesPhrase;
import hotidle.study.JobGain;
import hotidle.study.Repairs;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What each job moves at the driving condition looked at, all else as it is. */
public record LiveJobsRecord(List<JobMoves> jobs) {

    public LiveJobsRecord {
        jobs = List.copyOf(jobs);
    }

    /**
     * A job: the line and the oil lost without it and with it.
     *
     * @param starves whether, the line not being held, it takes oil from the lubrication
     * @param moves   the same in sentences
     */
    public record JobMoves(
            String name,
            OptionalDouble beforePa,
            OptionalDouble afterPa,
            @JsonProperty("before_lost_m3_s") OptionalDouble beforeLost,
            @JsonProperty("after_lost_m3_s") OptionalDouble afterLost,
            boolean starves,
            String moves) {

        /** One of which it is not known, or that cannot be done; {@code why} in a sentence. */
        public static JobMoves notKnown(String name, String why) {
            OptionalDouble none = OptionalDouble.empty();
            return new JobMoves(name, none, none, none, none, false, why);
        }

        /** One that was tried at a driving condition. */
        public static JobMoves of(Quantity.UnitSystem units, String duty, String name, Optional<JobGain> found) {
            if (found.isEmpty()) {
                return notKnown(name, JobMovesPhrase.NOT_KNOWN);
            }
            JobGain gain = found.get();
            return new JobMoves(
                    name,
                    OptionalDouble.of(gain.without().line()),
                    OptionalDouble.of(gain.with().line()),
                    OptionalDouble.of(gain.without().lost()),
                    OptionalDouble.of(gain.with().lost()),
                    gain.starves(),
                    new JobMovesPhrase(units).moves(duty, does(gain.without()), does(gain.with()), gain.starves()));
        }

        private static JobMovesPhrase.UnitDoes does(Repairs.Effect effect) {
            return new JobMovesPhrase.UnitDoes(effect.line(), effect.lost(), effect.lube());
        }
    }
}
