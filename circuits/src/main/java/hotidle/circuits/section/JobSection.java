package hotidle.circuits.section;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.transmission.Job;
import java.util.List;
import java.util.OptionalDouble;

/** What a shop does in one go: keys, and how jobs are read. */
public final class JobSection {

    private JobSection() {}

    private static final double HOUR = 3600;

    static final Shape JOB = new Shape(
            "job",
            List.of(
                    Key.text("about", "what is done"),
                    Key.of(
                            "changes",
                            new Type.NamedGroups(BuildSection.CHANGE),
                            "part.key of what it changes, as in a build; * in a part's name stands for anything"),
                    Key.quantity("time", Dimension.TIME, "working time that it takes")
                            .optional()
                            .allowed("0 min", "1000 h")
                            .usual("5 min", "40 h"),
                    Key.quantity("price", Dimension.RATIO, "what it costs: a plain number, in your money")
                            .optional()
                            .allowed("0", "1000000")));

    /** A job as it is told. */
    public static Job job(Attributes given) {
        OptionalDouble time = given.numberIf("time");
        return new Job(
                given.name(),
                given.text("about"),
                time.isPresent() ? OptionalDouble.of(time.getAsDouble() / HOUR) : time,
                given.numberIf("price"));
    }
}
