package hotidle.study;

import hotidle.law.Poppet;
import hotidle.law.RatedPoint;
import hotidle.law.Slot;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.network.Signal;
import hotidle.oil.Oil;
import hotidle.part.AnnularGap;
import hotidle.part.Bushing;
import hotidle.part.CheckValve;
import hotidle.part.Cooler;
import hotidle.part.FaceGap;
import hotidle.part.Filter;
import hotidle.part.Fit;
import hotidle.part.LubeBranch;
import hotidle.part.Orifice;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
import hotidle.part.PumpSlip;
import hotidle.part.ReliefValve;
import hotidle.part.Setting;
import hotidle.part.Solenoid;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
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
 * A small unit of invented dimensions for the tests: double pump, check valve, regulator, feed, cooler and lubrication.
 *
 * <pre>
 * sump — filter — suction ═ primary ───────────────────── line ─ leaks, solenoid ─ pilot
 *                         ═ secondary — check valve ──────┘ │
 *                              └─ unload ─ regulator ───────┴─ feed ─ converter ─ cooler ─ lube ─ sump
 * </pre>
 */
public final class TenNodes {

    public static final double CELSIUS = 273.15;
    public static final double PSI = 6894.757293168;

    private TenNodes() {}

    /** The unit with all wear gaps multiplied. */
    public static Transmission worn(double wear) {
        List<Placed> parts = new ArrayList<>();
        RatedPoint filter = new RatedPoint(1e-3, 5e3, 6e-3, 800, 0.2);
        parts.add(Placed.of("filter", new Filter(filter, 0, 0.05), "sump", Group.PUMP, "sump", "suction"));
        parts.add(Placed.of("pump-inlet", PumpInlet.WIDE, "sump", Group.PUMP, "suction"));
        parts.add(chamber("primary", "line", wear));
        parts.add(chamber("secondary", "secondary-out", wear));
        Poppet ball = new Poppet(0.012, 200, 0.3, 0.003, 0.65, Slot.annular(0.012, 2e-6, 1e-3, 0));
        parts.add(Placed.of("check", new CheckValve(ball), "sump", Group.PUMP, "secondary-out", "line"));
        Poppet relief = new Poppet(0.010, 40_000, 196, 0.0025, 0.65, Slot.annular(0.010, 2e-6, 1e-3, 0));
        parts.add(Placed.of("relief", new ReliefValve(relief), "sump", Group.VALVE_BODY, "line", "sump"));
        parts.add(regulator(wear));
        parts.add(Placed.of(
                "solenoid",
                new Solenoid(0.0010, 0.0014, 5e3, false),
                "sump",
                Group.SOLENOIDS,
                "line",
                "pilot",
                "sump"));
        parts.add(Placed.of(
                "bores",
                new AnnularGap(Fit.same(0.0127 * 12 + 24e-6 * wear, 0.0127 * 12), 0.005, 1),
                "sump",
                Group.VALVE_BODY,
                "line",
                "sump"));
        parts.add(Placed.of(
                "hub-face",
                new FaceGap(0.027, 0.036, Fit.same(0.01304, 0.013), 0.5, 1, 2, 1),
                "sump",
                Group.HUB,
                "line",
                "hub-back"));
        parts.add(new Placed(
                "hub",
                new Bushing(
                        Fit.same(0.050 + 60e-6 * Math.sqrt(wear), 0.050),
                        0.017,
                        List.of(
                                new Bushing.SideLoad(0.8 * 0.013 * 0.084, 0),
                                new Bushing.SideLoad(0.8 * 0.013 * 0.084, Math.PI)),
                        100,
                        -Math.PI / 2,
                        3e-6,
                        7e6,
                        0,
                        false),
                "film",
                Group.HUB,
                List.of("hub-back", "sump"),
                List.of(
                        Signal.pressure("line"),
                        Signal.pressure("suction"),
                        Signal.pressure("secondary-out"),
                        Signal.pressure("suction"))));
        RatedPoint converter = new RatedPoint(2e-4, 1e5, 5e-3, 790, 0.7);
        parts.add(Placed.of(
                "converter-out", new Orifice(0.003, 0, 0.7, 1), "sump", Group.CONVERTER, "converter", "cooler-in"));
        parts.add(Placed.of("cooler", new Cooler(converter, 0, 3e-5), "sump", Group.COOLER, "cooler-in", "lube"));
        parts.add(Placed.of(
                "lube-front",
                new LubeBranch(new Orifice(0.0022, 0, 0.7, 1), 2e-5),
                "sump",
                Group.LUBE,
                "lube",
                "sump"));
        parts.add(Placed.of(
                "lube-rear", new LubeBranch(new Orifice(0.0018, 0, 0.7, 1), 2e-5), "sump", Group.LUBE, "lube", "sump"));
        List<Node> nodes = new ArrayList<>(List.of(Node.held("sump", 0)));
        for (String name :
                List.of("suction", "line", "secondary-out", "pilot", "hub-back", "converter", "cooler-in", "lube")) {
            nodes.add(Node.free(name));
        }
        Oil.Walther walther = Oil.Walther.through(
                new Oil.ViscosityPoint(40 + CELSIUS, 34.0e-6), new Oil.ViscosityPoint(100 + CELSIUS, 7.4e-6));
        Oil oil = new Oil("invented", walther, 850, 0.65, 1.5e-8, 0.015, 7e4);
        Command command = new Command(
                "line",
                "regulator",
                "feed",
                Optional.of(new Command.Pilot(
                        "solenoid",
                        new Curve(List.of(new Curve.Knot(0, 150 * PSI))),
                        new Curve(List.of(new Curve.Knot(60 * PSI, 0), new Curve.Knot(180 * PSI, 80 * PSI))))));
        Map<String, Double> temperatures = Map.of("sump", 110 + CELSIUS, "film", 125 + CELSIUS);
        DutyPoint idle = new DutyPoint(
                "hot-idle",
                "",
                650 / 60.0,
                "first",
                Setting.Lockup.OFF,
                40,
                1.8,
                OptionalDouble.empty(),
                1,
                temperatures,
                Map.of());
        Transmission unit = new Transmission(
                "ten-nodes",
                "wear " + wear,
                new Network(nodes, parts),
                oil,
                101_325,
                List.of(new Range("first", true, Map.of())),
                Optional.of(command),
                List.of(idle),
                List.of());
        return hotidle.transmission.SetPressure.of(unit, 150 * PSI);
    }

