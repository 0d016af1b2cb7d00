package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Poppet;
import java.util.List;
import java.util.Map;

/**
 * A check valve: a ball or poppet that lets oil through from one port to the other, and back only as a leak; law and source in
 * {@link Poppet}.
 */
public record CheckValve(Poppet poppet) implements Part {

    /** Of ball or poppet off its seat. */
    public static final Measure LIFT =
            new Measure("lift_m", Measure.QuantityKind.LENGTH, "of ball or poppet off its seat");

    @Override
    public List<Measure> measures() {
        return List.of(LIFT);
    }

    @Override
    public Map<String, Channel> channels() {
        return Map.of("", new Channel(Channel.Geometry.HOLE, 2 * Math.PI * poppet.seat()));
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        return poppetLaw(poppet, setting);
    }

    static Law poppetLaw(Poppet poppet, Setting setting) {
        Through through = new Through(poppet, setting.oil());
        return new Law() {
            @Override
            public void evaluate(Reading in, Stamp out) {
                through.evaluate(in, out);
            }

            @Override
            public List<Stream> streams(Reading in) {
                return through.streams(in);
            }

            @Override
            public List<Measure.Reported> measures(Reading in) {
                return List.of(LIFT.of(poppet.lift(in.pressure(0) - in.pressure(1))));
            }
        };
    }
}
