package hotidle.cli;

import hotidle.circuits.create.ReadyUnit;
import hotidle.circuits.create.UnitAnswers;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Answers to the questions of {@code new}, read as quantities, counts and names. */
final class NewAnswers {

    private NewAnswers() {}

    /**
     * What the answers say.
     *
     * @param given answer by question
     * @throws WrongInputException where one is no answer to its question
     */
    static UnitAnswers of(Map<String, String> given) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        UnitAnswers.QUANTITIES.forEach((question, dimension) ->
                number(given, question, dimension).ifPresent(value -> numbers.put(question, value)));
        count(given).ifPresent(bores -> numbers.put(UnitAnswers.BORES, (double) bores));
        return new UnitAnswers(
                numbers,
                ranges(given.getOrDefault("ranges", "")),
                areas(names(given.getOrDefault("clutch", ""))),
                faces(names(given.getOrDefault("faces", ""))));
    }

    /** Everything that is wrong with answers, each on its own and put to a ready unit; none where all can be taken. */
    static List<String> wrong(Map<String, String> given, ReadyUnit ready) {
        List<String> wrong = new ArrayList<>();
        Map<String, String> left = new LinkedHashMap<>();
        given.forEach((question, answer) -> {
            try {
                of(Map.of(question, answer));
                left.put(question, answer);
            } catch (WrongInputException no) {
                wrong.add(no.getMessage());
            }
        });
        Optional<UnitAnswers.WrongAnswerException> no = ready.wrong(of(left));
        while (no.isPresent()) {
            String question = no.get().question();
            wrong.add("hotidle: " + (question.isEmpty() ? "" : "--" + question + ": ")
                    + no.get().getMessage());
            no = left.remove(no.get().question()) == null ? Optional.empty() : ready.wrong(of(left));
        }
        return wrong;
    }

    private static OptionalDouble number(Map<String, String> given, String question, Dimension dimension) {
        if (!given.containsKey(question)) {
            return OptionalDouble.empty();
        }
        double value = quantity(question, given.get(question), given.get(question), dimension);
        if (!(value > 0)) {
            throw new WrongInputException(
                    "hotidle: --" + question + " " + given.get(question) + ": it must be above zero");
        }
        return OptionalDouble.of(value);
    }

    /** No unit is proposed for a bare number: which one was meant only its user knows. */
    private static double quantity(String question, String written, String text, Dimension dimension) {
        if (text.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)")) {
            throw new WrongInputException("hotidle: --" + question + " " + written
                    + ", a number without its unit\nmend: give it in one of these, its number with it: "
                    + String.join(", ", Units.of(dimension)));
        }
        return OptionValues.quantity("--" + question, text, dimension);
    }

    private static OptionalInt count(Map<String, String> given) {
        String text = given.getOrDefault("bores", "");
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        if (!text.matches("[1-9]\\d?")) {
            throw new WrongInputException("hotidle: --bores " + text + ": write a whole number from 1 to 99");
        }
        return OptionalInt.of(Integer.parseInt(text));
    }

    private static List<String> names(String text) {
        List<String> names = new ArrayList<>();
        for (String one : text.split("[,;]", -1)) {
            if (!one.isBlank()) {
                names.add(one.strip());
            }
        }
        return names;
    }

    /** Ranges as the trade writes them, R,1,2, in the words of circuit files. */
    private static final List<String> GEARS =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth");

    private static final Map<String, String> LETTERS = Map.of("r", "reverse", "n", "neutral", "p", "park");

    private static List<String> ranges(String text) {
        return names(text.strip().replaceAll("\\s+", ",")).stream()
                .map(NewAnswers::range)
                .toList();
    }

    private static String range(String written) {
        Matcher gear = GEAR.matcher(written);
        return gear.matches()
                ? GEARS.get(Integer.parseInt(gear.group(1)) - 1)
                : LETTERS.getOrDefault(written.toLowerCase(Locale.ROOT), written);
    }

    private static final Pattern GEAR = Pattern.compile("([1-9]|10)(?:st|nd|rd|th)?");

    private static Map<String, Double> areas(List<String> words) {
        Map<String, Double> areas = new LinkedHashMap<>();
        for (String word : words) {
            int at = word.indexOf('=');
            if (at < 1) {
                throw new WrongInputException(
                        "hotidle: --clutch " + word + ": write its name and its area, forward-clutch=135cm2");
            }
            double area = quantity("clutch", word, word.substring(at + 1).strip(), Dimension.AREA);
            if (!(area > 0)) {
                throw new WrongInputException("hotidle: --clutch " + word + ": its area must be above zero");
            }
            areas.put(word.substring(0, at).strip(), area);
        }
        return areas;
    }

    /** A clutch, its count of faces, and perhaps their mean radius: forward-clutch=10x68mm. */
    private static final Pattern FACES =
            Pattern.compile("(?<name>[^=]+)=\\s*(?<count>[1-9]\\d?)\\s*([x*]\\s*(?<radius>\\S.*))?");

    private static Map<String, UnitAnswers.Faces> faces(List<String> words) {
        Map<String, UnitAnswers.Faces> faces = new LinkedHashMap<>();
        for (String word : words) {
            Matcher one = FACES.matcher(word);
            if (!one.matches()) {
                throw new WrongInputException("hotidle: --faces " + word
                        + ": write a clutch and how many friction faces it has, forward-clutch=10, and their mean radius"
                        + " where you know it, forward-clutch=10x68mm");
            }
            faces.put(
                    one.group("name").strip(),
                    new UnitAnswers.Faces(Integer.parseInt(one.group("count")), radius(word, one.group("radius"))));
        }
        return faces;
    }

    private static OptionalDouble radius(String word, String text) {
        if (text == null) {
            return OptionalDouble.empty();
        }
        double radius = quantity("faces", word, text.strip(), Dimension.LENGTH);
        if (!(radius > 0)) {
            throw new WrongInputException("hotidle: --faces " + word + ": the mean radius must be above zero");
        }
        return OptionalDouble.of(radius);
    }
}
