package hotidle.validation;

import static hotidle.validation.Trade.MINUTE;

import hotidle.part.Band;
import hotidle.part.Lining;
import hotidle.part.OilRing;
import java.util.List;

/** Clutches: capacity of worn-in linings, the oil's own rotation. */
final class ClutchRows {

    private static final String PART = "Clutch";

    private ClutchRows() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                        PART,
                        "power, uniform wear",
                        "150 and 100 mm, 0.1 N/mm² at the inner radius, μ 0.3, 2 surfaces, 2500 rpm",
                        "61.685",
                        "kW",
                        power(),
                        Sources.KHURMI.at("ex. 10.23")),
                Row.of(
                        PART,
                        "pressure at the inner radius, uniform wear",
                        "25 kW at 1575 rpm, 120 and 60 mm, μ 0.3, 4 surfaces",
                        "0.062",
                        "N/mm²",
                        pressure(),
                        Sources.KHURMI.at("ex. 10.29")),
                Row.of(
                        PART,
                        "band, pulled at its tight side",
                        "400 N, drum 0.5 m, wrap 180°, μ 0.25",
                        "54.4",
                        "N·m",
                        400 * new Band(0.25, Math.PI, 1, false, 0.25, 0.25).torqueArm(true),
                        Source.found("Graduate Aptitude Test in Engineering, mechanical engineering, paper of 2012")),
                Row.of(
                                PART,
                                "torque, uniform wear",
                                "1447 N, 120 and 96 mm, μ 0.255, 2 surfaces",
                                "79.6",
                                "N·m",
                                1447 * new Lining(2, 0.096, 0.120, 0.255, 0.255, true).torqueArm(true),
                                Sources.KHURMI_MEMORY.at("single plate clutch of 25 kW at 3000 rpm"))
                        .withinShare(0.001, "the book rounds the radius up to 96 mm"),
                Row.of(
                        PART,
                        "power, uniform wear",
                        "125 and 75 mm, 0.127 N/mm² at the inner radius, μ 0.3, 4 surfaces, 500 rpm",
                        "18.8",
                        "kW",
                        2
                                * Math.PI
                                * 0.127e6
                                * 0.075
                                * 0.050
                                * lining(4, 0.075, 0.125).torqueArm(true)
                                * 2
                                * Math.PI
                                * 500
                                / MINUTE
                                / 1e3,
                        Sources.KHURMI_MEMORY.at("multiple disc clutch of five plates")),
                Row.of(
                        PART,
                        "band, pulled at its slack side",
                        "444 N, drum 450 mm, wrap 270°, μ 0.25",
                        "225",
                        "N·m",
                        444 * new Band(0.225, 1.5 * Math.PI, 1, true, 0.25, 0.25).torqueArm(true),
                        Sources.KHURMI_MEMORY.at("band brake on three quarters of a drum, chapter 19")),
                Row.of(
                        PART,
                        "force of turning oil on a cover",
                        "900 kg/m³, 0.2 m, free surface at 0.16 m, 19.6 rad/s",
                        "56.3",
                        "N",
                        new OilRing(0.16, 0.2, 0.16).force(900, 19.6 / (2 * Math.PI)),
                        Source.found("J. F. Douglas, J. M. Gasiorek, J. A. Swaffield, Fluid Mechanics, ex. 6.9")));
    }

    private static Lining lining(int surfaces, double inner, double outer) {
        return new Lining(surfaces, inner, outer, 0.3, 0.3, true);
    }

    private static double power() {
        Lining lining = lining(2, 0.100, 0.150);
        double force = 2 * Math.PI * 0.1e6 * 0.100 * (0.150 - 0.100);
        return lining.torqueArm(true) * force * 2 * Math.PI * 2500 / MINUTE / 1e3;
    }

    private static double pressure() {
        double force =
                25e3 / (2 * Math.PI * 1575 / MINUTE) / lining(4, 0.060, 0.120).torqueArm(false);
        return force / (2 * Math.PI * 0.060 * (0.120 - 0.060)) / 1e6;
    }
}
