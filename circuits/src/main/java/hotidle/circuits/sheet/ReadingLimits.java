package hotidle.circuits.sheet;

import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.transmission.SetPressure;

/** Between which values a reading, or what was set for it, can lie at all. */
enum ReadingLimits {
    /** From absolute vacuum to what bursts every hose. */
    PRESSURE("a pressure", -101_325, 5000 * SetPressure.PSI, "-14.7 and 5000 psi"),
    FLOW("a flow", 0, 1e-2, "0 and 600 L/min"),
    SPEED("an engine speed", 100 / 60.0, 8000 / 60.0, "100 and 8000 rpm"),
    TEMPERATURE("an oil temperature", 213.15, 523.15, "-60 and 250 degC"),
    TORQUE("an engine torque", -500, 5000, "-500 and 5000 N.m");

    private final String what;
    private final double least;
    private final double most;
    private final String allowed;

    ReadingLimits(String what, double least, double most, String allowed) {
        this.what = what;
        this.least = least;
        this.most = most;
        this.allowed = allowed;
    }

    /** Those of a pressure or a flow. */
    static ReadingLimits of(boolean pressure) {
        return pressure ? PRESSURE : FLOW;
    }

    /** Tells where a value [SI] is impossible. */
    void check(double value, Place place, Problems problems) {
        if (!(value >= least && value <= most)) {
            problems.error(
                    place,
                    ProblemCode.READING_IMPOSSIBLE,
                    what + " cannot be so",
                    what + " lies between " + allowed,
                    "look at number and unit again; leave the reading empty where it is not known");
        }
    }
}
