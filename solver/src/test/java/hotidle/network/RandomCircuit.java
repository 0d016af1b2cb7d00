package hotidle.network;

import hotidle.law.Poppet;
import hotidle.law.RatedPoint;
import hotidle.law.Slot;
import hotidle.oil.Oil;
import hotidle.oil.ShearThinning;
import hotidle.oil.ThermalData;
import hotidle.part.AnnularGap;
import hotidle.part.Bushing;
import hotidle.part.Filter;
import hotidle.part.Fit;
import hotidle.part.Part;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
import hotidle.part.PumpSlip;
import hotidle.part.ReliefValve;
import hotidle.part.Samples;
import hotidle.part.Setting;
import hotidle.part.SignalValve;
import hotidle.part.Solenoid;
import hotidle.part.SpoolValve;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * Draws circuits that are well posed and otherwise wild: a filter, an inlet, one or two chambers, a relief valve, a leak at each
 * node, and parts of any kind between nodes picked at random.
 *
 * @param network    the circuit
 * @param conditions what it is solved under
 */
public record RandomCircuit(Network network, Conditions conditions) {

    private static final List<Setting.Lockup> LOCKUPS =
            List.of(Setting.Lockup.OFF, Setting.Lockup.SLIPPING, Setting.Lockup.ON);

    /** Everything but spools, solenoids and bushings: only parts whose flow rises with the drop across them. */
    public static RandomCircuit passive(long seed) {
        return draw(new Random(seed), false);
    }

    /** All kinds of parts. */
    public static RandomCircuit any(long seed) {
        return draw(new Random(seed), true);
    }

    private static RandomCircuit draw(Random random, boolean all) {
        Samples samples = new Samples(random);
        int count = random.nextInt(3, 11);
        List<String> names = new ArrayList<>();
        List<Node> nodes = new ArrayList<>(List.of(Node.held("sump", 0), Node.free("suction")));
        for (int i = 0; i < count; i++) {
            names.add(i == 0 ? "line" : "node-" + i);
            nodes.add(Node.free(names.get(i)));
        }
        List<Placed> parts = new ArrayList<>(supply(samples));
        if (random.nextBoolean()) {
            String outlet = names.get(random.nextInt(1, count));
            parts.add(chamber("secondary", samples, outlet));
            parts.add(relief("secondary-relief", outlet));
        }
        for (String name : names) {
            AnnularGap leak = new AnnularGap(Fit.same(0.014 + samples.decades(20e-6, 200e-6), 0.014), 0.008, 0.5);
            parts.add(Placed.of("leak-" + name, leak, "sump", Group.VALVE_BODY, name, "sump"));
        }
        List<Class<? extends Part>> kinds = new ArrayList<>(Samples.KINDS.keySet());
        kinds.remove(PumpInlet.class);
        kinds.remove(PumpChamber.class);
        Map<String, Double> commands = new HashMap<>();
        for (int i = 0; i < 2 * count; i++) {
            Class<? extends Part> kind = kinds.get(random.nextInt(kinds.size()));
            boolean active = kind == SpoolValve.class
                    || kind == Solenoid.class
                    || kind == SignalValve.class
                    || kind == Bushing.class;
            if (all || !active) {
                String name = "part-" + i;
                parts.add(place(name, Samples.KINDS.get(kind).apply(samples), names, random));
                commands.put(name, samples.decades(1e4, 1e6));
            }
        }
        Oil.Walther line =
                Oil.Walther.through(new Oil.ViscosityPoint(313.15, 34e-6), new Oil.ViscosityPoint(373.15, 7.4e-6));
        Oil oil = new Oil(
                "invented",
                line,
                850,
                0.65,
                1.5e-8,
                samples.between(0, 0.05),
                7e4,
                ThermalData.BY_DENSITY,
                new ShearThinning(0.3, 3e3));
        double sump = samples.between(253, 403);
        Conditions conditions = new Conditions(
                samples.decades(5, 100),
                random.nextBoolean() ? "first" : "reverse",
                LOCKUPS.get(random.nextInt(3)),
                oil,
                101_325,
                Map.of("sump", sump, "film", sump + 15),
                commands);
        return new RandomCircuit(new Network(nodes, parts), conditions);
    }

    private static List<Placed> supply(Samples samples) {
        RatedPoint filter = new RatedPoint(1e-3, samples.decades(3e3, 3e4), 6e-3, 800, 0.2);
        return List.of(
                Placed.of("filter", new Filter(filter, 0, 0.05), "sump", Group.PUMP, "sump", "suction"),
                Placed.of("pump-inlet", PumpInlet.WIDE, "sump", Group.PUMP, "suction"),
                chamber("primary", samples, "line"),
                relief("relief", "line"));
    }

    /** Every pump has a ceiling: a chamber that delivers into a dead end has no steady state below the strength of steel. */
    private static Placed relief(String name, String node) {
        Poppet relief = new Poppet(0.012, 60_000, 280, 0.003, 0.65, Slot.annular(0.012, 2e-6, 1e-3, 0));
        return Placed.of(name, new ReliefValve(relief), "sump", Group.VALVE_BODY, node, "sump");
    }

    private static Placed chamber(String name, Samples samples, String outlet) {
        Part pump = centred((PumpChamber) Samples.KINDS.get(PumpChamber.class).apply(samples));
        boolean slides = pump.form().ports().size() > 2;
        return new Placed(
                name,
                pump,
                "sump",
                Group.PUMP,
                slides ? List.of("suction", outlet, outlet) : List.of("suction", outlet),
                List.of(Signal.state("pump-inlet", PumpInlet.FILLING)));
    }

    /**
     * These circuits have no hub for a pump to read. Nor does speed take from what they sweep, for else a starved inlet would
     * give one of them a smaller share as speed rises.
     */
    private static PumpChamber centred(PumpChamber pump) {
        PumpSlip slip = pump.slip();
        List<PumpSlip.Tip> tips = slip.tips().stream()
                .map(tip -> new PumpSlip.Tip(
                        tip.name(), tip.fit(), tip.land(), tip.teeth(), tip.width(), tip.surface(), Optional.empty()))
                .toList();
        PumpSlip still = new PumpSlip(
                slip.faces(),
                tips,
                slip.opening(),
                slip.fitted(),
                slip.orificeArea(),
                new PumpSlip.Lost(slip.lost().share(), 0));
        return new PumpChamber(pump.displacement(), still, pump.drag(), pump.slide());
    }

    /** Each port at a node of its own where there are enough; drains, exhausts and the sump's port at the sump. */
    private static Placed place(String name, Part part, List<String> names, Random random) {
        List<String> pool = new ArrayList<>(names);
        List<String> nodes = new ArrayList<>();
        for (String port : part.form().ports()) {
            boolean drain = port.equals("drain") || port.equals("exhaust") || port.equals("sump");
            nodes.add(drain || pool.isEmpty() ? "sump" : pool.remove(random.nextInt(pool.size())));
        }
        List<Signal> signals = new ArrayList<>();
        for (int s = 0; s < part.form().signals().size(); s++) {
            signals.add(Signal.pressure(s % 2 == 0 ? names.get(random.nextInt(names.size())) : "suction"));
        }
        return new Placed(name, part, part instanceof Bushing ? "film" : "sump", Group.VALVE_BODY, nodes, signals);
    }
}
