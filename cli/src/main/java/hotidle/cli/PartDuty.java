package hotidle.cli;

import hotidle.answer.format.Digits;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.single.LibraryMaterials;
import hotidle.circuits.single.OnePart;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import hotidle.part.Form;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/**
 * What a part on its own is put under.
 *
 * @param oil         that fills it
 * @param oilSaid     how the oil was chosen, in words
 * @param temperature of the oil [K]
 * @param pressures   at the ports that are held [Pa]
 * @param holds       own states that are held, by name
 */
record PartDuty(Oil oil, String oilSaid, double temperature, Map<String, Double> pressures, Map<String, Double> holds) {

    /** The options of the command line. */
    static final class Options {
        @Option(
                names = "--drop",
                paramLabel = "PRESSURE",
                description = "pressure drop between the two ports of a part, the lower one at 0: 150psi")
        String drop;

        @Option(
                names = "--at",
                paramLabel = "PORT=PRESSURE",
                description =
                        "pressure at a port; give it again for each. Ports without stand at 0; a solenoid's pilot finds its own")
        List<String> at = List.of();

        @Option(
                names = "--hold",
                paramLabel = "STATE=VALUE",
                description =
                        "holds what the part would find for itself: position=1.2mm of a spool, eccentricity=0.8, opening=50%%")
        List<String> hold = List.of();

        @Option(
                names = "--oil",
                paramLabel = "NAME",
                description = "an oil of the ready circuits (see 'hotidle list'). Default: shuttle-atf")
        String oil;

        @Option(
                names = "--temperature",
                paramLabel = "TEMPERATURE",
                description =
                        "of the oil and so of the part. Default: 100degC; with --viscosity, that at which it was measured")
        String temperature;

        @Option(
                names = "--viscosity",
                paramLabel = "VISCOSITY",
                description = "dynamic viscosity in place of an oil: 7.2mPa.s")
        String viscosity;

        @Option(
                names = "--density",
                paramLabel = "DENSITY",
                description = "density that goes with --viscosity: 830kg/m3")
        String density;

        @Option(
                names = "--speed",
                paramLabel = "SPEED",
                description = "another way to write the key speed of what turns: 2000rpm")
        String speed;

        /** The same with another drop or temperature. */
        Options with(String what, String value) {
            Options other = new Options();
            other.drop = what.equals("drop") ? value : drop;
            other.at = at;
            other.hold = hold;
            other.oil = oil;
            other.temperature = what.equals("temperature") ? value : temperature;
            other.viscosity = viscosity;
            other.density = density;
            return other;
        }
    }

    private static final String OIL = "shuttle-atf";
    private static final double TEMPERATURE = 373.15;

    /** Limits as in a circuit file: pressure of a held node [Pa], temperature of a duty [K]. */
    private static final double LEAST = -1e5;

    private static final double MOST = 500e5;
    private static final String RANGE = "-1 bar to 500 bar";
    private static final double COLDEST = 213.15;
    private static final double HOTTEST = 523.15;

    private static double within(
            String option, String text, Dimension dimension, double low, double high, String allowed) {
        double value = Choice.quantity(option, text, dimension);
        if (!(value >= low && value <= high)) {
            throw new WrongInputException(
                    "hotidle part: " + option + " " + text + " is out of range\nallowed: " + allowed);
        }
        return value;
    }

    static PartDuty of(Options options, OnePart part, LibraryMaterials stock) {
        boolean fixed = options.viscosity != null || options.density != null;
        if (fixed && options.oil != null) {
            throw new WrongInputException("hotidle part: give either --oil, or --viscosity and --density");
        }
        double usual = fixed ? part.measuredAt() : TEMPERATURE;
        double temperature = options.temperature == null
                ? usual
                : within(
                        "--temperature",
                        options.temperature,
                        Dimension.TEMPERATURE,
                        COLDEST,
                        HOTTEST,
                        "-60 degC to 250 degC");
        Oil oil = fixed ? fixed(options) : named(options, stock);
        return new PartDuty(oil, said(options, fixed), temperature, pressures(options, part), holds(options, part));
    }

    /** What of the oil was left to the program. */
    private static String said(Options options, boolean fixed) {
        List<String> left = new ArrayList<>();
        if (options.oil == null && !fixed) {
            left.add("oil");
        }
        if (options.temperature == null) {
            left.add("temperature");
        }
        return left.isEmpty() ? "" : String.join(" and ", left) + " by default";
    }

    private static Oil named(Options options, LibraryMaterials stock) {
        String name = options.oil == null ? OIL : options.oil;
        Oil oil = stock.oils().get(name);
        if (oil == null) {
            throw new WrongInputException("hotidle part: --oil " + name + " is no oil of the ready circuits\noils: "
                    + String.join(", ", stock.oils().keySet()));
        }
        return oil;
    }

    /** A liquid that keeps its density and viscosity. */
    private static Oil fixed(Options options) {
        if (options.viscosity == null || options.density == null) {
            throw new WrongInputException("hotidle part: --viscosity and --density go together,"
                    + " for example --viscosity 7.2mPa.s --density 830kg/m3");
        }
        double viscosity = Choice.quantity("--viscosity", options.viscosity, Dimension.VISCOSITY);
        double density = Choice.quantity("--density", options.density, Dimension.DENSITY);
        try {
            Oil.Walther line = Oil.Walther.constant(viscosity / density);
            return new Oil("fixed liquid", line, density, 0, 0, 0, 0);
        } catch (IllegalArgumentException outside) {
            throw new WrongInputException("hotidle part: --viscosity " + options.viscosity + " --density "
                    + options.density + ": " + outside.getMessage());
        }
    }

