package hotidle.validation;

import static hotidle.validation.GearTrainCase.PART;
import static hotidle.validation.GearTrainCase.clutch;
import static hotidle.validation.GearTrainCase.on;

import hotidle.geartrain.Coupling;
import hotidle.geartrain.GearTrain;
import hotidle.geartrain.Mesh;
import hotidle.geartrain.PlanetarySet;
import hotidle.geartrain.Wheel;
import java.util.List;

/** Worked examples of a textbook: speeds and torques of epicyclic trains. */
final class GearTextbookRows {

    private GearTextbookRows() {}

    static List<Row> rows() {
        GearTrainCase two = new GearTrainCase(
                "two rows on one arm, suns 28 and 26 joined, rings 64 and 62",
                Sources.KHURMI.at("ex. 13.8"),
                new GearTrain(
                        "arm",
                        "ring-b",
                        List.of(
                                PlanetarySet.single("one", on("suns", 28), on("ring-a", 64), "arm", 1),
                                PlanetarySet.single("two", on("suns", 26), on("ring-b", 62), "arm", 1)),
                        List.of(clutch("hold", "ring-a", Coupling.CASE))));
        GearTrainCase simple = new GearTrainCase(
                "sun 16, ring 64 held",
                Sources.KHURMI.at("ex. 13.20"),
                new GearTrain(
                        "sun",
                        "carrier",
                        List.of(PlanetarySet.single("set", on("sun", 16), on("ring", 64), "carrier", 1)),
                        List.of(clutch("hold", "ring", Coupling.CASE))));
        GearTrainCase three = new GearTrainCase(
                "three rows 30/120, 24/120, 36/144, the first ring held",
                Sources.KHURMI.at("ex. 13.23"),
                new GearTrain(
                        "in",
                        "out",
                        List.of(
                                PlanetarySet.single("one", on("in", 30), on("r", 120), "arm", 1),
                                PlanetarySet.single("two", on("in", 24), on("arm", 120), "out", 1),
                                PlanetarySet.single("three", on("arm", 36), on("p", 144), "out", 1)),
                        List.of(clutch("hold", "r", Coupling.CASE))));
        GearTrainCase paradox = new GearTrainCase(
                "wheels 100, 101 and 99 on one planet, the first held",
                Sources.KHURMI.at("ex. 13.13"),
                new GearTrain(
                        "arm",
                        "c",
                        List.of(new PlanetarySet(
                                "set",
                                "arm",
                                List.of(
                                        Wheel.sun("a", 100, Coupling.CASE),
                                        Wheel.sun("c", 101, "c"),
                                        Wheel.sun("d", 99, "d"),
                                        Wheel.planet("planet", 20)),
                                List.of(
                                        new Mesh("a", "planet", 1),
                                        new Mesh("c", "planet", 1),
                                        new Mesh("d", "planet", 1)))),
                        List.of()));
        double torque = 7500 / (2 * Math.PI * 1500 / 60);
        return List.of(
                Row.of(
                        PART,
                        "speed of the second ring, the first held",
                        two.train() + ", arm 100 rpm",
                        "4.1",
                        "rpm",
                        100 * two.driven("hold").speed("ring-b").orElseThrow(),
                        two.source()),
                Row.of(
                        PART,
                        "torque that holds the ring",
                        simple.train() + ", 100 N·m on the sun",
                        "400",
                        "N·m",
                        100 * simple.driven("hold").caseTorque(),
                        simple.source()),
                simple.ratio("sun to carrier", "5", "hold"),
                Row.of(
                        PART,
                        "speed of the output",
                        three.train() + ", 1500 rpm",
                        "500",
                        "rpm",
                        1500 * three.driven("hold").speed("out").orElseThrow(),
                        three.source()),
                Row.of(
                        PART,
                        "speed of the free ring",
                        three.train() + ", 1500 rpm",
                        "550",
                        "rpm",
                        1500 * three.driven("hold").speed("p").orElseThrow(),
                        three.source()),
                Row.of(
                        PART,
                        "torque on the held ring",
                        three.train() + ", 7.5 kW at 1500 rpm, efficiency 0.8 of the whole",
                        "66.85",
                        "N·m",
                        torque * (0.8 * three.driven("hold").ratio() - 1),
                        three.source()),
                Row.of(
                        PART,
                        "turns of the wheel of 101",
                        paradox.train() + ", arm one turn",
                        "0.0099",
                        "",
                        paradox.driven().speed("c").orElseThrow(),
                        paradox.source()),
                Row.of(
                        PART,
                        "turns of the wheel of 99",
                        paradox.train() + ", arm one turn",
                        "-0.0101",
                        "",
                        paradox.driven().speed("d").orElseThrow(),
                        paradox.source()));
    }
}
