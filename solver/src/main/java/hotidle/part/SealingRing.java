package hotidle.part;

import hotidle.law.Restriction;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;

/**
 * Sealing rings between a shaft and a drum: oil passes the joint, and passes the side of the ring after the clearance under
 * it. Both ways are side by side; law and source in {@link Slot}.
 *
 * @param diameter        of the bore that the ring runs in [m]
 * @param width           of the ring along the shaft [m]
 * @param endGap          at the joint [m]
 * @param radialClearance between shaft and bore beside the ring [m]
 * @param sideGap         between the ring's sealing side and the groove wall [m]; wear and roughness make it
 * @param contact         radial height on which the ring's side seals [m]
 * @param count           rings side by side
 */
public record SealingRing(
        double diameter, double width, double endGap, double radialClearance, double sideGap, double contact, int count)
        implements Part {

    public SealingRing {
        Check.positive("ring diameter", diameter);
        Check.positive("ring width", width);
        Check.positive("end gap", endGap);
        Check.positive("radial clearance", radialClearance);
        Check.positive("side gap", sideGap);
        Check.positive("contact height", contact);
        Check.within("number of rings", count, 1, 8);
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        SeriesLoss joint = Slot.flat(endGap, radialClearance, width).times(count);
        SeriesLoss side = Slot.annular(diameter, radialClearance, width, 0)
                .then(Slot.flat(Math.PI * diameter, sideGap, contact))
                .times(count);
        return new Through(Restriction.beside(joint, side), setting.oil());
    }
}
