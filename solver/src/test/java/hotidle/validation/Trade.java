package hotidle.validation;

import hotidle.law.Restriction;
import hotidle.oil.OilAt;
import hotidle.part.Measure;
import hotidle.part.Part;
import hotidle.part.Reading;
import hotidle.part.Setting;

/** The sources' units in SI, and what many rows ask of a part or a law. */
final class Trade {

    static final double INCH = 0.0254;
    static final double FOOT = 12 * INCH;
    static final double POUND = 4.4482216152605;
    static final double PSI = POUND / (INCH * INCH);
    static final double GALLON_A_MINUTE = 231 * INCH * INCH * INCH / 60;
    static final double HORSEPOWER = 550 * FOOT * POUND;
    static final double GRAVITY = 9.81;
    static final double MINUTE = 60;

    private Trade() {}

    /** A part's setting at a speed [rev/s]. */
    static Setting setting(double speed, OilAt oil) {
        return new Setting(speed, "any", Setting.Lockup.OFF, oil, 0);
    }

    /** A measure that a part gives. */
    static double measure(Part part, Setting setting, Measure measure, double... readings) {
        return part.law(setting).measures(Reading.of(part.form(), readings)).stream()
                .filter(one -> one.measure().equals(measure))
                .findFirst()
                .orElseThrow()
                .value();
    }

    /** The drop [Pa] at which a restriction passes a flow [m³/s], by halving. */
    static double drop(Restriction law, double q, double density, double viscosity) {
        double low = 0;
        double high = 1e12;
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            if (law.flow(middle, density, viscosity).q() < q) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
