package hotidle.validation;

import static hotidle.validation.Trade.INCH;
import static hotidle.validation.Trade.PSI;

import hotidle.law.RectangularDuct;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import hotidle.oil.Oil;
import hotidle.part.AnnularGap;
import hotidle.part.Fit;
import hotidle.part.Part;
import hotidle.part.Reading;
import java.util.List;

/** Annular, flat and radial gaps. */
final class GapRows {

    private static final String PART = "Gap";

    /** Density for an example that neglects inertia, which is 0.01 % of it [kg/m³]. */
    private static final double WITHOUT_INERTIA = 1e-3;

    private GapRows() {}

    static List<Row> rows() {
        double inch3 = INCH * INCH * INCH;
        return List.of(
                Row.of(
                                PART,
                                "leak past a valve stem",
                                "0.25 in, gap 0.0001 in, length 1 in, 100 psi, 0.6 cP",
                                "0.270568",
                                "in³/h",
                                unrolled(0.25 * INCH, 0.0001 * INCH, INCH)
                                                .flow(100 * PSI, 720, 0.6e-3)
                                                .q()
                                        / inch3
                                        * 3600,
                                Source.found("N. de Nevers, Fluid Mechanics for Chemical Engineers, ch. 6"))
                        .withinShare(0.001, "0.1 %: the book's unit factors are rounded to four digits"),
                Row.of(
                        PART,
                        "flow of a touching annulus over that of a concentric one",
                        "ε = 1",
                        "2.5",
                        "",
                        annulus(1, 0.006) / annulus(0, 0.006),
                        Sources.RABIE.at("fig. 2.6, and Merritt 1967 §2-5")),
                Row.of(
                        PART,
                        "radial flow between discs",
                        "gap 1 mm, 15 kPa, 0.6 Pa·s, R2/R1 = 6",
                        "7.31e-6",
                        "m³/s",
                        Slot.disc(0.025, 0.150, 1e-3, 1)
                                .flow(15e3, WITHOUT_INERTIA, 0.6)
                                .q(),
                        Sources.MASSEY.at("ex. 6.2")),
                Row.of(
                        PART,
                        "velocity in a crack",
                        "0.15 mm, 1.5 m long, 4 m of water",
                        "0.049",
                        "m/s",
                        Slot.flat(1, 0.15e-3, 1.5)
                                        .flow(1000 * Trade.GRAVITY * 4, 1000, 0.001)
                                        .q()
                                / 0.15e-3,
                        Source.found("Natarajan, Principles of Fluid Mechanics, ex. 7.1")),
                Row.of(
                        PART,
                        "speed of a dashpot's piston",
                        "50 mm in 50.4 mm, 0.13 m long, 1.4 MPa, 100 mm²/s, relative density 0.87",
                        "0.0065",
                        "m/s",
                        dashpot(),
                        Sources.MASSEY.at("ex. 6.4")),
                Row.of(
                        PART,
                        "rise of a valve's leak, oil thinner by 20 %",
                        "bore 14.03 mm, valve 14.00 mm, 10 mm, 1 MPa",
                        "25",
                        "%",
                        100 * (leak(0.8 * 6e-3) / leak(6e-3) - 1),
                        Source.found("T. Dziubak, P. Szczepaniak, Energies 16, 2023, 7667, abstract")),
                Row.of(
                        PART,
                        "leak past a control valve's piston",
                        "25 mm, radial clearance 5 µm, 15 mm long, 19 MPa, 0.018 Pa·s",
                        "57.6",
                        "mm³/s",
                        Slot.annular(0.025, 5e-6, 0.015, 0)
                                        .flow(19e6, 920, 0.018)
                                        .q()
                                * 1e9,
                        Source.found("R. W. Fox, A. T. McDonald, Introduction to Fluid Mechanics, ex. 8.1")),
                Row.of(
                        PART,
                        "flow of syrup through a wide annulus",
                        "radii 0.495 and 1.1 in, 27 ft long, 5.39 psi, 136.8 lb/(ft·h)",
                        "0.110",
                        "ft³/s",
                        Slot.annular(0.99 * INCH, 0.605 * INCH, 27 * FOOT, 0)
                                        .flow(5.39 * PSI, WITHOUT_INERTIA, 136.8 * 0.45359237 / FOOT / 3600)
                                        .q()
                                / (FOOT * FOOT * FOOT),
                        Source.memory("R. B. Bird, W. E. Stewart, E. N. Lightfoot, Transport Phenomena, problem 2A.3")),
                Row.of(
                        PART,
                        "recess of a hydrostatic thrust bearing",
                        "60 kN on 0.1 m, 4e-6 m³/s of 0.08 Pa·s, film 30 µm",
                        "0.0285",
                        "m",
                        recess(),
                        HYDROSTATIC),
                Row.of(
                                PART,
                                "power of its pump",
                                "60 kN on 0.1 m, 4e-6 m³/s of 0.08 Pa·s, film 30 µm",
                                "50.89",
                                "W",
                                4e-6 * recessPressure(recess()),
                                HYDROSTATIC)
                        .withinShare(0.002, "the source goes on with a radius rounded to 0.0285 m"),
                Row.of(
                        PART,
                        "temperature at which a ring slips over a rod",
                        "ring of 5.0000 cm and 24e-6 1/K, rod of 5.0500 cm, both at 20 °C; the ring is warmed",
                        "437",
                        "°C",
                        slips(0),
                        SERWAY),
                Row.of(
                                PART,
                                "temperature at which a ring slips over a rod",
                                "ring of 5.0000 cm and 24e-6 1/K, rod of 5.0500 cm and 19e-6, both at 20 °C; both are warmed",
                                "2100",
                                "°C",
                                slips(19e-6),
                                SERWAY)
                        .within(50, "printed as 2.1e3"),
                ringFriction(0.01, "80.11"),
                ringFriction(0.1, "89.37"),
                ringFriction(0.4, "94.71"),
                ductFriction(1, "56.91"),
                ductFriction(0.5, "62.19"),
                ductFriction(0.25, "72.93"));
    }

