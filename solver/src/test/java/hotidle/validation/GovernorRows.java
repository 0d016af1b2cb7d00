package hotidle.validation;

import static hotidle.validation.Trade.MINUTE;

import hotidle.part.FlyWeights;
import hotidle.part.Sensed;
import java.util.List;
import java.util.OptionalDouble;

/** Weights that turn with a shaft. */
final class GovernorRows {

    private GovernorRows() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                        "Governor",
                        "power of a centrifugal clutch",
                        "4 shoes of 8 kg at 165 mm, springs 750 N there, rim 400 mm, μ 0.3, 500 rpm",
                        "36.1",
                        "kW",
                        shoes(),
                        Source.memory(
                                "R. S. Khurmi, J. K. Gupta, Theory of Machines, centrifugal clutch with four shoes in a spider")),
                Row.of(
                                "Governor",
                                "mass of each shoe of a centrifugal clutch",
                                "15 kW at 900 rpm, 4 shoes that engage at 3/4 of that, rim 150 mm, their centre 120 mm, μ 0.25",
                                "2.27",
                                "kg",
                                shoe(),
                                Source.memory(
                                        "R. S. Khurmi, J. K. Gupta, Theory of Machines, centrifugal clutch of 15 kW at 900 rpm"))
                        .within(0.006, "the book rounds the torque down to 159 N·m"));
    }

    private static double shoes() {
        double speed = 500 / MINUTE;
        List<FlyWeights.Weight> one = List.of(new FlyWeights.Weight(8, 0.165, OptionalDouble.empty()));
        double pressing = new FlyWeights(1, one, 750, 1).pressure(new Sensed(speed, 0, 0));
        return 4 * 0.3 * pressing * 0.2 * 2 * Math.PI * speed / 1e3;
    }

    /** What a shoe of a kilogram presses with, its spring less, beside what four of them must hold together. */
    private static double shoe() {
        double speed = 900 / MINUTE;
        double omega = 2 * Math.PI * speed;
        List<FlyWeights.Weight> one = List.of(new FlyWeights.Weight(1, 0.12, OptionalDouble.empty()));
        double spring = new FlyWeights(1, one, 0, 1).pressure(new Sensed(0.75 * speed, 0, 0));
        double pressing = new FlyWeights(1, one, spring, 1).pressure(new Sensed(speed, 0, 0));
        return 15_000 / omega / (4 * 0.25 * 0.15 * pressing);
    }
}
