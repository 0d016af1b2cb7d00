package hotidle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Draws small circuit files: up to four nodes besides a sump and a supply, all of them held at times, and parts of many kinds. */
final class SmallCircuit {

    /** Parts between two nodes, each as it is written behind its name. */
    private static final List<String> BETWEEN = List.of(
            "{kind: orifice, from: %s, to: %s, diameter: 1 mm}",
            "{kind: passage, from: %s, to: %s, diameter: 4 mm, length: 200 mm}",
            "{kind: annular-gap, from: %s, to: %s, bore: {new: 12.02 mm, limit: 12.06 mm}, valve: 12 mm, length: 8 mm}",
            "{kind: flat-gap, from: %s, to: %s, width: 100 mm, length: 4 mm, gap: {new: 6 um, limit: 25 um}}",
            "{kind: filter, from: %s, to: %s, flow: 20 L/min, drop: 0.1 bar, viscosity: 6 mPa.s}",
            "{kind: cooler, from: %s, to: %s, flow: 8 L/min, drop: 1 bar, viscosity: 8 mPa.s, needs: 1 L/min}",
            "{kind: lube-branch, from: %s, to: %s, diameter: 1.5 mm, needs: 0.3 L/min}",
            "{kind: check-valve, from: %s, to: %s, seat: 6 mm, cracking-pressure: 3 psi, spring-rate: 1 N/mm, lift: 2 mm}",
            "{kind: relief-valve, from: %s, to: %s, seat: 8 mm, cracking-pressure: 80 psi, spring-rate: 20 N/mm, lift: 2 mm}",
            "{kind: clutch, from: %s, to: %s, piston-area: 100 cm2, return-force: 800 N, surfaces: 8,"
                    + " lining-inner-diameter: 120 mm, lining-outer-diameter: 150 mm, seal-diameter: 120 mm, seal-gap: 2 um}",
            "{kind: sealing-ring, from: %s, to: %s, diameter: 50 mm, width: 2 mm, end-gap: 0.2 mm, radial-clearance: 0.1 mm,"
                    + " contact: 2 mm}");

    /** Parts of three nodes: supply, what they make, exhaust. */
    private static final List<String> PILOTS = List.of(
            "{kind: solenoid, supply: %s, pilot: %s, exhaust: %s, feed-diameter: 1 mm, exhaust-diameter: 1.4 mm}",
            "{kind: throttle-valve, supply: %s, pilot: %s, exhaust: %s, area: 55 mm2, spring-rate: 4 N/mm, preload: 4 N,"
                    + " travel: 10 mm, feed-diameter: 1 mm, exhaust-diameter: 1.4 mm}",
            "{kind: vacuum-modulator, supply: %s, pilot: %s, exhaust: %s, area: 60 mm2, diaphragm-area: 8 cm2, spring: 60 N,"
                    + " feed-diameter: 1 mm, exhaust-diameter: 1.4 mm}",
            "{kind: governor, supply: %s, pilot: %s, exhaust: %s, area: 80 mm2, weights: {only: {mass: 20 g, radius: 28 mm}},"
                    + " feed-diameter: 1 mm, exhaust-diameter: 1.4 mm}");

    private final Random random;
    private final List<String> nodes = new ArrayList<>(List.of("sump", "supply"));
    private final StringBuilder parts = new StringBuilder();
    private final List<String> clutches = new ArrayList<>();
    private boolean commanded;

    SmallCircuit(long seed) {
        random = new Random(seed);
    }

    String text() {
        StringBuilder held = new StringBuilder("  sump: {held: 0 psi}\n");
        boolean pumped = random.nextInt(3) == 0;
        held.append(pumped ? "  supply: {}\n" : "  supply: {held: " + (20 + random.nextInt(150)) + " psi}\n");
        int more = random.nextInt(4);
        for (int i = 0; i < more; i++) {
            nodes.add("n" + i);
            held.append("  n" + i + ": {" + (random.nextInt(5) == 0 ? "held: 15 psi" : "") + "}\n");
        }
        if (pumped) {
            held.append("  suction: {}\n");
            pump();
        }
        nodes.subList(2, nodes.size()).forEach(this::leak);
        int count = 1 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            part("p" + i);
        }
        return file(held.toString());
    }

    private String file(String held) {
        return """
                circuit: small
                about: drawn at random
                oil: o
                oils: {o: {viscosity: [34 mm2/s at 40 degC, 7.4 mm2/s at 100 degC], density: 855 kg/m3}}
                regions: {sump: pan}
                nodes:
                %sparts:
                %sranges:
                  park: {}
                  drive: {forward: yes%s}
                %sduty:
                  warm:
                    range: drive
                    speed: 1200 rpm
                    engine-torque: 50 N.m
                    throttle: 40 %%
                    manifold-vacuum: 12 inHg
                    output-speed: 900 rpm
                    temperatures: {sump: 80 degC}
                """.formatted(
                held, parts, applied(), commanded ? "command: {line: supply, regulator: regulator, edge: out}\n" : "");
    }

    private String applied() {
        return clutches.isEmpty()
                ? ""
                : ", clutches: {" + String.join(": {torque-share: 1}, ", clutches) + ": {torque-share: 1}}";
    }

    private void pump() {
        add("inlet", "{kind: pump-inlet, node: suction}");
        add("strainer", "{kind: filter, from: sump, to: suction, flow: 40 L/min, drop: 0.1 bar, viscosity: 6 mPa.s}");
        add(
                "pump",
                "{kind: pump-chamber, from: suction, to: supply, inlet: inlet, displacement: 15 cm3/rev,"
                        + " slip-flow: 4 L/min, slip-pressure: 100 psi, slip-viscosity: 7 mPa.s, width: 12 mm, tip-diameter: 40 mm}");
        add(
                "ceiling",
                "{kind: relief-valve, from: supply, to: sump, seat: 10 mm, spring-rate: 40 N/mm, cracking-pressure: 200 psi,"
                        + " lift: 2 mm}");
        commanded = random.nextBoolean();
        if (commanded) {
            add(
                    "regulator",
                    "{kind: spool-valve, bore: 16.02 mm, valve: 16 mm, openings: {out: {from: supply, to: "
                            + other("supply")
                            + ", edge: 1 mm}, back: {from: supply, to: suction, edge: 2 mm}}, areas: {line: {node: supply, area:"
                            + " 200 mm2, acts: open}, other: {node: " + any()
                            + ", area: 60 mm2, acts: close}}, spring-rate: 8 N/mm,"
                            + " preload: 100 N, stops: [0 mm, 4 mm]}");
        }
    }

    private void leak(String node) {
        add("leak-" + node, String.format(BETWEEN.get(2), node, "sump"));
    }

    private void part(String name) {
        String from = any();
        String to = other(from);
        if (random.nextInt(4) == 0) {
            add(name, String.format(PILOTS.get(random.nextInt(PILOTS.size())), from, to, "sump"));
        } else {
            add(name, String.format(BETWEEN.get(random.nextInt(BETWEEN.size())), from, to));
        }
    }

    private String any() {
        return nodes.get(random.nextInt(nodes.size()));
    }

    private String other(String node) {
        String other = any();
        while (other.equals(node)) {
            other = any();
        }
        return other;
    }

    private void add(String name, String written) {
        if (written.startsWith("{kind: clutch")) {
            clutches.add(name);
        }
        parts.append("  ").append(name).append(": ").append(written).append("\n");
    }
}
