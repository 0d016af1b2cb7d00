package hotidle.study;

import hotidle.geartrain.Coupling;
import hotidle.geartrain.Drive.Driven;
import hotidle.geartrain.GearTrain;
import hotidle.geartrain.Link;
import hotidle.geartrain.PlanetarySet;
import hotidle.geartrain.PlanetarySet.Central;
import hotidle.geartrain.TrainDrive;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.part.Clutch;
import hotidle.part.Lining;
import hotidle.part.OilRing;
import hotidle.part.Orifice;
import hotidle.part.Setting;
import hotidle.transmission.Command;
import hotidle.transmission.Curve;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The ten nodes with two clutches and a planetary set of 30 teeth on the sun and 60 on the ring, without losses.
 *
 * <pre>
 * first     brake and one-way clutch hold the sun, each alone 0.5 of the turbine's torque; ratio 1.5
 * second    direct joins sun and ring and carries 1/3; ratio 1
 * line ─ orifice 1.5 mm ─ brake-apply ─ brake, bleed 0.8 mm;  line ─ direct
 * </pre>
 */
final class TenNodesWithTrain {

    static final double AREA = 0.012;
    static final double SPRING = 800;
    static final double FACTOR = 1.2;
    static final double CONVERTER = 1.8;
    static final double SPEED = 2000 / 60.0;

    /** A shaft that nothing asks much of [N·m]. */
    static final double STRONG = 50_000;

    static final Curve LEVEL = new Curve(List.of(new Curve.Knot(0, 150 * TenNodes.PSI)));
    static final Curve RISING = new Curve(List.of(
            new Curve.Knot(0, 60 * TenNodes.PSI),
            new Curve.Knot(100, 90 * TenNodes.PSI),
            new Curve.Knot(300, 150 * TenNodes.PSI)));

    static final GearTrain TRAIN = new GearTrain(
            "turbine",
            "output",
            List.of(PlanetarySet.single("set", new Central("sun", 30), new Central("hub", 60), "output", 1)),
            List.of(
                    new Coupling("input-shaft", Coupling.Kind.SHAFT, "turbine", "hub"),
                    new Coupling("brake", Coupling.Kind.CLUTCH, "sun", Coupling.CASE),
                    new Coupling("one-way", Coupling.Kind.ONE_WAY, "sun", Coupling.CASE),
                    new Coupling("direct", Coupling.Kind.CLUTCH, "sun", "hub")));

    private TenNodesWithTrain() {}

    /** Of the linings [m]: friction 0.12 at a mean radius of 60 mm. */
    static double arm(int surfaces) {
        return 0.12 * surfaces * 0.06;
    }

    static Driven driven(String... applied) {
        return (Driven) TrainDrive.of(TRAIN, Set.of(applied));
    }

    static Clutch clutch(int surfaces, double bleed, Optional<OilRing> ring) {
        return new Clutch(
                new Clutch.Piston(AREA, SPRING, ring, Optional.empty()),
                new Lining(surfaces, 0.05, 0.07, 0.12, 0.10, true),
                FACTOR,
                new Clutch.Seal(0.08, 1e-6, 1e-3, bleed));
    }

    /** The unit with a brake of some surfaces, an input shaft of a rating and a command. */
    static Transmission unit(double wear, int surfaces, double shaft, Curve lineByTorque) {
        Transmission plain = TenNodes.worn(wear);
        List<Node> nodes = new ArrayList<>(plain.network().nodes());
        nodes.add(Node.free("brake-apply"));
        List<Placed> parts = new ArrayList<>(plain.network().parts());
        parts.add(Placed.of(
                "brake-feed", new Orifice(0.0015, 0, 0.7, 1), "sump", Group.VALVE_BODY, "line", "brake-apply"));
        parts.add(Placed.of(
                "brake", clutch(surfaces, 0.0008, Optional.empty()), "sump", Group.RINGS, "brake-apply", "sump"));
        parts.add(Placed.of("direct", clutch(8, 0, Optional.empty()), "sump", Group.RINGS, "line", "sump"));
        Command.Pilot pilot = plain.command().pilot().orElseThrow();
        Command command = new Command(
                "line",
                "regulator",
                "feed",
                Optional.of(new Command.Pilot(pilot.solenoid(), lineByTorque, pilot.pilotByLine())));
        DutyPoint idle = plain.duties().get(0);
        return new Transmission(
                "geared-ten-nodes",
                plain.build(),
                new Network(nodes, parts),
                plain.oil(),
                plain.ambient(),
                List.of(range("first", "brake", 0), range("second", "direct", 1), new Range("park", false, Map.of())),
                Optional.of(command),
                List.of(idle, pull("pull", "second", 320, idle.temperatures())),
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.of(new Transmission.Gears(
                        TRAIN,
                        List.of(
                                new Link("input-shaft", "input-shaft", shaft),
                                new Link("one-way", "one-way", 900),
                                new Link("pump-drive", Link.PUMP, 60)))));
    }

    private static Range range(String name, String clutch, double speedRatio) {
        Driven driven = driven(clutch);
        double share = driven.loads().get(clutch).torque();
        return new Range(
                name, true, Map.of(clutch, new Range.Applied(share, speedRatio)), Map.of(), Optional.of(driven));
    }

    /** A duty point at 2000 rpm. */
    static DutyPoint pull(String name, String range, double torque, Map<String, Double> temperatures) {
        return new DutyPoint(
                name, "", SPEED, range, Setting.Lockup.OFF, torque, 1, OptionalDouble.of(1), 1, temperatures, Map.of());
    }

    static Transmission withRanges(Transmission unit, List<Range> ranges) {
        return new Transmission(
                unit.circuit(),
                unit.build(),
                unit.network(),
                unit.oil(),
                unit.ambient(),
                ranges,
                unit.commanded(),
                unit.duties(),
                unit.taps(),
                unit.heat(),
                unit.assumed(),
                unit.gears());
    }

    static Transmission withGears(Transmission unit, Optional<Transmission.Gears> gears) {
        return new Transmission(
                unit.circuit(),
                unit.build(),
                unit.network(),
                unit.oil(),
                unit.ambient(),
                unit.ranges(),
                unit.commanded(),
                unit.duties(),
                unit.taps(),
                unit.heat(),
                unit.assumed(),
                gears);
    }
}
