package hotidle.validation;

import hotidle.geartrain.ShaftStrength;
import java.util.List;

/** Shafts: torsion, shoulders, torque that comes and goes. */
final class ShaftRows {

    private static final String PART = "Shaft";
    private static final Source BEER = Source.found("F. P. Beer, E. R. Johnston, J. T. DeWolf, Mechanics of Materials");

    private ShaftRows() {}

    static List<Row> rows() {
        ShaftStrength hollow = new ShaftStrength(0.060, 0.040, 240e6, 100e6, 1);
        double inch = Trade.INCH;
        ShaftStrength stepped =
                new ShaftStrength(0.5 * inch, 0, 71e3 * Trade.PSI, 0.85 * 0.88 * 0.6 * 0.5 * 80e3 * Trade.PSI, 1.32);
        return List.of(
                Row.of(
                        PART,
                        "torque at the shear stress allowed",
                        "hollow, radii 20 and 30 mm, 120 MPa",
                        "4.08",
                        "kN·m",
                        hollow.yieldTorque() / 1e3,
                        BEER.at("ex. 3.01")),
                Row.of(
                        PART,
                        "stress concentration of a shoulder",
                        "D/d 2, r/d 0.15",
                        "1.33",
                        "",
                        ShaftStrength.shoulder(2, 1, 0.15),
                        BEER.at("sample prob. 3.6, chart")),
                Row.of(
                        PART,
                        "stress concentration of a shoulder",
                        "D/d 2, r/d 0.25",
                        "1.20",
                        "",
                        ShaftStrength.shoulder(2, 1, 0.25),
                        BEER.at("sample prob. 3.6, chart")),
                Row.of(
                        PART,
                        "safety factor, torque that comes and goes",
                        "0.5 in, K 1.32, 0 to 200 lb·in, Su 80 and Sy 71 ksi, factors 0.85, 0.88, 0.6",
                        "2.41",
                        "",
                        stepped.repeatedTorque() / (200 * Trade.POUND * inch),
                        Source.found("T. H. Wentzell, Machine Design, ex. 5.5")));
    }
}
