package hotidle.validation;

import static hotidle.validation.Trade.FOOT;
import static hotidle.validation.Trade.GALLON_A_MINUTE;
import static hotidle.validation.Trade.INCH;
import static hotidle.validation.Trade.PSI;

import hotidle.law.PipeLoss;
import java.util.List;

/** Passages, laminar to turbulent. */
final class PassageRows {

    private static final String PART = "Passage";
    private static final double WATER = 1000;
    private static final String CHURCHILL = "1 %: the book's friction is Colebrook's, ours is Churchill's";

    private PassageRows() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                        PART,
                        "drop, laminar",
                        "100 mm²/s, 10 ft/s, 1 in, 100 ft, specific gravity 0.9",
                        "60",
                        "psi",
                        drop(new PipeLoss(INCH, 100 * FOOT, 0, 0), 10 * FOOT, 900, 0.09) / PSI,
                        Sources.ESPOSITO.at("ex. 4-3")),
                Row.of(
                        PART,
                        "Reynolds number, 64 over the laminar friction factor",
                        "100 mm²/s, 10 ft/s, 1 in",
                        "774",
                        "",
                        64 / friction(new PipeLoss(INCH, 100 * FOOT, 0, 0), 10 * FOOT, 900, 0.09),
                        Sources.ESPOSITO.at("ex. 4-1")),
                Row.of(
                        PART,
                        "viscosity by a capillary",
                        "0.5 mm, 1 m, 1 MPa, 880 mm³/s",
                        "0.00174",
                        "Pa·s",
                        capillary(new PipeLoss(0.5e-3, 1, 0, 0), 1e6, 880e-9),
                        Source.found("R. W. Fox, A. T. McDonald, Introduction to Fluid Mechanics, ex. 8.4")),
                Row.of(
                        PART,
                        "drop, laminar",
                        "water at 0.9 m/s, 3 mm, 9 m, 1.519e-3 Pa·s",
                        "43.7",
                        "kPa",
                        drop(new PipeLoss(0.003, 9, 0, 0), 0.9, 1000, 1.519e-3) / 1e3,
                        Sources.CENGEL_CIMBALA.at("ex. 8-2")),
                Row.of(
                                PART,
                                "friction factor",
                                "Re 134 300, e/d 0.00004",
                                "0.0172",
                                "",
                                PipeLoss.friction(134_300, 0.00004)[0],
                                Sources.CENGEL_CIMBALA.at("ex. 8-3"))
                        .withinShare(0.01, CHURCHILL),
                Row.of(
                        PART,
                        "friction factor, smooth",
                        "Re 93 800",
                        "0.018",
                        "",
                        PipeLoss.friction(93_800, 0)[0],
                        Sources.VENNARD.at("ex. 9.8")),
                Row.of(
                        PART,
                        "friction factor, fully rough",
                        "e/d 0.002",
                        "0.0234",
                        "",
                        PipeLoss.friction(1e9, 0.002)[0],
                        Sources.VENNARD.at("ex. 9.7")),
                Row.of(
                                PART,
                                "head lost in a globe valve",
                                "K 10, 1 in, 30 gpm",
                                "23.1",
                                "ft",
                                head() / FOOT,
                                Sources.ESPOSITO.at("ex. 4-6"))
                        .withinShare(0.01, "1 %: the book rounds the velocity to 12.2 ft/s"),
                inclined("level", 0, "0.00311"),
                inclined("15° uphill", 15, "0.00267"),
                inclined("15° downhill", -15, "0.00354"),
                Row.of(
                                PART,
                                "drop, turbulent, drawn steel",
                                "water of 62.36 lb/ft³ and 7.536e-4 lb/(ft·s), 0.2 ft³/s, 2 in, 200 ft, e 0.000007 ft",
                                "11.8",
                                "psi",
                                steel() / PSI,
                                Sources.CENGEL_CIMBALA_MEMORY.at("3rd ed., ex. 8-3; its inputs were read"))
                        .withinShare(0.01, CHURCHILL),
                Row.of(
                                PART,
                                "head lost in cast iron",
                                "oil of 10 mm²/s, 0.2 m³/s, 200 mm, 500 m, e 0.26 mm",
                                "117",
                                "m",
                                castIron(),
                                Sources.WHITE.at("ex. 6.8"))
                        .withinShare(0.01, CHURCHILL),
                Row.of(
                                PART,
                                "flow by the head lost",
                                "oil of 950 kg/m³ and 20 mm²/s, 0.3 m, 100 m, e/d 0.0002, 8 m of head",
                                "0.342",
                                "m³/s",
                                new PipeLoss(0.3, 100, 6e-5, 0)
                                        .flow(950 * Trade.GRAVITY * 8, 950, 950 * 20e-6)
                                        .q(),
                                Sources.WHITE.at("ex. 6.9"))
                        .withinShare(0.01, CHURCHILL),
                Row.of(
                                PART,
                                "head lost with bends, valves, entry and exit",
                                "water of 1.1e-5 ft²/s, 0.2 ft³/s, 2 in, 400 ft, e/d 0.001, ΣK 12.2",
                                "84",
                                "ft",
                                fittings(),
                                Sources.WHITE.at("ex. 6.16, water pumped between two reservoirs"))
                        .withinShare(0.01, CHURCHILL),
                Row.of(
                                PART,
                                "drop of air, turbulent, drawn tube",
                                "1.23 kg/m³, 1.79e-5 Pa·s, 50 m/s, 4 mm, 0.1 m, e 0.0015 mm",
                                "1.076",
                                "kPa",
                                drop(new PipeLoss(0.004, 0.1, 0.0015e-3, 0), 50, 1.23, 1.79e-5) / 1e3,
                                MUNSON)
                        .disagreeing(0.05, "the book reads 0.028 from a chart, Colebrook's formula gives 0.029"));
    }

    private static final Source MUNSON =
            Source.memory("B. R. Munson, D. F. Young, T. H. Okiishi, Fundamentals of Fluid Mechanics, ex. 8.5");

    /** Oil of 888 kg/m³ and 0.8 Pa·s in a pipe that lies at an angle: what gravity takes of the drop, it takes of the flow. */
    private static Row inclined(String how, double degrees, String published) {
        double lift = 888 * Trade.GRAVITY * 40 * Math.sin(Math.toRadians(degrees));
        return Row.of(
                PART,
                "flow, laminar, " + how,
                "oil of 888 kg/m³ and 0.8 Pa·s, 5 cm, 40 m, 745 to 97 kPa",
                published,
                "m³/s",
                new PipeLoss(0.05, 40, 0, 0).flow(648e3 - lift, 888, 0.8).q(),
                Sources.CENGEL_CIMBALA_MEMORY.at("flow of oil in level and inclined pipes, chapter 8"));
    }

    private static double steel() {
        double pound = 0.45359237;
        double density = 62.36 * pound / Math.pow(FOOT, 3);
        double viscosity = 7.536e-4 * pound / FOOT;
        return Trade.drop(
                new PipeLoss(2 * INCH, 200 * FOOT, 7e-6 * FOOT, 0), 0.2 * Math.pow(FOOT, 3), density, viscosity);
    }

    private static double castIron() {
        return Trade.drop(new PipeLoss(0.2, 500, 0.26e-3, 0), 0.2, 900, 900 * 10e-6) / (900 * Trade.GRAVITY);
    }

    private static double fittings() {
        double viscosity = 1.1e-5 * FOOT * FOOT * WATER;
        PipeLoss pipe = new PipeLoss(2 * INCH, 400 * FOOT, 0.002 * INCH, 12.2);
        return Trade.drop(pipe, 0.2 * Math.pow(FOOT, 3), WATER, viscosity) / (WATER * Trade.GRAVITY) / FOOT;
    }

    private static double drop(PipeLoss pipe, double velocity, double density, double viscosity) {
        double area = Math.PI * pipe.diameter() * pipe.diameter() / 4;
        return Trade.drop(pipe, velocity * area, density, viscosity);
    }

    private static double friction(PipeLoss pipe, double velocity, double density, double viscosity) {
        double head = density * velocity * velocity / 2;
        return drop(pipe, velocity, density, viscosity) / head * pipe.diameter() / pipe.length();
    }

    /** The viscosity at which a flow passes under a drop, by halving; the thinner, the more flow. */
    private static double capillary(PipeLoss pipe, double drop, double flow) {
        double thin = 0;
        double thick = 1;
        for (int i = 0; i < 100; i++) {
            double middle = (thin + thick) / 2;
            if (pipe.flow(drop, 999, middle).q() > flow) {
                thin = middle;
            } else {
                thick = middle;
            }
        }
        return thick;
    }

    private static double head() {
        PipeLoss valve = new PipeLoss(INCH, 1e-9, 0, 10);
        return Trade.drop(valve, 30 * GALLON_A_MINUTE, WATER, 1e-3) / (WATER * Trade.GRAVITY);
    }
}
