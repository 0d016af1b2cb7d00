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
                        .withinShare(0.01, "1 %: the book rounds the velocity to 12.2 ft/s"));
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
