package hotidle.validation;

import static hotidle.validation.Trade.GALLON_A_MINUTE;
import static hotidle.validation.Trade.INCH;
import static hotidle.validation.Trade.PSI;

import hotidle.law.Hole;
import hotidle.law.RatedPoint;
import hotidle.law.Restriction;
import hotidle.law.SharpEdge;
import hotidle.law.ShortTube;
import hotidle.oil.Oil;
import hotidle.part.Orifice;
import hotidle.part.Part;
import hotidle.part.Reading;
import java.util.List;
import java.util.OptionalDouble;

/** Holes, sharp-edged and drilled. */
final class OrificeRows {

    private static final String PART = "Orifice";
    private static final double THIN = 1e-12;
    private static final double WATER = 998;
    private static final Source SHORT = Sources.RABIE.at("eq. 2.40 and 2.41, after Merritt 1967");

    private OrificeRows() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                        PART,
                        "flow",
                        "Cd 0.80, 1 in, 100 psi, specific gravity 0.9",
                        "252",
                        "gpm",
                        Hole.loss(INCH, 0, 0.80)
                                        .flow(100 * PSI, 0.9 * WATER, THIN)
                                        .q()
                                / GALLON_A_MINUTE,
                        Sources.ESPOSITO.at("ex. 8-4")),
                Row.of(
                        PART,
                        "capacity Cv, gpm of water at 1 psi",
                        "25 gpm at 100 psi, specific gravity 0.9",
                        "2.37",
                        "gpm",
                        capacity(25 * GALLON_A_MINUTE, 100 * PSI, PSI) / GALLON_A_MINUTE,
                        Sources.ESPOSITO.at("ex. 8-5")),
                Row.of(
                        PART,
                        "metric capacity, L/min of water at 1 kPa",
                        "94.8 L/min at 687 kPa, specific gravity 0.9",
                        "3.43",
                        "L/min",
                        capacity(94.8e-3 / 60, 687e3, 1e3) * 60e3,
                        Sources.ESPOSITO.at("ex. 8-5")),
                Row.of(
                        PART,
                        "contraction of a sharp edge",
                        "hole small in its wall",
                        "0.611",
                        "",
                        Hole.SHARP_EDGE,
                        Sources.RABIE.at("eq. 2.39, after Merritt 1967")),
                Row.of(
                        PART,
                        "d³·Δp/(μ·q) in creeping flow",
                        "hole without length",
                        "24",
                        "",
                        1e-9
                                * 1e-3
                                / (0.1
                                        * Hole.loss(1e-3, 0, 0.61)
                                                .flow(1e-3, 850, 0.1)
                                                .q()),
                        Source.memory(
                                "R. A. Sampson, Phil. Trans. R. Soc. A 182, 1891; in Z. Dagan, S. Weinbaum, R. Pfeffer, "
                                        + "J. Fluid Mech. 115, 1982")),
                Row.of(
                                PART,
                                "flow through an orifice plate",
                                "methanol of 788.4 kg/m³ and 5.875e-4 Pa·s, bore 3 cm in a pipe of 4 cm, 11 cm of mercury",
                                "3.09",
                                "L/s",
                                plate(0.03, 0.04, (13_600 - 788.4) * 9.81 * 0.11, 788.4, 5.875e-4) * 1e3,
                                Sources.CENGEL_CIMBALA.at("ex. 8-10"))
                        .withinShare(
                                0.01,
                                "1 %: the book has the older formula of 1983 for the coefficient, without tappings"),
                Row.of(
                        PART,
                        "C of ISO 5167-2, corner tappings",
                        "bore 22.2 mm in a pipe of 73.91 mm, ReD 115 331.66",
                        "0.6000",
                        "",
                        new SharpEdge(22.2e-3, 0, 22.2 / 73.91).coefficient(115_331.66 * 73.91 / 22.2)[0],
                        Source.library("ISO 5167-2:2003, eq. 4, as a test of an open library of flow meters has it")),
                lichtarowicz(100, "0.428").withinShare(0.03, "3 %: a fit to other measurements"),
                lichtarowicz(1000, "0.745").disagreeing(0.085, MERRITTS_TUBE),
                lichtarowicz(10_000, "0.808").disagreeing(0.05, MERRITTS_TUBE),
                shortTube(500, "0.6877"),
                shortTube(5, "0.2575"));
    }

    /** A hole twice as long as wide; the Reynolds number there is that of the velocity without loss. */
    private static Row lichtarowicz(double reynolds, String published) {
        double viscosity = 0.01;
        double density = 850;
        double diameter = 2e-3;
        double velocity = reynolds * viscosity / (density * diameter);
        double drop = density * velocity * velocity / 2;
        double q = new ShortTube(diameter, 2 * diameter)
                .flow(drop, density, viscosity)
                .q();
        return Row.of(
                PART,
                "Cd of a hole twice as long as wide (printed equation evaluated)",
                "√(2·Δp/ρ)·d/ν = " + (int) reynolds,
                published,
                "",
                discharge(q, drop, diameter, density),
                Source.memory("A. Lichtarowicz, R. K. Duggins, E. Markland, J. Mech. Eng. Sci. 7, 1965, 210"));
    }

    private static final String MERRITTS_TUBE =
            "ours is Merritt's tube, which lets 6 to 11 % less through at this length";

    /** Flow through a plate in a pipe [m³/s]. */
    private static double plate(double bore, double pipe, double drop, double density, double viscosity) {
        Part orifice = new Orifice(bore, 0, OptionalDouble.empty(), 1, pipe);
        return orifice.law(Trade.setting(0, Oil.fixed(density, viscosity)))
                .streams(Reading.of(orifice.form(), drop, 0))
                .iterator()
                .next()
                .volume();
    }

    private static double capacity(double flow, double drop, double asked) {
        RatedPoint point = new RatedPoint(flow, drop, 1e-3, 0.9 * WATER, 1 - 1e-9);
        return point.loss().flow(asked, WATER, 1e-3).q();
    }

    private static Row shortTube(double reynolds, String published) {
        double length = 4e-3;
        double diameter = 2e-3;
        return Row.of(
                PART,
                "Cd of a short tube (printed equation evaluated)",
                "Re·d/l = " + (int) reynolds,
                published,
                "",
                coefficient(new ShortTube(diameter, length), diameter, reynolds * length / diameter),
                SHORT);
    }

    /** Cd = q/(A·√(2·Δp/ρ)) at a Reynolds number of the mean velocity. */
    private static double coefficient(Restriction tube, double diameter, double reynolds) {
        double viscosity = 0.01;
        double density = 850;
        double q = reynolds * Math.PI * diameter * viscosity / (4 * density);
        return discharge(q, Trade.drop(tube, q, density, viscosity), diameter, density);
    }

    private static double discharge(double q, double drop, double diameter, double density) {
        return q / (Math.PI * diameter * diameter / 4 * Math.sqrt(2 * drop / density));
    }
}
