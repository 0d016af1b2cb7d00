package hotidle.part;

/** What turns the force of a clutch's piston into torque: the linings of plates, or a band on a drum. */
public sealed interface Grip permits Lining, Band {

    /**
     * Torque over the force of the piston [m].
     *
     * @param slipping whether it slips; at rest otherwise
     */
    double torqueArm(boolean slipping);
}
