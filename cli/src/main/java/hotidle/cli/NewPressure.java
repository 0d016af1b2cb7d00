package hotidle.cli;

import hotidle.circuits.text.Dimension;
import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;

/**
 * A set pressure in place of a build's own.
 *
 * @param pressure [Pa]
 * @param written  the same as written behind --set
 * @param setBy    what it changes
 */
record NewPressure(double pressure, String written, SetBy setBy) {

    /** Limits of the option, those of a circuit file and a hair [Pa]. */
    private static final double LEAST = SetPressure.PSI * (1 - 1e-7);

    private static final double MOST = 5000 * SetPressure.PSI * (1 + 1e-7);

    /**
     * Of what is written.
     *
     * @throws WrongInputException where it is no pressure, or none that a circuit file may set
     */
    static NewPressure of(String written, SetBy setBy) {
        if (written.contains("..")) {
            throw new WrongInputException("hotidle: --set " + written
                    + ": sets a build to one pressure; 'hotidle window', 'map' and 'torque' try many, by --try"
                    + "\nmend: write --set 240psi, for example, or --try " + written + " there");
        }
        double asked = OptionValues.quantity("--set", written, Dimension.PRESSURE);
        if (asked < LEAST) {
            throw new WrongInputException(
                    "hotidle: --set " + written + ": a set pressure must lie between 1 and 5000 psi");
        }
        return new NewPressure(OptionValues.within("--set", written, asked, MOST, "1 to 5000 psi"), written, setBy);
    }

    /**
     * A build set to it.
     *
     * @throws WrongInputException where it cannot be set so
     */
    Adjustable of(Adjustable build) {
        build.unit().command();
        setBy.at(build.unit(), pressure, "--set " + written);
        return build.setTo(pressure, setBy.by());
    }
}
