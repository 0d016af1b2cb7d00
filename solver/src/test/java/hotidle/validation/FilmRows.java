package hotidle.validation;

import static hotidle.validation.Trade.INCH;
import static hotidle.validation.Trade.MINUTE;
import static hotidle.validation.Trade.POUND;
import static hotidle.validation.Trade.PSI;

import hotidle.film.LeastFilm;
import hotidle.network.Conditions;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.oil.ShearThinning;
import hotidle.part.Bushing;
import hotidle.part.Fit;
import hotidle.part.Measure;
import hotidle.part.Setting;
import hotidle.result.Solution;
import hotidle.study.SinglePart;
import java.util.List;
import java.util.Map;

/** Films of worked examples, solved by the bushing under their load; what roughness, tilt and shear do to a film. */
final class FilmRows {

    private static final String PART = "Bushing";

    private static final Source SHIGLEY = Source.memory("J. E. Shigley, C. R. Mischke, Mechanical Engineering Design");

    private static final String CHART = "read off Raimondi and Boyd's charts";

    private FilmRows() {}

    static List<Row> rows() {
        return List.of(
                shigley("least film over clearance", "0.42", Bushing.LEAST_FILM, 1 / CLEARANCE, 0.02),
                shigley(
                        "side flow Qs/(R·c·N·L)",
                        "2.80",
                        Bushing.SIDE_FLOW,
                        1 / (0.75 * INCH * CLEARANCE * 30 * 1.5 * INCH),
                        0.05),
                small("least film", "0.0045", "mm", Bushing.LEAST_FILM, 1e3, 0.0002),
                small("side flow", "177", "mm³/s", Bushing.SIDE_FLOW, 1e9, 6),
                small("friction power", "11.2", "W", Bushing.FRICTION_POWER, 1, 0.5),
                Row.of(
                        PART,
                        "root mean square over mean roughness, Rq/Ra",
                        "heights spread as Gauss's curve",
                        "1.25",
                        "",
                        LeastFilm.ofRoughness(1, 1, 0),
                        Source.memory("D. J. Whitehouse, Handbook of Surface Metrology, 1994")),
                Row.of(
                        PART,
                        "tilt over clearance and length at which the edge touches",
                        "ε 0.8",
                        "0.4",
                        "",
                        touching(),
                        Source.memory(
                                "G. W. Stachowiak, A. W. Batchelor, Engineering Tribology, misaligned journal bearing: at most 2·(1 − ε)")),
                Row.of(
                        PART,
                        "share of the loss of viscosity that is there, (μ0 − μ)/(μ0 − μ∞)",
                        "rate of shear times time constant 1",
                        "0.5",
                        "",
                        (1 - new ShearThinning(0.6, 2e3).left(2e3)) / 0.6,
                        Source.memory("M. M. Cross, J. Colloid Sci. 20, 1965, 417")));
    }

    private static final double CLEARANCE = 0.0015 * INCH;

    /** 500 lb on 1.5 in by 1.5 in at 30 rev/s, 4 µreyn. */
    private static Row shigley(String quantity, String published, Measure measure, double times, double chart) {
        Solution state = hub(1.5 * INCH, CLEARANCE, 1.5 * INCH, 500 * POUND, 30, 4e-6 * PSI);
        return Row.of(
                        PART,
                        quantity,
                        "500 lb on 1.5 in by 1.5 in, clearance 0.0015 in, 30 rev/s, 4 µreyn",
                        published,
                        "",
                        state.measure("hub", measure).orElseThrow() * times,
                        SHIGLEY.at("ex. 12-1 and 12-3"))
                .within(chart, CHART);
    }

    /** 1.2 kN on 25 mm by 12.5 mm at 1100 rpm, 55 mPa·s. */
    private static Row small(
            String quantity, String published, String unit, Measure measure, double times, double chart) {
        Solution state = hub(0.025, 15e-6, 0.0125, 1200, 1100 / MINUTE, 55e-3);
        return Row.of(
                        PART,
                        quantity,
                        "1.2 kN on 25 mm by 12.5 mm, clearance 0.015 mm, 1100 rpm, 55 mPa·s",
                        published,
                        unit,
                        state.measure("hub", measure).orElseThrow() * times,
                        SHIGLEY.at("problem 12-1 and its solution"))
                .within(chart, CHART);
    }

    private static Solution hub(
            double diameter, double clearance, double length, double load, double speed, double viscosity) {
        Bushing bushing = new Bushing(
                Fit.same(diameter + 2 * clearance, diameter),
                length,
                List.of(),
                load,
                -Math.PI / 2,
                2e-6,
                7e6,
                0,
                false);
        Placed hub = Placed.of("hub", bushing, "sump", Group.HUB, "back", "sump");
        Network network = new Network(List.of(Node.held("back", 0), Node.held("sump", 0)), List.of(hub));
        Oil oil = new Oil("published", Oil.Walther.constant(viscosity / 850), 850, 0, 0, 0, 3e4);
        Conditions conditions =
                new Conditions(speed, "any", Setting.Lockup.OFF, oil, 101_325, Map.of("sump", 288.15), Map.of());
        return SinglePart.run(network, conditions, "hub", Map.of()).state().orElseThrow();
    }

    /** The tilt at which nothing is left at the edge, by halving, times length over clearance. */
    private static double touching() {
        double clearance = 30e-6;
        double length = 0.02;
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            Bushing tilted = new Bushing(
                    Fit.same(0.05 + 2 * clearance, 0.05),
                    length,
                    List.of(),
                    0,
                    0,
                    2e-6,
                    7e6,
                    middle * clearance / length,
                    false);
            double edge =
                    Trade.measure(tilted, Trade.setting(20, Oil.fixed(850, 5e-3)), Bushing.EDGE_FILM, 0, 0, 0.8, 0);
            if (edge > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
