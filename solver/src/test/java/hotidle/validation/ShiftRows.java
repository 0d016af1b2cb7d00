package hotidle.validation;

import hotidle.geartrain.WedgeStrength;
import hotidle.law.ClosingClutch;
import java.util.List;

/** What closes and what wedges: shift energy, contact of rollers. */
final class ShiftRows {

    private static final String PART = "Shift and one-way clutch";
    private static final Source JINDAL = Source.found("U. C. Jindal, Machine Design");
    private static final Source BORESI = Source.found("A. P. Boresi, R. J. Schmidt, Advanced Mechanics of Materials");
    private static final Source SHIGLEY =
            Source.memory("R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design");

    private ShiftRows() {}

    static List<Row> rows() {
        double rpm = 2 * Math.PI / 60;
        double force = 2 * Math.PI * 0.1e6 * 0.070 * (0.110 - 0.070);
        double one = 0.28 * force * (0.110 + 0.070) / 2;
        ClosingClutch driven = new ClosingClutch(one, 300 * rpm, Double.POSITIVE_INFINITY, one, 7.2, 0);
        double torque = 2 * 0.35 * 570 * 0.095;
        double motor = 800 * 0.2 * 0.2;
        double rotor = 1300 * 0.18 * 0.18;
        ClosingClutch two = new ClosingClutch(torque, 1250 * rpm, motor, 0, rotor, 0);
        double pressure = WedgeStrength.linePressure(24.1e3 / 0.020, 0.040, 0.040, 200e9, 0.29);
        return List.of(
                row(
                        "time until a clutch has closed",
                        "one face 110 and 70 mm, 0.1 MPa at the inner radius, μ 0.28, 7.2 kg·m² from rest to 300 rpm",
                        "5.1",
                        "s",
                        driven.time(),
                        JINDAL.at("ex. 22-1")),
                row(
                        "heat of a clutch that closes",
                        "7.2 kg·m² from rest to 300 rpm",
                        "3553",
                        "J",
                        driven.heat(),
                        JINDAL.at("ex. 22-1")),
                row(
                        "time until two rotors turn alike",
                        "800 kg at 0.2 m, 1250 rpm, and 1300 kg at 0.18 m, 37.9 N·m",
                        "62.8",
                        "s",
                        two.time(),
                        Sources.KHURMI.at("ex. 10.27")),
                row(
                                "heat while two rotors come to one speed",
                                "800 kg at 0.2 m, 1250 rpm, and 1300 kg at 0.18 m",
                                "156000",
                                "J",
                                two.heat(),
                                Sources.KHURMI.at("ex. 10.27"))
                        .within(500, "the book rounds to three digits"),
                row(
                        "time of slip, the driving rotor held back",
                        "the same with 60 N·m that resist",
                        "33.1",
                        "s",
                        new ClosingClutch(torque, 1250 * rpm, motor, -60, rotor, 0).time(),
                        Sources.KHURMI.at("ex. 10.27")),
                row(
                                "time of slip, the driving rotor driven",
                                "the same with 60 N·m that drive",
                                "624",
                                "s",
                                new ClosingClutch(torque, 1250 * rpm, motor, 60, rotor, 0).time(),
                                Sources.KHURMI.at("ex. 10.27"))
                        .within(1, "the book cuts digits off"),
                row(
                                "rise of a disc's temperature",
                                "10.6 Btu, ¼ in thick, 6 in across, 0.282 lbf/in³, 0.108 Btu/(lb·°F)",
                                "49.3",
                                "°F",
                                disc(),
                                SHIGLEY.at("ex. 16-5"))
                        .within(0.2, "the book rounds the heat to 10.6 Btu"),
                row(
                                "largest pressure of rollers",
                                "radii 40 mm, length 20 mm, 24.1 kN, 200 GPa, ν 0.29",
                                "1445",
                                "MPa",
                                pressure / 1e6,
                                BORESI.at("ex. 17.3"))
                        .withinShare(0.002, "the book reads its coefficients from a chart"),
                row(
                                "largest shear below rollers, 0.300 of the pressure",
                                "radii 40 mm, length 20 mm, 24.1 kN, 200 GPa, ν 0.29",
                                "433",
                                "MPa",
                                0.3 * pressure / 1e6,
                                BORESI.at("ex. 17.3"))
                        .withinShare(0.002, "the book reads its coefficients from a chart"));
    }

    /** Heat into both faces of a disc, which then is as thick as a plate between two linings. */
    private static double disc() {
        double inch = Trade.INCH;
        double area = Math.PI / 4 * 36 * inch * inch;
        double density = 0.282 * 0.45359237 / (inch * inch * inch);
        double specific = 0.108 * 4186.8;
        return ClosingClutch.rise(10.6 * 1055.056 / (2 * area), 0.25 * inch, density, specific) * 1.8;
    }

    private static Row row(String quantity, String inputs, String published, String unit, double ours, Source source) {
        return Row.of(PART, quantity, inputs, published, unit, ours, source);
    }
}
