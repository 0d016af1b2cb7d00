package hotidle.validation;

import static hotidle.validation.GearTrainCase.clutch;
import static hotidle.validation.GearTrainCase.on;

import hotidle.geartrain.Coupling;
import hotidle.geartrain.GearTrain;
import hotidle.geartrain.PlanetarySet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Trains of built gearboxes: ratios and, where the source has it, what meshes lose. */
final class GearTrainRows {

    private static final Source THREE_SPEED = Source.found(
            "Open encyclopaedia in English, page on a family of three-speed gearboxes of 1963 to 1990, table of"
                    + " ratios; teeth follow from the fractions up to a common factor");
    private static final Source SIX_SPEED =
            Source.found("Vehicle service information of 2010, gear ratios split by planetary set; teeth from memory");
    private static final Source EIGHT_SPEED = Source.found(
            "Open encyclopaedia in English, page on a family of eight-speed gearboxes of four simple rows, pilot series");

    private GearTrainRows() {}

    static List<Row> rows() {
        return Stream.of(simpson(), ravigneaux(), sixSpeed(), otherEightSpeed(), eightSpeed())
                .flatMap(List::stream)
                .toList();
    }

    /** Ring of the front row or both suns driven; front carrier and rear ring are the output. */
    private static GearTrainCase simpson(String name, int frontSun, int frontRing, int rearSun, int rearRing) {
        return new GearTrainCase(
                "Simpson set " + name + ", rows " + frontSun + "/" + frontRing + " and " + rearSun + "/" + rearRing,
                THREE_SPEED,
                new GearTrain(
                        "turbine",
                        "out",
                        List.of(
                                PlanetarySet.single("front", on("suns", frontSun), on("ring", frontRing), "out", 1),
                                PlanetarySet.single("rear", on("suns", rearSun), on("out", rearRing), "carrier", 1)),
                        List.of(
                                clutch("forward", "turbine", "ring"),
                                clutch("direct", "turbine", "suns"),
                                clutch("second", "suns", Coupling.CASE),
                                clutch("low", "carrier", Coupling.CASE))));
    }

    private static List<Row> simpson() {
        GearTrainCase even = simpson("of 1973", 35, 73, 35, 73);
        GearTrainCase small = simpson("for small engines", 41, 73, 35, 73);
        GearTrainCase wide = simpson("of 1981", 37, 74, 35, 85);
        return List.of(
                even.ratio("first", "2.479", "forward", "low"),
                even.ratio("second", "1.479", "forward", "second"),
                even.ratio("third", "1.000", "forward", "direct"),
                even.ratio("reverse", "-2.086", "direct", "low"),
                small.ratio("first", "2.733", "forward", "low"),
                small.ratio("second", "1.562", "forward", "second"),
                wide.ratio("first", "2.714", "forward", "low"),
                wide.ratio("second", "1.500", "forward", "second"),
                wide.ratio("reverse", "-2.429", "direct", "low"));
    }

    private static GearTrainCase ravigneaux(String name, int shortSun, int sun, int ring) {
        return new GearTrainCase(
                "Ravigneaux set " + name + ", suns " + shortSun + " and " + sun + ", ring " + ring,
                THREE_SPEED,
                new GearTrain(
                        "turbine",
                        "out",
                        List.of(PlanetarySet.ravigneaux(
                                "set", on("sun", sun), on("short", shortSun), on("out", ring), "carrier", 1)),
                        List.of(
                                clutch("forward", "turbine", "short"),
                                clutch("direct", "turbine", "sun"),
                                clutch("second", "sun", Coupling.CASE),
                                clutch("low", "carrier", Coupling.CASE))));
    }

    private static List<Row> ravigneaux() {
        GearTrainCase big = ravigneaux("for big engines", 28, 32, 64);
        GearTrainCase small = ravigneaux("for small engines", 25, 32, 64);
        return List.of(
                big.ratio("first", "2.286", "forward", "low"),
                big.ratio("second", "1.429", "forward", "second"),
                big.ratio("third", "1.000", "forward", "direct"),
                big.ratio("reverse", "-2.000", "direct", "low"),
                small.ratio("first", "2.560", "forward", "low"),
                small.ratio("second", "1.520", "forward", "second"));
    }

    private static List<Row> sixSpeed() {
        GearTrainCase six = new GearTrainCase(
                "front set 37/71, Ravigneaux set, suns 31 and 38, ring 85",
                SIX_SPEED,
                new GearTrain(
                        "turbine",
                        "out",
                        List.of(
                                PlanetarySet.single("front", on(Coupling.CASE, 37), on("turbine", 71), "front", 1),
                                PlanetarySet.ravigneaux(
                                        "rear", on("sun", 38), on("short", 31), on("out", 85), "carrier", 1)),
                        List.of(
                                clutch("a", "front", "short"),
                                clutch("b", "front", "sun"),
                                clutch("e", "turbine", "carrier"),
                                clutch("c", "sun", Coupling.CASE),
                                clutch("d", "carrier", Coupling.CASE))));
        return List.of(
                six.ratio("first", "4.17", "a", "d"),
                six.ratio("second", "2.34", "a", "c"),
                six.ratio("third", "1.52", "a", "b"),
                six.ratio("fourth", "1.14", "a", "e"),
                six.ratio("fifth", "0.87", "b", "e"),
                six.ratio("sixth", "0.69", "c", "e"),
                six.ratio("reverse", "-3.40", "b", "d"));
    }

