package hotidle.part;

import hotidle.law.Channel;
import java.util.Map;

/**
 * A branch of the lubrication: an orifice or the gap of a plain bushing to the sump, and the flow that it needs.
 *
 * @param outlet     an {@link Orifice} or an {@link AnnularGap}
 * @param neededFlow [m³/s]
 */
public record LubeBranch(Part outlet, double neededFlow) implements Part {

    public LubeBranch {
        if (!(outlet instanceof Orifice || outlet instanceof AnnularGap)) {
            throw new IllegalArgumentException("a lube branch ends in an orifice or an annular gap");
        }
        Check.notNegative("flow needed", neededFlow);
    }

    @Override
    public Map<String, Channel> channels() {
        return outlet.channels();
    }

    @Override
    public Map<String, Fit> fits() {
        return outlet.fits();
    }

    @Override
    public Form form() {
        return outlet.form();
    }

    @Override
    public Law law(Setting setting) {
        return outlet.law(setting);
    }
}
