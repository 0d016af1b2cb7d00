package hotidle.validation;

import static hotidle.validation.Trade.MINUTE;

import hotidle.law.Couette;
import java.util.List;

/** Drag of faces that turn in oil. */
final class DragRows {

    private static final String PART = "Drag of a face";

    private DragRows() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                        PART,
                        "torque on a disc",
                        "0.509296 Pa·s (400 Pa at 25 mm), 600 rpm, gap 2 mm, radius 25 mm",
                        "0.0098",
                        "N·m",
                        Couette.disc(0.509296, 600 / MINUTE, 0, 0.025, 0.002) / (2 * Math.PI * 600 / MINUTE),
                        Sources.SCHASCHKE.at("ex. 3.18")),
                Row.of(
                                PART,
                                "viscosity by the power of an annular face",
                                "22 W, 300 rpm, 0.1 m and 0.0625 m, gap 0.5 mm",
                                "0.0839",
                                "Pa·s",
                                22 / Couette.disc(1, 300 / MINUTE, 0.0625, 0.1, 0.0005),
                                Sources.SCHASCHKE.at("ex. 3.20"))
                        .within(0.0003, "the book takes π as 3.14, 0.2 % in π³"),
                Row.of(
                        PART,
                        "power lost in a collar bearing",
                        "0.44 Pa·s, 300 rpm, 0.15 m and 0.10 m, film 0.25 mm",
                        "1108",
                        "W",
                        Couette.disc(0.44, 300 / MINUTE, 0.10, 0.15, 0.00025),
                        Source.found("I. A. Khan, Fluid Mechanics, ex. 1.9")));
    }
}