    /** A double-pinion front set, its carrier driven and its sun held, before a Ravigneaux set. */
    private static List<Row> otherEightSpeed() {
        GearTrainCase eight = new GearTrainCase(
                "front set with paired planets 38/82, Ravigneaux set, suns 30 and 34, ring 74",
                Source.found(
                        "Open encyclopaedia in English, page on an eight-speed gearbox of 2006 with a Ravigneaux set"),
                new GearTrain(
                        "turbine",
                        "out",
                        List.of(
                                PlanetarySet.paired("front", on(Coupling.CASE, 38), on("front", 82), "turbine", 1),
                                PlanetarySet.ravigneaux(
                                        "rear", on("sun", 34), on("short", 30), on("out", 74), "carrier", 1)),
                        List.of(
                                clutch("c1", "front", "short"),
                                clutch("c2", "turbine", "carrier"),
                                clutch("c3", "front", "sun"),
                                clutch("c4", "turbine", "sun"),
                                clutch("b1", "sun", Coupling.CASE),
                                clutch("b2", "carrier", Coupling.CASE))));
        return List.of(
                eight.ratio("first", "4.5970", "c1", "b2"),
                eight.ratio("second", "2.7241", "c1", "b1"),
                eight.ratio("third", "1.8636", "c1", "c3"),
                eight.ratio("fourth", "1.4642", "c1", "c4"),
                eight.ratio("fifth", "1.2313", "c1", "c2"),
                eight.ratio("sixth", "1.0000", "c2", "c4"),
                eight.ratio("seventh", "0.8245", "c2", "c3"),
                eight.ratio("eighth", "0.6852", "c2", "b1"),
                eight.ratio("slow reverse", "-4.0561", "c3", "b2"),
                eight.ratio("fast reverse", "-2.1765", "c4", "b2"));
    }

    /** Four simple rows; η is the efficiency of a row with its carrier held. */
    private static GearTrainCase eightSpeed(double eta, int... teeth) {
        double mesh = Math.sqrt(eta);
        return new GearTrainCase(
                "four rows " + teeth[0] + "/" + teeth[1] + ", " + teeth[2] + "/" + teeth[3] + ", " + teeth[4] + "/"
                        + teeth[5] + ", " + teeth[6] + "/" + teeth[7] + (eta < 1 ? ", " + eta + " a row" : ""),
                EIGHT_SPEED,
                new GearTrain(
                        "c2",
                        "c4",
                        List.of(
                                PlanetarySet.single("one", on("suns", teeth[0]), on("r1", teeth[1]), "r4", mesh),
                                PlanetarySet.single("two", on("suns", teeth[2]), on("s3", teeth[3]), "c2", mesh),
                                PlanetarySet.single("three", on("s3", teeth[4]), on("s4", teeth[5]), "c3", mesh),
                                PlanetarySet.single("four", on("s4", teeth[6]), on("r4", teeth[7]), "c4", mesh)),
                        List.of(
                                clutch("A", "suns", Coupling.CASE),
                                clutch("B", "r1", Coupling.CASE),
                                clutch("C", "c2", "s4"),
                                clutch("D", "c3", "c4"),
                                clutch("E", "s3", "s4"))));
    }

    /** The source's torque in third and fifth is not here: it is 0.17 % and 0.01 % off a balance by hand of its own rows. */
    private static List<Row> eightSpeed() {
        String[] applied = {"ABC", "ABE", "BCE", "BDE", "BCD", "CDE", "ACD", "ADE", "ABD"};
        String[] names = {"first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "reverse"};
        String[] ratios = {"4.6957", "3.1304", "2.1039", "1.6667", "1.2845", "1.0000", "0.8392", "0.6667", "-3.2968"};
        String[] at98 = {"4.6217", "3.0603", "", "1.6446", "", "1.0000", "0.8347", "0.6622", "-3.1186"};
        String[] at97 = {"4.5848", "3.0253", "", "1.6336", "", "1.0000", "0.8324", "0.6599", "-3.0313"};
        List<Row> rows = new ArrayList<>();
        int[] teeth = {48, 96, 48, 96, 69, 111, 23, 85};
        for (int i = 0; i < names.length; i++) {
            String[] clutches = applied[i].split("");
            rows.add(eightSpeed(1, teeth).ratio(names[i], ratios[i], clutches));
            if (i != 2 && i != 4) {
                rows.add(eightSpeed(0.98, teeth).torque(names[i], at98[i], clutches));
                rows.add(eightSpeed(0.97, teeth).torque(names[i], at97[i], clutches));
            }
        }
        return rows;
    }
}
