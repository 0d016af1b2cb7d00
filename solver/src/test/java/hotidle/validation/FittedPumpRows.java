package hotidle.validation;

import static hotidle.validation.Trade.INCH;
import static hotidle.validation.Trade.MINUTE;
import static hotidle.validation.Trade.PSI;

import hotidle.law.GearDisplacement;
import hotidle.law.Hole;
import hotidle.oil.Oil;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
import hotidle.part.PumpSlip;
import hotidle.part.Reading;
import hotidle.part.Stream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;

/** Slip by coefficients fitted to a measured pump, and pumps with vanes. */
final class FittedPumpRows {

    private static final String PART = "Pump";
    private static final double DISPLACEMENT = 74.2e-6;
    private static final double DENSITY = 850;
    private static final double VISCOSITY = 0.03;

    private FittedPumpRows() {}

    /** A measured volumetric efficiency. */
    private record Point(double rpm, double psi, String efficiency) {
        double lost() {
            return 1 - Double.parseDouble(efficiency);
        }

        double speed() {
            return rpm / MINUTE;
        }

        double rise() {
            return psi * PSI;
        }
    }

    private static final List<Point> GEROTOR = List.of(
            new Point(1200, 500, "0.92"),
            new Point(1200, 2500, "0.78"),
            new Point(1800, 500, "0.93"),
            new Point(1800, 1500, "0.887"),
            new Point(1800, 2500, "0.84"));

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        PumpChamber pump = fitted();
        Source source = Source.memory(
                "J. S. Cundiff, Fluid Power Circuits and Controls, 2002, fig. 4.21; its numbers were read in an excerpt");
        for (Point point : GEROTOR) {
            rows.add(Row.of(
                            PART,
                            "volumetric efficiency, slip fitted to all five points",
                            String.format("%.0f rpm, %.0f psi", point.rpm, point.psi),
                            point.efficiency,
                            "",
                            efficiency(pump, point),
                            source)
                    .within(0.005, "three coefficients for five points, most of them printed to 0.01"));
        }
        rows.add(Row.of(
                        PART,
                        "eccentricity of a vane pump",
                        "5 in³, rotor 2 in, cam ring 3 in, vanes 2 in wide",
                        "0.318",
                        "in",
                        Math.pow(INCH, 3) * 5 / GearDisplacement.vanes(3 * INCH, INCH, 2 * INCH),
                        Source.memory("A. Esposito, Fluid Power with Applications, §5.5, example of a vane pump"))
                .within(0.2, CRESCENT));
        rows.addAll(lostAtEverySpeed());
        return rows;
    }

    private static final String CRESCENT =
            "the source counts the crescent between ring and rotor once a turn, about half of what the spaces between vanes sweep";

    private static List<Row> lostAtEverySpeed() {
        double inch3 = Math.pow(INCH, 3);
        return List.of(
                Row.of(
                                PART,
                                "delivery of a gear pump",
                                "75 and 50 mm diameter, 25 mm wide, volumetric efficiency 90 %, 1000 rpm",
                                "55.3",
                                "L/min",
                                losing(GearDisplacement.twoDiameters(0.075, 0.05, 0.025), 0.1, 1000) * 60_000,
                                Sources.ESPOSITO.at("ex. 5-2"))
                        .within(0.1, "the source rounds 55.22 up"),
                Row.of(
                                PART,
                                "displacement of a vane pump",
                                "rotor 50 mm, cam ring 75 mm, vanes 50 mm wide, eccentricity 8 mm",
                                "0.0785",
                                "L",
                                GearDisplacement.vanes(0.075, 0.008, 0.05) * 1000,
                                Sources.ESPOSITO.at("ex. 5-4"))
                        .within(0.12, CRESCENT),
                Row.of(
                                PART,
                                "torque without losses",
                                "5 in³, 1000 psi, 1000 rpm; 900 in·lbf with losses",
                                "793",
                                "in·lbf",
                                torque(5 * inch3, 1000 * PSI) / (Trade.POUND * INCH),
                                Sources.ESPOSITO.at("ex. 5-8"))
                        .within(
                                3,
                                "the book rounds the flow to 21.6 gpm, its factors to 1714 and 63 000, and the result down"),
                Row.of(
                                PART,
                                "volumetric efficiency",
                                "20 gpm of 5 in³ at 1000 rpm",
                                "0.926",
                                "",
                                20 * Trade.GALLON_A_MINUTE / losing(5 * inch3, 0, 1000),
                                Sources.ESPOSITO.at("ex. 5-8"))
                        .within(0.0025, "the book rounds the flow to 21.6 gpm"),
                Row.of(
                        PART,
                        "delivery of a pump",
                        "10 in³, volumetric efficiency 94 %, 1000 rpm",
                        "40.7",
                        "gpm",
                        losing(10 * inch3, 0.06, 1000) / Trade.GALLON_A_MINUTE,
                        Sources.ESPOSITO.at("ex. 9-5")),
                Row.of(
                        PART,
                        "speed of a solid body of liquid whose rim stands 0.2 m over its axis",
                        "vessel of 20 cm diameter, 50 of 60 cm filled: about to spill",
                        "19.8",
                        "rad/s",
                        spin(0.1, 0.2),
                        Source.memory(
                                "Y. A. Çengel, J. M. Cimbala, Fluid Mechanics, §3-7, example of a rotating vessel about to spill")));
    }

    /** What a pump delivers that loses a share of what it sweeps [m³/s]. */
    private static double losing(double displacement, double share, double rpm) {
        PumpSlip slip = new PumpSlip(List.of(), List.of(), 0, PumpSlip.Fitted.NONE, 1e-14, new PumpSlip.Lost(share, 0));
        PumpChamber pump = new PumpChamber(displacement, slip, new PumpChamber.Drag(0, 0, 0), Optional.empty());
        return Trade.measure(
                pump, Trade.setting(rpm / MINUTE, Oil.fixed(DENSITY, VISCOSITY)), PumpChamber.DELIVERED, 0, 1e3, 1);
    }

    /** Torque of a pump without losses [N·m]. */
    private static double torque(double displacement, double rise) {
        PumpSlip slip = new PumpSlip(List.of(), List.of(), 0, PumpSlip.Fitted.NONE, 1e-14, PumpSlip.Lost.NONE);
        PumpChamber pump = new PumpChamber(displacement, slip, new PumpChamber.Drag(0, 0, 0), Optional.empty());
        return Trade.measure(pump, Trade.setting(10, Oil.fixed(DENSITY, VISCOSITY)), PumpChamber.TORQUE, 0, rise, 1);
    }

    /** Angular speed at which the inlet's law finds a head between axis and rim [rad/s]. */
    private static double spin(double radius, double head) {
        PumpInlet turning = new PumpInlet(0, 2 * Math.PI * Math.PI * radius * radius);
        double once = -Trade.measure(turning, Trade.setting(1, Oil.fixed(1000, 1e-3)), PumpInlet.ROOT_PRESSURE, 0, 1);
        return 2 * Math.PI * Math.sqrt(1000 * Trade.GRAVITY * head / once);
    }

    /** Least squares in laminar slip, slip through an orifice and the share lost at every speed. */
    private static PumpChamber fitted() {
        double[][] terms = new double[GEROTOR.size()][];
        double[] lost = new double[GEROTOR.size()];
        for (int i = 0; i < lost.length; i++) {
            Point point = GEROTOR.get(i);
            double swept = DISPLACEMENT * point.speed();
            double orifice = Hole.SHARP_EDGE * Math.sqrt(2 * point.rise() / DENSITY);
            terms[i] = new double[] {point.rise() / VISCOSITY / swept, orifice / swept, 1};
            lost[i] = point.lost();
        }
        double[] fit = new QRDecomposition(scaled(terms))
                .getSolver()
                .solve(new ArrayRealVector(lost))
                .toArray();
        PumpSlip slip = new PumpSlip(
                List.of(),
                List.of(),
                0,
                new PumpSlip.Fitted(fit[0] * LAMINAR, 0),
                fit[1] * AREA,
                new PumpSlip.Lost(fit[2], 0));
        return new PumpChamber(DISPLACEMENT, slip, new PumpChamber.Drag(0, 0, 0), Optional.empty());
    }

    /** Usual sizes of both coefficients [m³] and [m²], so that the fit is well conditioned. */
    private static final double LAMINAR = 1e-12;

    private static final double AREA = 1e-7;

    private static Array2DRowRealMatrix scaled(double[][] terms) {
        for (double[] row : terms) {
            row[0] *= LAMINAR;
            row[1] *= AREA;
        }
        return new Array2DRowRealMatrix(terms);
    }

    private static double efficiency(PumpChamber pump, Point point) {
        Iterable<Stream> streams = pump.law(Trade.setting(point.speed(), Oil.fixed(DENSITY, VISCOSITY)))
                .streams(Reading.of(pump.form(), 0, point.rise(), 1));
        double delivered = StreamSupport.stream(streams.spliterator(), false)
                .mapToDouble(stream -> stream.to() == 1 ? stream.volume() : -stream.volume())
                .sum();
        return delivered / (DISPLACEMENT * point.speed());
    }
}
