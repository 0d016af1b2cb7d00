package hotidle.validation;

import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import hotidle.oil.ViscosityIndex;
import java.util.List;
import java.util.Optional;

/** Viscosity and heat of oils. */
final class OilRows {

    private static final String PART = "Oil";
    private static final double CELSIUS = Oil.ZERO_CELSIUS;
    private static final double PASCAL_SECOND_MILLI = 1e-3;
    private static final double DENSITY = 870;
    private static final Source TRIBOLOGY = Source.found("G. W. Stachowiak, A. W. Batchelor, Engineering Tribology");
    private static final Source ENGINE_OIL = Sources.INCROPERA.at("table A.5, unused engine oil");

    private OilRows() {}

    static List<Row> rows() {
        return List.of(
                between("heavy machine oil", 153, "34", 9.1),
                between("spindle oil", 18.6, "6.3", 2.4),
                between("medicinal white oil", 107, "23.3", 6.4),
                engineOil(330, "96.6"),
                engineOil(350, "41.7"),
                Row.of(
                        PART,
                        "viscosity over that at ambient pressure",
                        "α 20e-9 1/Pa, 100 MPa",
                        "7.389",
                        "",
                        barus(20e-9, 100e6),
                        Source.found("C. Barus, 1893; α in Stachowiak and Batchelor, table 2.3")),
                index("22.83", 5.05, "156"),
                index("73.30", 8.86, "92"),
                tableA13(60, "85.65"),
                tableA13(80, "37.94"),
                tableA13(120, "12.41"),
                fourPoints(290, "1120"),
                fourPoints(350, "41.7"),
                fourPoints(400, "10.6"),
                conductivity(310, 877.9, "0.145"),
                conductivity(370, 841.8, "0.137"),
                heat(310, 877.9, "1951"),
                heat(370, 841.8, "2206"));
    }

    private static Row between(String name, double at30, String at60, double at100) {
        Oil.Walther line = Oil.Walther.through(
                new Oil.ViscosityPoint(30 + CELSIUS, at30 * PASCAL_SECOND_MILLI / density(30)),
                new Oil.ViscosityPoint(100 + CELSIUS, at100 * PASCAL_SECOND_MILLI / density(100)));
        Oil oil = new Oil(name, line, DENSITY, 0.00065 * DENSITY, 0, 0, 0);
        return Row.of(
                        PART,
                        "viscosity at 60 °C",
                        name + ", " + at30 + " mPa·s at 30 °C and " + at100 + " at 100 °C",
                        at60,
                        "mPa·s",
                        oil.at(60 + CELSIUS, OilAt.STANDARD_ATMOSPHERE).viscosity() / PASCAL_SECOND_MILLI,
                        TRIBOLOGY.at("table 2.3"))
                .withinShare(
                        0.02,
                        "2 % for two points that are themselves rounded and a density that the table leaves open");
    }

    private static double density(double celsius) {
        return DENSITY * (1 - 0.00065 * (celsius - 15));
    }

    private static Row engineOil(double kelvin, String published) {
        Oil.Walther line =
                Oil.Walther.through(new Oil.ViscosityPoint(310, 288e-6), new Oil.ViscosityPoint(370, 22.0e-6));
        return Row.of(
                        PART,
                        "kinematic viscosity at " + (int) kelvin + " K",
                        "288 mm²/s at 310 K, 22.0 at 370 K",
                        published,
                        "mm²/s",
                        oil(line, 0).kinematicViscosity(kelvin) * 1e6,
                        ENGINE_OIL)
                .withinShare(0.02, "2 %: so far the table strays from a Walther line between 310 and 370 K");
    }

    private static Row tableA13(double celsius, String published) {
        Oil.Walther line = Oil.Walther.through(
                new Oil.ViscosityPoint(40 + CELSIUS, 248.5e-6), new Oil.ViscosityPoint(100 + CELSIUS, 20.46e-6));
        return Row.of(
                        PART,
                        "kinematic viscosity at " + (int) celsius + " °C",
                        "248.5 mm²/s at 40 °C, 20.46 at 100 °C",
                        published,
                        "mm²/s",
                        oil(line, 0).kinematicViscosity(celsius + CELSIUS) * 1e6,
                        Sources.CENGEL_MEMORY.at("table A-13, unused engine oil"))
                .withinShare(0.03, "3 %: so far the table strays from a Walther line between 40 and 120 °C");
    }

    /** The same oil by four of its points. */
    private static Row fourPoints(double kelvin, String published) {
        Oil.Walther curve = Oil.Walther.through(
                new Oil.ViscosityPoint(273, 4280e-6),
                new Oil.ViscosityPoint(310, 288e-6),
                new Oil.ViscosityPoint(370, 22.0e-6),
                new Oil.ViscosityPoint(430, 5.83e-6));
        return Row.of(
                        PART,
                        "kinematic viscosity at " + (int) kelvin + " K",
                        "4280 mm²/s at 273 K, 288 at 310, 22.0 at 370, 5.83 at 430",
                        published,
                        "mm²/s",
                        oil(curve, 0).kinematicViscosity(kelvin) * 1e6,
                        ENGINE_OIL)
                .withinShare(
                        0.05,
                        "5 %: the points lie 37 to 60 K apart, and the table strays from a Walther line by 3 % between them");
    }

    private static Oil oil(Oil.Walther line, double barus) {
        return new Oil("published", line, DENSITY, 0.65 * DENSITY / 1000, barus, 0, 0);
    }

    private static double barus(double alpha, double pressure) {
        OilAt at = oil(Oil.Walther.constant(40e-6), alpha).at(333.15, OilAt.STANDARD_ATMOSPHERE);
        return at.viscosity(pressure) / at.viscosity(0);
    }

    private static Row index(String at40, double at100, String published) {
        return Row.of(
                PART,
                "viscosity index",
                at40 + " mm²/s at 40 °C, " + at100 + " at 100 °C",
                published,
                "",
                ViscosityIndex.of(Double.parseDouble(at40) * 1e-6, at100 * 1e-6),
                Source.found("ASTM D2270, examples of procedures A and B"));
    }

    private static Row conductivity(double kelvin, double density, String published) {
        OilAt at = new OilAt(kelvin, density, 0.1, 0, 0, OilAt.STANDARD_ATMOSPHERE, 0, Optional.empty());
        return Row.of(
                        PART,
                        "thermal conductivity at " + (int) kelvin + " K",
                        density + " kg/m³",
                        published,
                        "W/(m·K)",
                        at.conductivity(),
                        ENGINE_OIL)
                .withinShare(0.1, "10 %, which Cragoe's formula promises for petroleum oils");
    }

    private static Row heat(double kelvin, double density, String published) {
        OilAt at = new OilAt(kelvin, density, 0.1, 0, 0, OilAt.STANDARD_ATMOSPHERE, 0, Optional.empty());
        return Row.of(
                        PART,
                        "specific heat at " + (int) kelvin + " K",
                        density + " kg/m³",
                        published,
                        "J/(kg·K)",
                        at.specificHeat(),
                        ENGINE_OIL)
                .withinShare(0.04, "4 %, which Cragoe's formula promises for petroleum oils");
    }
}
