package hotidle.validation;

import static hotidle.validation.Trade.INCH;
import static hotidle.validation.Trade.MINUTE;
import static hotidle.validation.Trade.PSI;

import hotidle.law.GearDisplacement;
import hotidle.law.Hole;
import hotidle.oil.Oil;
import hotidle.part.PumpChamber;
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
                Math.pow(INCH, 3) * 5 / GearDisplacement.vanes(3 * INCH, 2 * INCH, INCH, 2 * INCH),
                Source.memory("A. Esposito, Fluid Power with Applications, §5.5, example of a vane pump")));
        return rows;
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
