package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What was done to a build before it is looked at: jobs, another set pressure, faults laid over it. */
public final class AfterWorkPhrase {

    private AfterWorkPhrase() {}

    /** The name of a build to which jobs were done. */
    public static String after(String build) {
        return build + "-after";
    }

    /**
     * The name of a build to which nothing was done but that it is set to another pressure.
     *
     * @param pressure as it was asked for
     */
    public static String setTo(String build, String pressure) {
        return build + "-at-" + pressure.replaceAll("\\s", "");
    }

    /** Whether a name says a pressure already, as {@link #setTo} makes it. */
    public static boolean saysPressure(String build) {
        return build.matches(".*-at-[0-9][^-]*");
    }

    /**
     * The options by which a command is asked of the build that another one speaks of: one to which something was done is in no file.
     *
     * @param worked whether something was done to it
     */
    public static String options(String build, boolean worked) {
        return worked ? "the same options" : "--build " + build;
    }

    /**
     * What was done to each build shown.
     *
     * @param jobs   by name; may be empty
     * @param set    pressure [Pa]; empty where it stays
     * @param faults as written; may be empty
     */
    public static String of(Quantity.UnitSystem units, List<String> jobs, OptionalDouble set, List<String> faults) {
        List<String> done = work(units, jobs, set);
        done.addAll(laid(faults));
        String said = String.join(", ", done);
        return said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1) + ".";
    }

    /** The same behind the circuit's name, in place of what its file says of it. */
    public static String heading(
            Quantity.UnitSystem units, List<String> jobs, OptionalDouble set, List<String> faults) {
        String sentence = of(units, jobs, set, faults);
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1, sentence.length() - 1);
    }

    /** A circuit's name with what was done, as {@link #heading} says it; {@code work} may be empty. */
    public static String named(String circuit, String work) {
        return circuit + (work.isEmpty() ? "" : ", " + work);
    }

    /** The same where each build stands beside it as it is, and by the set pressure alone; faults lie over all. */
    public static String beside(Quantity.UnitSystem units, List<String> jobs, OptionalDouble set, List<String> faults) {
        List<String> done = work(units, jobs, set);
        if (done.isEmpty()) {
            return of(units, jobs, set, faults);
        }
        boolean steps = done.size() > 1;
        return "Shown as it is"
                + (steps ? ", " + done.get(1) + ", and set so " + done.get(0) : " and " + done.get(0))
                + (faults.isEmpty()
                        ? ""
                        : "; " + (steps ? "all " : "both ") + laid(faults).get(0)) + ".";
    }

    /** That jobs have nothing to do in some builds; nothing where there are none. */
    public static String nothingToDo(List<String> builds) {
        return builds.isEmpty() ? "" : " Nothing of that is to do in " + String.join(", ", builds) + ".";
    }

    private static List<String> work(Quantity.UnitSystem units, List<String> jobs, OptionalDouble set) {
        List<String> done = new ArrayList<>();
        if (!jobs.isEmpty()) {
            done.add("after the job" + (jobs.size() == 1 ? " " : "s ") + String.join(", ", jobs));
        }
        set.ifPresent(pressure -> done.add("set to " + Quantity.PRESSURE.with(units, pressure)));
        return done;
    }

    private static List<String> laid(List<String> faults) {
        return faults.isEmpty()
                ? List.of()
                : List.of("with the fault" + (faults.size() == 1 ? " " : "s ") + String.join(", ", faults));
    }
}
