package hotidle.answer.phrase;

import hotidle.fault.FaultKind;
import java.util.List;

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
