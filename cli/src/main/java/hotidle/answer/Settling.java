package hotidle.answer;

import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.OwnHeatPhrase;
import hotidle.heat.Warmed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What builds are judged at otherwise than their file has them: temperatures, and work done to them.
 *
 * @param ownHeat whether at those that each build's own heat brings it to, and not at those of the file
 * @param none    driving conditions that come to none, at which nothing is judged
 * @param work    what was done to builds, in words; empty where nothing was
 * @param made    names of the builds that came of it, which no file has
 */
public record Settling(boolean ownHeat, List<NeverSettled> none, String work, List<String> made) {

    /** Builds as their file has them. */
    public Settling(boolean ownHeat, List<NeverSettled> none) {
        this(ownHeat, none, "", List.of());
    }

    /** The same of builds after some work. */
    public Settling after(String done, List<String> builds) {
        return new Settling(ownHeat, none, done, builds);
    }

    /** At those of the file. */
    public static final Settling AS_GIVEN = new Settling(false, List.of());

    /** A driving condition of a build that comes to no temperature. */
    public record NeverSettled(String build, Warmed warmed) {
        private String said() {
            return OwnHeatPhrase.none(build, warmed.duty().name(), warmed.verdict(), warmed.seconds());
        }
    }

    /**
     * The same as JSON.
     *
     * @param why     what became of it
     * @param seconds until a limit is reached; empty where that is not known
     */
    public record NeverSettledRecord(String build, String duty, String why, Optional<Double> seconds) {}

    public Settling {
        none = List.copyOf(none);
        made = List.copyOf(made);
    }

    /** What is to be said of it, above all else, wrapped; empty where all temperatures are those of the file. */
    public String text() {
        List<String> said = new ArrayList<>(work.isEmpty() ? List.of() : List.of(work));
        if (ownHeat) {
            said.add(OwnHeatPhrase.HERE);
        }
        none.forEach(one -> said.add(one.said()));
        return said.stream().map(line -> Wrap.lines(line, "", "  ")).collect(Collectors.joining());
    }

    /** The driving conditions without a temperature as JSON. */
    public List<NeverSettledRecord> records() {
        return none.stream()
                .map(one -> new NeverSettledRecord(
                        one.build,
                        one.warmed.duty().name(),
                        one.warmed.verdict().name().toLowerCase(Locale.ROOT),
                        one.warmed.seconds()))
                .toList();
    }
}
