package hotidle.answer.phrase;

import hotidle.fault.FaultKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What can be asked for: headings, and what a circuit has. */
public final class ListPhrase {

    public static final String CIRCUITS = "circuits";
    public static final String PARTS = "kinds of parts";
    public static final String FAULTS = "faults, for --fault KIND[@PART][:SIZE] and hotidle gauge";
    public static final String UNITS = "units";
    public static final String BUILD = "    build ";

    /** Where the units stand. */
    public static final String MORE_UNITS =
            "'hotidle list units' names the units; --full lists all with what is said of each.";

    private ListPhrase() {}

    public static String builds(List<String> names) {
        return "builds: " + String.join(", ", names);
    }

    public static String duties(List<String> names) {
        return "driving conditions: " + String.join(", ", names);
    }

    public static String oils(List<String> names) {
        return "oils: " + String.join(", ", names);
    }

    /** What a build is, and the one it is made of. */
    public static String standing(String about, Optional<String> on) {
        return about + on.map(build -> " (on " + build + ")").orElse("");
    }

    /** Above jobs. */
    public static String jobs(String circuit, boolean named) {
        return circuit + ": jobs, for --job JOB"
                + (named ? "" : "; its file names none, so these bring worn fits back to new");
    }

    /** Above the jobs of one build. */
    public static String jobsOf(String build) {
        return build + ":";
    }

    /** In place of the jobs of a build without a worn fit. */
    public static String noJob(String build) {
        return build + ": none, no fit is worn";
    }

    /** What is done, and what it costs where that is known. */
    public static String job(String about, OptionalDouble hours, OptionalDouble price) {
        return Stream.of(
                        about,
                        hours.isPresent() ? JobPhrase.amount(hours.getAsDouble()) + " h" : "",
                        price.isPresent() ? "price " + JobPhrase.amount(price.getAsDouble()) : "")
                .filter(said -> !said.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** Above the faults of a circuit. */
    public static String faultsOf(String circuit) {
        return circuit + ": faults, for --fault KIND@PART[:SIZE], each with a SIZE to begin with; what a SIZE counts:"
                + " hotidle list faults";
    }

    /**
     * Where a fault can be.
     *
     * @param parts names; an empty one where it is of the whole unit
     * @param size  an example that each of them takes, with its colon; empty without one
     */
    public static String faultAt(String kind, List<String> parts, String size) {
        return kind
                + (parts.equals(List.of("")) ? ", of the whole unit" : "@ " + String.join(", ", parts))
                + (size.isEmpty() ? "" : "; for example " + kind + at(parts) + size);
    }

    private static String at(List<String> parts) {
        return parts.get(0).isEmpty() ? "" : "@" + parts.get(0);
    }

    /** Under the kinds of faults. */
    public static final String FAULTS_OF = "At which parts of a circuit: hotidle list faults CIRCUIT";

    /** A kind of fault, and what its size counts. */
    public static String fault(String about, FaultKind.SizeOf sizeOf) {
        return about
                + switch (sizeOf) {
                    case WEAR -> "; SIZE: added wear, 100 % = new to limit";
                    case SHARE -> "; SIZE: a share, for example 20 %";
                    case POSITION -> "; SIZE: where the spool stands, for example 0.3 mm";
                    case DIAMETER -> "; SIZE: the diameter that it has, for example 1.8 mm";
                    case NOTHING -> "; no SIZE";
                };
    }
}
