package hotidle.cli;

import hotidle.answer.format.Digits;
import hotidle.answer.phrase.ArticlePhrase;
import hotidle.circuits.single.OnePart;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.network.Placed;
import hotidle.part.Form;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The own states of a part on its own that are held, by name. */
final class PartHolds {

    private PartHolds() {}

    /**
     * Reads them.
     *
     * @throws WrongInputException where the part has no such state, or it lies beyond its stops
     */
    static Map<String, Double> of(PartOptions options, OnePart part) {
        List<Form.Unknown> states = Stream.concat(Stream.of(part.placed()), part.around().stream())
                .map(Placed::part)
                .flatMap(one -> one.form().states().stream())
                .toList();
        Map<String, Double> holds = new LinkedHashMap<>();
        for (String text : options.hold) {
            if (states.isEmpty()) {
                throw new WrongInputException("hotidle part: "
                        + ArticlePhrase.of(part.kind().word()) + " has nothing that --hold could hold");
            }
            String[] halves =
                    PartOptionText.halves("--hold", text, states.get(0).name() + "=...");
            holds.put(halves[0], value(text, state(text, halves[0], states, part), halves[1]));
        }
        made(options, part, holds);
        return holds;
    }

    private static Form.Unknown state(String text, String name, List<Form.Unknown> states, OnePart part) {
        return states.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new WrongInputException("hotidle part: --hold " + text + ": "
                        + ArticlePhrase.of(part.kind().word()) + " has no " + name + "\nmend: "
                        + Nearest.mend(
                                name, states.stream().map(Form.Unknown::name).toList())));
    }

    private static double value(String text, Form.Unknown state, String written) {
        Dimension dimension = OnePart.ofState(state.name());
        double value = OptionValues.quantity("--hold", written, dimension);
        if (!(value >= state.low() && value <= state.high())) {
            boolean length = dimension == Dimension.LENGTH;
            double factor = length ? 1000 : 1;
            throw new WrongInputException("hotidle part: --hold " + text + " lies beyond its stops\nwhy:  "
                    + state.name() + " lies between " + Digits.four(state.low() * factor) + " and "
                    + Digits.four(state.high() * factor) + (length ? " mm" : ""));
        }
        return value;
    }

    /** A pressure that the part makes itself is not made by a state that is held. */
    private static void made(PartOptions options, OnePart part, Map<String, Double> holds) {
        for (String port : part.ports()) {
            if (!holds.isEmpty()
                    && PartPressures.freeByItself(part, port)
                    && options.at.stream().noneMatch(at -> at.startsWith(port + "="))) {
                throw new WrongInputException(
                        "hotidle part: --hold needs the pressure of the " + port + " as well: --at " + port + "=60psi");
            }
        }
    }
}