    /** The same of a rectangular duct on its hydraulic diameter, four times area over perimeter. */
    private static Row ductFriction(double ratio, String published) {
        double hydraulic = 2 * ratio / (1 + ratio);
        double conductance = 1 / RectangularDuct.loss(ratio, 1, 1).viscous();
        return Row.of(
                PART,
                "friction f·Re of a rectangular duct",
                "sides " + ratio + " to 1",
                published,
                "",
                2 * hydraulic * hydraulic * ratio / conductance,
                Sources.WHITE.at("laminar friction of a rectangle, table 6.4"));
    }

    private static final double FOOT = 12 * INCH;

    private static final Source HYDROSTATIC =
            Source.found("question with answers on a circular hydrostatic thrust bearing, tutorbin.com");
    private static final Source SERWAY =
            Source.memory("R. A. Serway, J. W. Jewett, Physics for Scientists and Engineers, ch. 19, ring and rod");

    /** Pressure in the recess that drives the flow out under the rim [Pa]. */
    private static double recessPressure(double inner) {
        return Slot.disc(inner, 0.05, 30e-6, 1).viscous() * 0.08 * 4e-6;
    }

    /** Radius of the recess with which the bearing carries 60 kN: pressure falls with the logarithm of the radius. */
    private static double recess() {
        double low = 0.005;
        double high = 0.049;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            double area = Math.PI * (0.05 * 0.05 - middle * middle) / (2 * Math.log(0.05 / middle));
            if (recessPressure(middle) * area > 60e3) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Temperature [°C] at which a ring of aluminium no longer binds on a rod; the gap grows in proportion. */
    private static double slips(double rod) {
        Fit fit = new Fit(0.05, 0.0505, 24e-6, rod, Fit.REFERENCE_TEMPERATURE);
        double cold = fit.gap(Fit.REFERENCE_TEMPERATURE);
        return 20 - 100 * cold / (fit.gap(Fit.REFERENCE_TEMPERATURE + 100) - cold);
    }

    /** f·Re of a developed laminar flow, on the hydraulic diameter 2·c: 2·D²·Δp·A/(μ·q·L). */
    private static Row ringFriction(double ratio, String published) {
        double c = 0.01;
        double inner = 2 * c * ratio / (1 - ratio);
        double area = Math.PI * (inner + c) * c;
        double conductance = 1 / Slot.annular(inner, c, 1, 0).viscous();
        return Row.of(
                PART,
                "friction f·Re of an annulus",
                "inner over outer radius " + ratio,
                published,
                "",
                2 * 4 * c * c * area / conductance,
                Sources.WHITE.at("laminar friction of a concentric annulus, table 6.3"));
    }

    /** A gap that a book takes as long as the piece in it is round: for us, one of that mean diameter. */
    private static SeriesLoss unrolled(double diameter, double clearance, double length) {
        return Slot.annular(diameter - clearance, clearance, length, 0);
    }

    private static double annulus(double eccentricity, double viscosity) {
        return Slot.annular(0.014, 20e-6, 8e-3, eccentricity)
                .flow(1e3, 800, viscosity)
                .q();
    }

    /** The oil that the piston displaces passes the gap, and the piston's own speed drags half a gap's width of it back. */
    private static double dashpot() {
        double radius = 0.025;
        double clearance = 0.2e-3;
        double q = unrolled(2 * radius, clearance, 0.13)
                .flow(1.4e6, 870, 1e-4 * 870)
                .q();
        return q / (Math.PI * radius * (radius + clearance));
    }

    private static double leak(double viscosity) {
        Part gap = new AnnularGap(Fit.same(14.03e-3, 14.00e-3), 10e-3, 0.5);
        return gap.law(Trade.setting(0, Oil.fixed(800, viscosity)))
                .streams(Reading.of(gap.form(), 1e6, 0))
                .iterator()
                .next()
                .volume();
    }
}
