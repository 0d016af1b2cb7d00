package hotidle.part;

/**
 * A band on a drum, anchored at one end and pulled at the other by a servo piston, straight or through a lever.
 *
 * <pre>
 * Pull      F = i·N, N the force of the piston, i of the lever
 * Torque    T = F·r·(e^(μθ) − 1) where the drum turns from the anchor to the servo: the band is slack where it is pulled, and the
 *           drum helps to pull (self-energised)
 *           T = F·r·(1 − e^(−μθ)) where it turns from the servo to the anchor: the band is tight where it is pulled
 * Source    tight over slack side e^(μθ): R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, ch. 16, band-type
 *           clutches and brakes (from memory)
 * Range     a band as flexible as a belt; what its own stiffness and clearance take of the servo's force is no part of it
 * </pre>
 *
 * @param radius    r of the drum [m]
 * @param wrap      θ, angle over which the band lies on the drum [rad]
 * @param lever     i, pull on the band over force of the piston [-]
 * @param energised whether the drum helps to pull
 * @param friction  μ at rest [-]
 * @param sliding   μ while it slips [-]
 */
public record Band(double radius, double wrap, double lever, boolean energised, double friction, double sliding)
        implements Grip {

    public Band {
        Check.positive("radius of the drum", radius);
        Check.within("wrap of the band", wrap, 0.1, 4 * Math.PI);
        Check.within("ratio of the servo's lever", lever, 0.05, 20);
        Check.within("coefficient of friction", friction, 0.01, 1);
        Check.within("coefficient of sliding friction", sliding, 0.01, 1);
    }

    @Override
    public double torqueArm(boolean slipping) {
        double grip = (slipping ? sliding : friction) * wrap;
        return lever * radius * (energised ? Math.expm1(grip) : -Math.expm1(-grip));
    }
}
