package hotidle.validation;

import static hotidle.validation.Trade.FOOT;
import static hotidle.validation.Trade.GALLON_A_MINUTE;
import static hotidle.validation.Trade.HORSEPOWER;
import static hotidle.validation.Trade.INCH;
import static hotidle.validation.Trade.MINUTE;
import static hotidle.validation.Trade.POUND;
import static hotidle.validation.Trade.PSI;

import hotidle.law.GearDisplacement;
import hotidle.oil.Oil;
import hotidle.part.Measure;
import hotidle.part.PumpChamber;
import hotidle.part.PumpSlip;
import hotidle.part.Reading;
import hotidle.part.Stream;
import java.util.List;
import java.util.Optional;

/** Gear pumps: displacement, delivery, torque and power. */
final class PumpRows {

    private static final String PART = "Pump";
    private static final double INCH3 = INCH * INCH * INCH;

    private PumpRows() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                        PART,
                        "displacement by two diameters",
                        "3 in outside, 2 in inside, 1 in wide",
                        "3.93",
                        "in³",
                        GearDisplacement.twoDiameters(3 * INCH, 2 * INCH, INCH) / INCH3,
                        Sources.ESPOSITO.at("ex. 5-1")),
                Row.of(
                        PART,
                        "delivery without slip",
                        "3 in outside, 2 in inside, 1 in wide, 1800 rpm",
                        "30.6",
                        "gpm",
                        delivery(GearDisplacement.twoDiameters(3 * INCH, 2 * INCH, INCH), 1800) / GALLON_A_MINUTE,
                        Sources.ESPOSITO.at("ex. 5-1")),
                Row.of(
                        PART,
                        "displacement by tip diameter and centres",
                        "width 1.614 cm, tip 5.039 cm, centres 4.206 cm",
                        "19.52",
                        "cm³",
                        GearDisplacement.tipAndCentres(0.05039, 0.04206, 0.01614) * 1e6,
                        Source.found("Formula to calculate gear pump displacement, sheet with a measured gear set,"
                                + " paperzz.com/doc/7823320")),
                Row.of(
                        PART,
                        "volumetric efficiency",
                        "52 gpm of 3.75 in³ at 3300 rpm",
                        "97.067",
                        "%",
                        100 * 52 * GALLON_A_MINUTE / delivery(3.75 * INCH3, 3300),
                        Sources.SULLIVAN.at("ex. 7.2")),
                Row.of(
                                PART,
                                "torque without losses",
                                "100 cm³, 70 bar, 1000 rpm",
                                "112",
                                "N·m",
                                torque(100e-6, 70e5, 1000),
                                Sources.ESPOSITO.at("ex. 5-9"))
                        .within(0.6, "the book rounds 111.4 up"),
                Row.of(
                                PART,
                                "torque without losses",
                                "1000 psi, 5 gpm at 750 rpm",
                                "20.43",
                                "lbf·ft",
                                torque(5 * GALLON_A_MINUTE / (750 / MINUTE), 1000 * PSI, 750) / (POUND * FOOT),
                                Sources.SULLIVAN.at("ex. 2.10"))
                        .within(0.006, "the book's factors 1714 and 5252 are rounded"),
                Row.of(
                        PART,
                        "power into oil that a relief valve throttles",
                        "1000 psi, 20 gpm",
                        "11.7",
                        "hp",
                        power(20, 1000) / HORSEPOWER,
                        Sources.ESPOSITO.at("ex. 8-2")),
                Row.of(
                        PART,
                        "power into oil that an unloading valve throttles",
                        "25 psi, 20 gpm",
                        "0.29",
                        "hp",
                        power(20, 25) / HORSEPOWER,
                        Sources.ESPOSITO.at("ex. 8-3")),
                Row.of(
                        PART,
                        "power saved by a pump that holds instead of throttling",
                        "1200 psi, 20 gpm less 0.7 gpm",
                        "13.5",
                        "hp",
                        (power(20, 1200) - power(0.7, 1200)) / HORSEPOWER,
                        Sources.ESPOSITO.at("ex. 5-5")));
    }

    /** A chamber of a displacement [m³] without losses of torque and with next to no slip. */
    private static PumpChamber tight(double displacement) {
        return new PumpChamber(
                displacement,
                new PumpSlip(List.of(), List.of(), 0, PumpSlip.Fitted.NONE, 1e-12, PumpSlip.Lost.NONE),
                new PumpChamber.Drag(0, 0, 0),
                Optional.empty());
    }

    private static double delivery(double displacement, double rpm) {
        PumpChamber pump = tight(displacement);
        for (Stream stream :
                pump.law(Trade.setting(rpm / MINUTE, Oil.fixed(850, 0.03))).streams(Reading.of(pump.form(), 0, 0, 1))) {
            if (stream.name().equals("swept")) {
                return stream.volume();
            }
        }
        return Double.NaN;
    }

    private static double torque(double displacement, double rise, double rpm) {
        return measure(displacement, rise, rpm, PumpChamber.TORQUE);
    }

    private static double power(double gallonsAMinute, double psi) {
        double rpm = 1200;
        return measure(gallonsAMinute * GALLON_A_MINUTE / (rpm / MINUTE), psi * PSI, rpm, PumpChamber.POWER);
    }

    private static double measure(double displacement, double rise, double rpm, Measure measure) {
        return Trade.measure(
                tight(displacement), Trade.setting(rpm / MINUTE, Oil.fixed(850, 0.03)), measure, 0, rise, 1);
    }
}
