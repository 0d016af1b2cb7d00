package hotidle.part;

import hotidle.law.Restriction;
import hotidle.oil.OilAt;
import java.util.List;

/**
 * The law of every part that is one restriction between its two ports.
 *
 * @param head what the oil has to climb from the first port to the second [Pa]
 */
record Through(Restriction loss, OilAt oil, double head) implements Part.Law {

    Through(Restriction loss, OilAt oil) {
        this(loss, oil, 0);
    }

    @Override
    public void evaluate(Reading in, Stamp out) {
        out.pass(in, 0, 1, loss, oil, head);
    }

    @Override
    public List<Stream> streams(Reading in) {
        return List.of(Stream.through("", in, 0, 1, loss, oil, head));
    }
}
