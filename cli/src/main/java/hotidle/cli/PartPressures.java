package hotidle.cli;

import hotidle.answer.phrase.ArticlePhrase;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.single.OnePart;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The pressures at the ports of a part on its own, [Pa]. */
final class PartPressures {

    /** Limits as in a circuit file: pressure of a held node [Pa]. */
    private static final double LEAST = -1e5;

    private static final double MOST = 500e5;
    private static final String RANGE = "-1 bar to 500 bar";

    private PartPressures() {}

    /**
     * Reads them.
     *
     * @throws WrongInputException where they are no pressures of the part's ports, or none is given
     */
    static Map<String, Double> of(PartOptions options, OnePart part) {
        List<String> ports = part.ports();
        Map<String, Double> given = new LinkedHashMap<>();
        for (String text : options.at) {
            String[] halves = PartOptionText.halves("--at", text, ports.get(0) + "=150psi");
            if (!ports.contains(halves[0])) {
                throw new WrongInputException("hotidle part: --at " + text + ": "
                        + ArticlePhrase.of(part.kind().word()) + " has no port '" + halves[0] + "'\nmend: "
                        + Nearest.mend(halves[0], ports));
            }
            if (given.put(halves[0], PartOptionText.within("--at", halves[1], Dimension.PRESSURE, LEAST, MOST, RANGE))
                    != null) {
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
    static boolean freeByItself(OnePart part, String port) {
        return part.kind().facts().alone().finds().contains(port);
    }

    private static void drop(PartOptions options, List<String> ports, Map<String, Double> given, Kind kind) {
        if (kind.isPump()) {
            throw new WrongInputException(
                    "hotidle part: a pump raises the pressure: write --at to=" + options.drop + " instead of --drop");
        }
        if (ports.size() != 2) {
            throw new WrongInputException("hotidle part: --drop is for parts with two ports; "
                    + ArticlePhrase.of(kind.word())
                    + " has " + String.join(", ", ports) + "\nmend: write --at " + ports.get(0) + "=" + options.drop
                    + ", and --at for each other that does not stand at 0");
        }
        double drop =
                PartOptionText.within("--drop", options.drop, Dimension.PRESSURE, -MOST, MOST, "500 bar either way");
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
}
