package hotidle.circuits;

import static hotidle.circuits.Golden.resource;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.law.Poppet;
import hotidle.law.RatedPoint;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import hotidle.network.Group;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.network.Signal;
import hotidle.oil.Oil;
import hotidle.oil.ShearThinning;
import hotidle.oil.ThermalData;
import hotidle.part.AnnularGap;
import hotidle.part.Band;
import hotidle.part.Bushing;
import hotidle.part.CheckValve;
import hotidle.part.Clutch;
import hotidle.part.Converter;
import hotidle.part.Cooler;
import hotidle.part.FaceGap;
import hotidle.part.Filter;
import hotidle.part.Fit;
import hotidle.part.FlatGap;
import hotidle.part.Lining;
import hotidle.part.LubeBranch;
import hotidle.part.OilRing;
import hotidle.part.Orifice;
import hotidle.part.Part;
import hotidle.part.Passage;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
import hotidle.part.PumpSlip;
import hotidle.part.ReliefValve;
import hotidle.part.SealingRing;
import hotidle.part.Selector;
import hotidle.part.Setting;
import hotidle.part.Solenoid;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Tap;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * every-kind.yaml holds one part of every kind; each must come out as the record that its numbers say, in SI. Past 300 lines, since
 * that is one file with a statement for each kind.
 */
class EveryKindTest {

    /** 30·4.4482216152605/0.00064516, to the last digit. */
    private static final double THIRTY_PSI = 206842.71879505084;

    private static final double PSI = THIRTY_PSI / 30;
    private static final double ALUMINIUM = 21.8e-6;
    private static final double STEEL = 12e-6;
    private static final double CELSIUS = 273.15;

    private static DescribedCircuit circuit;
    private static Transmission unit;

    @BeforeAll
    static void read() throws IOException {
        ReadCircuit read = CircuitReader.read(resource("every-kind.yaml"), "every-kind.yaml");
        circuit = read.circuit().orElseThrow(() -> new AssertionError(read.problems()));
        unit = circuit.unit("fresh");
    }

    private static Placed placed(String name) {
        return unit.network().part(name).orElseThrow();
    }

    private static Part part(String name) {
        return placed(name).part();
    }

    private static Fit pocket(double inner, double clearance) {
        return new Fit(inner + clearance, inner, ALUMINIUM, STEEL, 293.15);
    }

    private static Fit bore(double bore, double valve) {
        return new Fit(bore, valve, ALUMINIUM, STEEL, 293.15);
    }

    @Test
    void everyKindOfPartIsInTheFile() {
        Set<?> kinds = unit.network().parts().stream()
                .map(placed -> placed.part().getClass())
                .collect(Collectors.toSet());
        assertEquals(
                Set.copyOf(List.of(Part.class.getPermittedSubclasses())),
                kinds,
                "add one of each to the parts of circuits/src/test/resources/hotidle/circuits/every-kind.yaml"
                        + " (DEVELOPERS.md, Add a kind of part)");
    }

    @Test
    void plainRestrictionsComeOutInMetres() {
        assertEquals(new Orifice(0.0015, 0.0012, 0.72, 2), part("leak-off"));
        assertEquals(new AnnularGap(bore(0.014022, 0.014), 0.009, 0.7), part("bore-1"));
        assertEquals(new AnnularGap(bore(0.01102, 0.011), 0.00635, 1), part("bore-2"));
        assertEquals(new FlatGap(0.16, 6e-6, 6e-6, 0, 0.004), part("plate"));
        assertEquals(new FaceGap(0.025, 0.035, pocket(0.012, 0.00005), 0.5, 0.4, 2, 1), part("hub-face"));
        double round = Math.PI * 0.06;
        assertEquals(
                new SealingRing(
                        new Fit(0.06, 0.06 - 2 * 0.0001, 12e-6, 21.8e-6, 293.15),
                        new Fit(round, round - 0.0002, 12e-6, 11e-6, 293.15),
                        0.0024,
                        3e-6,
                        0.002,
                        2),
                part("low-rings"));
        assertEquals(new Passage(0.008, 1.2, 10e-6, 1.5), part("return"));
    }

    @Test
    void ratedPointsComeOutInCubicMetresASecond() {
        RatedPoint strainer = new RatedPoint(0.001, 1e4, 0.006, 820, 0.25);
        assertEquals(new Filter(strainer, 0.1, 0.06), part("strainer"));
        RatedPoint cooler = new RatedPoint(8e-3 / 60, 1e5, 0.008, 820, 0);
        assertEquals(new Cooler(cooler, 0, 2e-3 / 60), part("cooler"));
        Converter.LockupClutch lockup = new Converter.LockupClutch(
                new RatedPoint(1e-4, 2e5, 0.005, 800, 0.5),
                new RatedPoint(1e-5, 5e5, 0.005, 820, 0.5),
                0.03,
                0.12,
                1,
                0.12,
                1.2);
        assertEquals(
                new Converter(new RatedPoint(1e-4, 0.3e5, 0.005, 820, 0.8), THIRTY_PSI, Optional.of(lockup)),
                part("converter"));
    }