    private static Placed chamber(String name, String outlet, double wear) {
        PumpSlip.Face face =
                new PumpSlip.Face("face", Fit.same(0.01304 + 12e-6 * (wear - 1), 0.013), 0.007, 0.019, 0.6, 2, 1);
        PumpSlip.Tip tip = new PumpSlip.Tip(
                "tip", Fit.same(0.0841 + 40e-6 * (wear - 1), 0.084), 0.0015, 4, 0.026, 0.084, Optional.empty());
        PumpSlip slip = new PumpSlip(
                List.of(face), List.of(tip), 1e-12, PumpSlip.Fitted.NONE, 0.4e-6 * wear, PumpSlip.Lost.NONE);
        PumpChamber chamber = new PumpChamber(20e-6, slip, new PumpChamber.Drag(2e5, 0.1, 0.3), Optional.empty());
        return new Placed(
                name,
                chamber,
                "sump",
                Group.PUMP,
                List.of("suction", outlet),
                List.of(Signal.state("pump-inlet", PumpInlet.FILLING)));
    }

    private static Placed regulator(double wear) {
        Fit fit = Fit.same(0.016 + 25e-6 * wear, 0.016);
        List<String> ports = List.of("line", "feed", "secondary", "suction", "pilot");
        SpoolValve valve = new SpoolValve(
                ports,
                List.of(
                        new SpoolValve.Opening("feed", 0, 1, fit, 0.5, 0.3e-3, true, 0.5, 0.61),
                        new SpoolValve.Opening("unload", 2, 3, fit, 1, 0.9e-3, true, 0.5, 0.61),
                        new SpoolValve.Opening("bypass", 0, 3, fit, 1, 1.5e-3, true, 0.5, 0.61)),
                List.of(new SpoolValve.Area(0, 180e-6, Set.of()), new SpoolValve.Area(4, -270e-6, Set.of())),
                new SpoolSpring(6000, 60, 0, 4e-3, 0),
                OptionalDouble.empty());
        return Placed.of(
                "regulator", valve, "sump", Group.VALVE_BODY, "line", "converter", "secondary-out", "suction", "pilot");
    }
}
