package hotidle.answer;

import hotidle.answer.phrase.OwnHeatPhrase;
import hotidle.heat.Warmed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * At which temperatures builds are judged.
 *
 * @param ownHeat whether at those that each build's own heat brings it to, and not at those of the file
 * @param none    driving conditions that come to none, at which nothing is judged
 */
public record Settling(boolean ownHeat, List<NoTemperature> none) {

    /** At those of the file. */
    public static final Settling AS_GIVEN = new Settling(false, List.of());

    /**
     * A driving condition without a temperature.
     *
     * @param build   of this build
     * @param duty    its name
     * @param why     what became of it
     * @param seconds until a limit is reached; empty where that is not known
     */
    public record NoTemperature(String build, String duty, String why, Optional<Double> seconds) {

        /** Of what heat made of it. */
        public static NoTemperature of(String build, Warmed warmed) {
            return new NoTemperature(
                    build, warmed.duty().name(), warmed.verdict().name().toLowerCase(Locale.ROOT), warmed.seconds());
        }

        private String said() {
            return OwnHeatPhrase.none(build, duty, Warmed.Verdict.valueOf(why.toUpperCase(Locale.ROOT)), seconds);
        }
    }

    public Settling {
        none = List.copyOf(none);
    }

    /** What is to be said of it, above all else; nothing where all temperatures are those of the file. */
    public List<String> said() {
        List<String> said = new ArrayList<>(ownHeat ? List.of(OwnHeatPhrase.HERE) : List.of());
        none.forEach(one -> said.add(one.said()));
        return said;
    }
}