    private static Map<String, Double> pressures(Options options, OnePart part) {
        List<String> ports = part.ports();
        Map<String, Double> given = new LinkedHashMap<>();
        for (String text : options.at) {
            String[] halves = halves("--at", text, ports.get(0) + "=150psi");
            if (!ports.contains(halves[0])) {
                throw new WrongInputException("hotidle part: --at " + text + ": "
                        + PartHelp.a(part.kind().word()) + " has no port '" + halves[0] + "'\nmend: "
                        + Nearest.mend(halves[0], ports));
            }
            if (given.put(halves[0], within("--at", halves[1], Dimension.PRESSURE, LEAST, MOST, RANGE)) != null) {
                throw new WrongInputException("hotidle part: --at gives port " + halves[0] + " twice");
            }
        }
        if (options.drop != null) {
            drop(options, ports, given, part.kind());
        } else if (given.isEmpty() && !part.kind().carriesLoad()) {
            throw new WrongInputException("hotidle part: no pressure is given\nmend: "
                    + (dropSuits(part.kind(), ports) ? "--drop 150psi, or " : "")
                    + "--at " + usualPort(part) + "=150psi for each of its ports " + String.join(", ", ports));
        }
        Map<String, Double> held = new LinkedHashMap<>();
        for (String port : ports) {
            if (given.containsKey(port) || !freeByItself(part, port)) {
                held.put(port, given.getOrDefault(port, 0.0));
            }
        }
        return held;
    }

    private static String usualPort(OnePart part) {
        return part.kind().isPump() ? "to" : part.ports().get(0);
    }

    private static boolean dropSuits(Kind kind, List<String> ports) {
        return ports.size() == 2 && !kind.isPump();
    }

    /** Whether the part makes the pressure there, as a solenoid does at its pilot. */
    private static boolean freeByItself(OnePart part, String port) {
        return part.kind().facts().alone().finds().contains(port);
    }

    private static void drop(Options options, List<String> ports, Map<String, Double> given, Kind kind) {
        if (kind.isPump()) {
            throw new WrongInputException(
                    "hotidle part: a pump raises the pressure: write --at to=" + options.drop + " instead of --drop");
        }
        if (ports.size() != 2) {
            throw new WrongInputException("hotidle part: --drop is for parts with two ports; " + PartHelp.a(kind.word())
                    + " has " + String.join(", ", ports) + "\nmend: write --at " + ports.get(0) + "=" + options.drop
                    + ", and --at for each other that does not stand at 0");
        }
        double drop = within("--drop", options.drop, Dimension.PRESSURE, -MOST, MOST, "500 bar either way");
        if (given.containsKey(ports.get(0))) {
            throw new WrongInputException("hotidle part: --drop says what the pressure at " + ports.get(0)
                    + " is; leave out one of --drop and --at " + ports.get(0));
        }
        double second = given.getOrDefault(ports.get(1), Math.max(-drop, 0));
        if (second + drop < LEAST) {
            throw new WrongInputException("hotidle part: --drop " + options.drop + " would bring " + ports.get(0)
                    + " below vacuum\nmend: raise --at " + ports.get(1));
        }
        given.put(ports.get(1), second);
        given.put(ports.get(0), second + drop);
    }

    private static Map<String, Double> holds(Options options, OnePart part) {
        List<Form.Unknown> states = Stream.concat(Stream.of(part.placed()), part.around().stream())
                .map(Placed::part)
                .flatMap(one -> one.form().states().stream())
                .toList();
        Map<String, Double> holds = new LinkedHashMap<>();
        for (String text : options.hold) {
            if (states.isEmpty()) {
                throw new WrongInputException(
                        "hotidle part: " + PartHelp.a(part.kind().word()) + " has nothing that --hold could hold");
            }
            String[] halves = halves("--hold", text, states.get(0).name() + "=...");
            Form.Unknown state = states.stream()
                    .filter(one -> one.name().equals(halves[0]))
                    .findFirst()
                    .orElseThrow(() -> new WrongInputException("hotidle part: --hold " + text + ": "
                            + PartHelp.a(part.kind().word()) + " has no " + halves[0] + "\nmend: "
                            + Nearest.mend(
                                    halves[0],
                                    states.stream().map(Form.Unknown::name).toList())));
            double value = Choice.quantity("--hold", halves[1], OnePart.ofState(halves[0]));
            if (!(value >= state.low() && value <= state.high())) {
                boolean length = OnePart.ofState(halves[0]) == Dimension.LENGTH;
                double factor = length ? 1000 : 1;
                throw new WrongInputException("hotidle part: --hold " + text + " lies beyond its stops\nwhy:  "
                        + halves[0] + " lies between " + Digits.four(state.low() * factor) + " and "
                        + Digits.four(state.high() * factor) + (length ? " mm" : ""));
            }
            holds.put(halves[0], value);
        }
        for (String port : part.ports()) {
            if (!holds.isEmpty()
                    && freeByItself(part, port)
                    && options.at.stream().noneMatch(at -> at.startsWith(port + "="))) {
                throw new WrongInputException(
                        "hotidle part: --hold needs the pressure of the " + port + " as well: --at " + port + "=60psi");
            }
        }
        return holds;
    }

    private static String[] halves(String option, String text, String example) {
        String[] halves = text.split("=", 2);
        if (halves.length != 2 || halves[0].isBlank()) {
            throw new WrongInputException("hotidle part: " + option + " " + text
                    + " is no name with its value\nmend: write " + option + " " + example);
        }
        return new String[] {halves[0].strip(), halves[1].strip()};
    }

    /** The oil at its temperature. */
    OilAt oilAt() {
        return oil.at(temperature, OilAt.STANDARD_ATMOSPHERE);
    }
}