    @Test
    void valvesComeOutInNewtonsAndMetres() {
        assertEquals(new CheckValve(new Poppet(0.01, 300, 0.5, 0.003, 0.7, SeriesLoss.SHUT)), part("joining"));
        double cracking = 400 * PSI * Math.PI * 0.01 * 0.01 / 4;
        Poppet ceiling = new Poppet(0.01, 40_000, cracking, 0.002, 0.7, Slot.annular(0.01, 1e-6, 0.0005, 0));
        assertEquals(
                new ReliefValve(ceiling).poppet().preload(),
                ((ReliefValve) part("ceiling")).poppet().preload(),
                1e-9);
        assertEquals(ceiling.leak(), ((ReliefValve) part("ceiling")).poppet().leak());
        assertEquals(new Solenoid(0.0008, 0.0012, 0.3e5, true), part("pilot"));
        SpoolValve.Opening feed =
                new SpoolValve.Opening("feed", 0, 1, bore(0.020026, 0.02), 0.2, 0.0004, true, 1, 0.611);
        SpoolValve.Opening bypass =
                new SpoolValve.Opening("bypass", 0, 2, bore(0.018026, 0.018), 1, 0.0014, true, 0.5, 0.611);
        List<SpoolValve.Area> areas = List.of(
                new SpoolValve.Area(0, 200e-6, Set.of()),
                new SpoolValve.Area(0, 50e-6, Set.of("first")),
                new SpoolValve.Area(3, -150e-6, Set.of()));
        assertEquals(
                new SpoolValve(
                        List.of("line", "release", "suction", "boost"),
                        List.of(feed, bypass),
                        areas,
                        new SpoolSpring(8000, 124, 0, 0.004, 2),
                        OptionalDouble.empty()),
                part("regulator"));
        assertEquals(
                List.of("line", "release", "suction", "boost"),
                placed("regulator").nodes());
        assertEquals(
                new Selector(
                        List.of("in", "out", "empty"),
                        List.of(
                                new Selector.Connection("low-feed", 0, 1, 0.003, Set.of("first")),
                                new Selector.Connection("low-vent", 1, 2, 0.002, Set.of("park"))),
                        Optional.of(new Selector.Land(bore(0.01302, 0.013), 0.004, 1))),
                part("selector"));
        assertEquals(List.of("line", "low", "sump"), placed("selector").nodes());
    }

    @Test
    void thePumpReadsItsInletAndTheBushingReadsThePump() {
        PumpSlip.Face face = new PumpSlip.Face("face", pocket(0.012, 0.00004), 0.01, 0.016, 0.5, 4, 1);
        PumpSlip.Tip tip = new PumpSlip.Tip("tip", pocket(0.084, 0.00014), 0.0015, 4, 0.012, 0.084, Optional.empty());
        PumpSlip.Tip driven =
                new PumpSlip.Tip("driven-tip", pocket(0.084, 0.00014), 0.0015, 4, 0.012, 0.084, Optional.empty());
        PumpSlip slip = new PumpSlip(
                List.of(face),
                List.of(tip, driven),
                0,
                PumpSlip.Fitted.NONE,
                0.3e-6,
                new PumpSlip.Lost(0, 0.002 / 1000 * 60));
        PumpChamber chamber = new PumpChamber(18e-6, slip, DRAG, Optional.empty());
        assertEquals(chamber, part("primary"));
        assertEquals(
                List.of(Signal.state("inlet", PumpInlet.FILLING)),
                placed("primary").signals());
        double travelled = 18e-6 / 8e-4;
        double squares =
                0.084 * 0.084 * 0.9 - 0.0672 * 0.0672; // teeth a tenth of the diameter high, 10 % of the head won back
        PumpInlet inlet = (PumpInlet) part("inlet");
        assertEquals(0.75 * travelled * travelled, inlet.port(), 1e-15);
        assertEquals(Math.PI * Math.PI / 2 * squares, inlet.spun(), 1e-15);
        Bushing hub = new Bushing(
                new Fit(0.05007, 0.05, 19e-6, STEEL, 293.15),
                0.017,
                List.of(new Bushing.SideLoad(0.78 * 0.012 * 0.084, Math.PI / 2)),
                80,
                Math.PI * 1.5,
                4 * Math.sqrt(Math.PI / 2) * 0.5e-6,
                10e6,
                1e-4,
                true);
        assertEquals(hub, part("hub"));
        assertEquals(
                List.of(Signal.pressure("second"), Signal.pressure("suction")),
                placed("hub").signals());
    }

