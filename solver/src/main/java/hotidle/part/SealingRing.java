package hotidle.part;

import hotidle.law.RectangularDuct;
import hotidle.law.Restriction;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import java.util.Map;
import java.util.TreeMap;

/**
 * Sealing rings between a shaft and a drum: oil passes the joint, a duct of end gap by radial clearance ({@link RectangularDuct}), and
 * passes the side of the ring after the clearance under it ({@link Slot}). Both ways are side by side.
 *
 * <p>Warm, the joint is the circumference of the bore less the length of the ring, and the clearance that of bore and shaft
 * ({@link Fit}). The ring follows the bore outwards, so that the height on which its side seals shrinks as the clearance grows; at
 * least a tenth of it is counted. The side gap is the roughness of two sides pressed together and does not grow.
 *
 * @param bore    bore and shaft beside the ring, diametral
 * @param joint   circumference of the bore and length of the ring round it
 * @param width   of the ring along the shaft [m]
 * @param sideGap between the ring's sealing side and the groove wall [m]; wear and roughness make it
 * @param contact radial height on which the ring's side seals, when measured [m]
 * @param count   rings side by side
 */
public record SealingRing(Fit bore, Fit joint, double width, double sideGap, double contact, int count)
        implements Part {

    private static final double LEAST_CONTACT = 0.1;

    public SealingRing {
        Check.positive("ring width", width);
        Check.positive("side gap", sideGap);
        Check.positive("contact height", contact);
        Check.within("number of rings", count, 1, 8);
    }

    @Override
    public Map<String, Fit> fits() {
        // in one order, since it is printed
        return new TreeMap<>(Map.of("end gap", joint, "clearance beside the ring", bore));
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        double warm = setting.oil().temperature();
        double clearance = bore.gap(warm) / 2;
        double grown = clearance - bore.gap(bore.measuredAt()) / 2;
        double seal = Math.max(contact - grown, LEAST_CONTACT * contact);
        SeriesLoss ends =
                RectangularDuct.loss(joint.gap(warm), clearance, width).times(count);
        SeriesLoss side = Slot.annular(bore.outer() - 2 * clearance, clearance, width, 0)
                .then(Slot.flat(Math.PI * bore.outer(), sideGap, seal))
                .times(count);
        return new Through(Restriction.beside(ends, side), setting.oil());
    }
}
