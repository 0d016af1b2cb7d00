package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;
import java.util.OptionalDouble;

/** What was done to a build before it is judged: jobs, and another set pressure. */
public final class AfterWorkPhrase {

    private AfterWorkPhrase() {}

    /** Behind the name of a build that stands beside the same one as it is. */
    public static final String AFTER = "-after";

    /**
     * What was done.
     *
     * @param jobs by name; may be empty
     * @param set  pressure [Pa]; empty where it stays
     */
    public static String of(Quantity.UnitSystem units, List<String> jobs, OptionalDouble set) {
        String done = jobs.isEmpty()
                ? "with no job done"
                : "after " + (jobs.size() == 1 ? "the job " : "the jobs ") + String.join(", ", jobs);
        return "Judged " + done + (set.isEmpty() ? "" : ", set to " + Quantity.PRESSURE.with(units, set.getAsDouble()))
                + ".";
    }
}
