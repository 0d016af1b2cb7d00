package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Poppet;
import java.util.List;
import java.util.Map;

/**
 * A relief valve: it holds its port to a ceiling; a circuit without one has none; law and source in
 * {@link Poppet}.
 */
public record ReliefValve(Poppet poppet) implements Part {

    /** Of the poppet off its seat. */
    public static final Measure LIFT = CheckValve.LIFT;

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
        return CheckValve.poppetLaw(poppet, setting);
    }
}
