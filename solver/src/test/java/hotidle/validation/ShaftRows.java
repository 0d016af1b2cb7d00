package hotidle.validation;

import hotidle.geartrain.ShaftStrength;
import hotidle.geartrain.StressConcentration;
import java.util.List;

/** Shafts: torsion, shoulders, torque that comes and goes. */
final class ShaftRows {

    private static final String PART = "Shaft";
    private static final Source BEER = Source.found("F. P. Beer, E. R. Johnston, J. T. DeWolf, Mechanics of Materials");

    private static final Source PETERSON = Source.found(
            "W. D. Pilkey, Peterson's Stress Concentration Factors, torsion of a tube with a transverse hole, worked out from its fit");
    private static final Source SPLINES = Source.found(
            "GB/T 17855-1999, Calculation of load capacity for splines, ex. 1, as an open design sheet quotes it");
    private static final String SPLINE =
            "44 involute teeth of 2 mm: 90 mm over them, 84.4 mm at their roots, radius 0.8 mm";
    private static final String TWO_FITS = "two fits to the same tests";

    private ShaftRows() {}

    private static double ofSpline() {
        return StressConcentration.spline(0.090, 0.0844, 0, 0.0008);
    }

    /** Of a shaft of a diameter [m] under a torque of the example [MPa]. */
    private static double shear(double diameter) {
        return 11_458.8 / (Math.PI / 16 * Math.pow(diameter, 3)) / 1e6;
    }

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
                        StressConcentration.shoulder(2, 1, 0.15),
                        BEER.at("sample prob. 3.6, chart")),
                Row.of(
                        PART,
                        "stress concentration of a shoulder",
                        "D/d 2, r/d 0.25",
                        "1.20",
                        "",
                        StressConcentration.shoulder(2, 1, 0.25),
                        BEER.at("sample prob. 3.6, chart")),
                Row.of(
                                PART,
                                "largest stress at a hole over shear stress",
                                "hole far smaller than the shaft",
                                "4",
                                "",
                                2 * StressConcentration.hole(1e-6, 1, 0),
                                Source.found(
                                        "Engineering calculator of a hole in an infinite plate in pure shear, after G. Kirsch"))
                        .within(1e-3, "exact in the limit"),
                Row.of(
                                PART,
                                "largest stress at a hole over shear stress",
                                "solid, a/D 0.1",
                                "3.684",
                                "",
                                2 * StressConcentration.hole(0.1, 1, 0),
                                PETERSON)
                        .withinShare(0.01, TWO_FITS),
                Row.of(
                                PART,
                                "largest stress at a hole over shear stress",
                                "bore 0.6·D, a/D 0.2",
                                "3.965",
                                "",
                                2 * StressConcentration.hole(0.2, 1, 0.6),
                                PETERSON)
                        .withinShare(0.01, TWO_FITS),
                Row.of(
                                PART,
                                "stress concentration of a spline, by the shear stress of a shaft of 85.2 mm",
                                SPLINE,
                                "2.238",
                                "",
                                ofSpline() * shear(0.0844) / shear(0.0852),
                                SPLINES)
                        .within(0.002, "the source rounds the diameter of that shaft"),
                Row.of(
                        PART,
                        "largest shear stress at the roots of a spline",
                        SPLINE + ", 11458.8 N·m",
                        "211.3",
                        "MPa",
                        ofSpline() * shear(0.0844),
                        SPLINES),
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