    private static final PumpChamber.Drag DRAG = new PumpChamber.Drag(5e3, 0.05, 0);

    @Test
    void consumersComeOutWithWhatTheyNeed() {
        double half = 0.5e-3 / 60;
        assertEquals(new LubeBranch(new Orifice(0.0015, 0, java.util.OptionalDouble.empty(), 1), half), part("front"));
        assertEquals(
                new LubeBranch(new AnnularGap(bore(0.03508, 0.035), 0.025, 0.5), 0.3e-3 / 60).outlet(),
                ((LubeBranch) part("rear")).outlet());
        Clutch.Piston piston = new Clutch.Piston(
                0.015, 900, Optional.of(new OilRing(0.055, 0.0885, 0.05)), Optional.of(new OilRing(0.06, 0.085, 0.06)));
        Lining lining = new Lining(14, 0.065, 0.082, 0.12, 0.12, true);
        assertEquals(new Clutch(piston, lining, 1.2, new Clutch.Seal(0.16, 2e-6, 0.002, 0)), part("low-clutch"));
        Band band = new Band(0.075, Math.toRadians(320), 1.5, true, 0.12, 0.12);
        assertEquals(
                new Clutch(Clutch.Piston.plain(0.002, 200), band, 1.2, new Clutch.Seal(0.05, 2e-6, 0.002, 0)),
                part("low-band"));
    }

    @Test
    void aPartStandsInItsRegionAndIsBookedInItsGroup() {
        assertEquals("cooler-out", placed("cooler").region());
        assertEquals("sump", placed("bore-1").region());
        assertEquals(Group.HUB, placed("hub-face").group());
        assertEquals(Group.RINGS, placed("low-rings").group());
        assertEquals(Group.VALVE_BODY, placed("bore-1").group());
    }

    @Test
    void sectionsComeOutInSi() {
        Oil.Walther line = Oil.Walther.through(
                new Oil.ViscosityPoint(40 + CELSIUS, 34e-6), new Oil.ViscosityPoint(100 + CELSIUS, 7.4e-6));
        assertEquals(
                new Oil(
                        "thick",
                        line,
                        850,
                        0.7,
                        20e-9,
                        0.02,
                        0.6e5,
                        ThermalData.BY_DENSITY,
                        new ShearThinning(0.3, 3e3)),
                unit.oil());
        assertEquals(1e5, unit.ambient());
        assertEquals(Node.held("sump", 0), unit.network().nodes().get(0));
        assertEquals(Node.free("suction"), unit.network().nodes().get(1));
        assertEquals(
                List.of(
                        new Range("park", false, Map.of()),
                        new Range(
                                "first",
                                true,
                                Map.of(
                                        "low-clutch",
                                        new Range.Applied(1.1, 0),
                                        "low-band",
                                        new Range.Applied(0.4, 0)))),
                unit.ranges());
        assertEquals(List.of(new Tap("main", "line", "left side", "nothing")), unit.taps());
        DutyPoint idle = unit.duty("hot-idle").orElseThrow();
        assertEquals(650.0 / 60, idle.speed());
        assertEquals(Setting.Lockup.OFF, idle.lockup());
        assertEquals(110 + CELSIUS, idle.temperatures().get("sump"));
        assertEquals((200 + 459.67) / 1.8, idle.temperatures().get("cooler-out"), 1e-12);
        assertEquals(
                125 * PSI, unit.command().pilot().orElseThrow().lineByTorque().at(200), 1e-6);
    }

    @Test
    void whatTheFileLeavesToTheProgramIsListedWithItsSource() {
        assertTrue(circuit.defaults()
                .contains(new DescribedCircuit.DefaultLine(
                        "leak-off.region", "sump", "most parts lie in or near the pan (assumed)")));
        assertTrue(Stream.of("materials.steel.expansion", "duty.hot-idle.lockup", "oils.water-thin.air")
                .allMatch(where -> circuit.defaults().stream()
                        .anyMatch(line -> line.where().equals(where))));
        assertTrue(circuit.defaults().stream().noneMatch(line -> line.where().equals("leak-off.cd")));
    }

    @Test
    void sizesAreListedNewLimitAndMeasured() {
        assertTrue(circuit.sizes()
                .contains(new DescribedCircuit.SizeLine(
                        "bore-1", "bore", 0.014022, OptionalDouble.of(0.014055), OptionalDouble.of(0.014058))));
        assertTrue(circuit.sizes()
                .contains(new DescribedCircuit.SizeLine(
                        "bore-1", "valve", 0.014, OptionalDouble.empty(), OptionalDouble.empty())));
        assertTrue(circuit.sizes()
                .contains(new DescribedCircuit.SizeLine(
                        "regulator",
                        "openings.bypass.bore",
                        0.018026,
                        OptionalDouble.empty(),
                        OptionalDouble.empty())));
    }
}
