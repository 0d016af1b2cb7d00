package hotidle.validation;

import hotidle.geartrain.Coupling;
import hotidle.geartrain.Drive.Driven;
import hotidle.geartrain.GearTrain;
import hotidle.geartrain.PlanetarySet;
import hotidle.geartrain.PlanetarySet.Central;
import hotidle.geartrain.TrainDrive;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A second compound with mesh losses: four simple rows for ten speeds. The source gives teeth, ratios and torques; which members are joined
 * was found by trying all couplings of the eight-speed layout and is the only one that gives all eleven ratios.
 */
final class TenSpeedRows {

    private static final String PART = "Gear train";
    private static final Source SOURCE =
            Source.found("Open encyclopaedia in English, page on a ten-speed gearbox of 2017 of four simple rows");

    private static final String[] NAMES = {
        "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "reverse"
    };
    private static final String[] APPLIED = {
        "ABCD", "ABEF", "BCEF", "BDEF", "BCDF", "BCDE", "CDEF", "ACDE", "ACDF", "ADEF", "ABDE"
    };
    private static final String[] RATIOS = {
        "4.6957", "2.9851", "2.1462", "1.7690", "1.5201", "1.2751", "1.0000", "0.8536", "0.6892", "0.6357", "-4.8661"
    };
    private static final String[] AT_98 = {
        "4.6217", "2.9164", "2.1201", "1.7440", "1.5054", "1.2624", "1.0000", "0.8489", "0.6839", "0.6310", "-4.6591"
    };
    private static final String[] AT_97 = {
        "4.5848", "2.8821", "2.1071", "1.7316", "1.4980", "1.2559", "1.0000", "0.8465", "0.6812", "0.6286", "-4.5573"
    };

    /** By how much the source is off in third, fifth and sixth at most; nil elsewhere, where every printed digit agrees. */
    private static final double[] OFF_98 = {0, 0, 3e-4, 0, 5e-3, 8e-4, 0, 0, 0, 0, 0};

    private static final double[] OFF_97 = {0, 0, 5e-4, 0, 7e-3, 8e-4, 0, 0, 0, 0, 0};

    private TenSpeedRows() {}

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < NAMES.length; i++) {
            rows.add(row(
                    "ratio in " + NAMES[i], "", RATIOS[i], driven(1, APPLIED[i]).ratio()));
            rows.add(torque(i, 0.98, AT_98[i], OFF_98[i]));
            rows.add(torque(i, 0.97, AT_97[i], OFF_97[i]));
        }
        return rows;
    }

    private static Row torque(int range, double eta, String published, double off) {
        Row row = row(
                "torque ratio in " + NAMES[range],
                ", " + eta + " a row",
                published,
                driven(eta, APPLIED[range]).torqueRatio());
        return off > 0
                ? row.disagreeing(off, "a balance of the four rows by hand, with the power through each, gives ours")
                : row;
    }

    private static Row row(String quantity, String eta, String published, double ours) {
        return Row.of(PART, quantity, "four rows 45/95, 51/89, 73/119, 23/85" + eta, published, "", ours, SOURCE);
    }

    private static Driven driven(double eta, String applied) {
        if (TrainDrive.of(train(Math.sqrt(eta)), Set.of(applied.split(""))) instanceof Driven driven) {
            return driven;
        }
        throw new IllegalStateException("does not drive with " + applied);
    }

    private static GearTrain train(double mesh) {
        return new GearTrain(
                "c2",
                "c4",
                List.of(
                        set("one", "suns", 45, "r1", 95, "r4", mesh),
                        set("two", "suns", 51, "r2", 89, "c2", mesh),
                        set("three", "s3", 73, "s4", 119, "c3", mesh),
                        set("four", "s4", 23, "r4", 85, "c4", mesh)),
                List.of(
                        clutch("A", "suns", Coupling.CASE),
                        clutch("B", "r1", Coupling.CASE),
                        clutch("C", "c2", "s4"),
                        clutch("D", "r4", "c3"),
                        clutch("E", "r2", "s3"),
                        clutch("F", "r2", "c3")));
    }

    private static PlanetarySet set(
            String name, String sun, int sunTeeth, String ring, int ringTeeth, String carrier, double mesh) {
        return PlanetarySet.single(name, new Central(sun, sunTeeth), new Central(ring, ringTeeth), carrier, mesh);
    }

    private static Coupling clutch(String name, String first, String second) {
        return new Coupling(name, Coupling.Kind.CLUTCH, first, second);
    }
}
