package hotidle.cli;

import hotidle.answer.part.PartChart;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.single.PartKeys;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * One number of a part that goes from one value to another.
 *
 * @param name   key, with dots where it stands within others; or drop, temperature, clearance of a bore
 * @param of     what is varied
 * @param inner  key of the piece that stays where a clearance is varied, otherwise empty
 * @param values in the unit given, rising
 * @param unit   as the user wrote it
 */
record PartVary(String name, Of of, String inner, List<BigDecimal> values, String unit) {

    /** Points of a chart. */
    static final int POINTS = 60;

    /** What can be varied. */
    enum Of {
        KEY,
        CLEARANCE,
        DUTY
    }

    private static final String NUMBER = "[+-]?\\d{1,9}(?:\\.\\d{0,9})?";
    private static final Pattern FORM =
            Pattern.compile("(?<name>[^=]+)=(?<from>" + NUMBER + ")\\.\\.(?<to>" + NUMBER + ")\\s*(?<unit>.*)");

    static PartVary of(Kind kind, String text) {
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches()) {
            throw new WrongInputException("hotidle part: --vary " + text
                    + " is no key with its two ends\nmend: write --vary length=1..12mm, for example");
        }
        String name = form.group("name").strip();
        String unit = form.group("unit").strip();
        BigDecimal from = new BigDecimal(form.group("from"));
        BigDecimal to = new BigDecimal(form.group("to"));
        if (to.compareTo(from) <= 0) {
            throw new WrongInputException(
                    "hotidle part: --vary " + text + " does not rise\nmend: exchange the two ends");
        }
        List<Key> keys = PartKeys.of(kind);
        String inner = inner(keys);
        Optional<Key> key = find(keys, List.of(name.split("\\.")));
        boolean clearance = key.isEmpty() && name.equals("clearance") && !inner.isEmpty();
        boolean duty = name.equals("drop") || name.equals("temperature");
        if (key.isEmpty() && !clearance && !duty) {
            List<String> names = new ArrayList<>(
                    keys.stream().filter(PartVary::number).map(Key::name).toList());
            names.addAll(List.of("drop", "temperature"));
            throw new WrongInputException("hotidle part: --vary " + text + ": " + kind.word() + " has no number '"
                    + name + "'\nmend: " + Nearest.mend(name, names));
        }
        Dimension dimension = duty
                ? (name.equals("drop") ? Dimension.PRESSURE : Dimension.TEMPERATURE)
                : key.map(PartVary::dimension).orElse(Dimension.LENGTH);
        OptionValues.quantity("--vary " + name, form.group("from") + unit, dimension);
        boolean count = key.isPresent() && key.get().type() instanceof Type.WholeNumber;
        if (count && !(whole(from) && whole(to))) {
            throw new WrongInputException(
                    "hotidle part: --vary " + text + ": " + name + " is a whole number\nmend: write two whole ends");
        }
        Of of = duty ? Of.DUTY : clearance ? Of.CLEARANCE : Of.KEY;
        return new PartVary(name, of, inner, values(from, to, count), unit);
    }

    private static boolean whole(BigDecimal number) {
        return number.stripTrailingZeros().scale() <= 0;
    }

    /** From one end to the other, with both; a whole number goes in whole steps. */
    private static List<BigDecimal> values(BigDecimal from, BigDecimal to, boolean count) {
        if (count) {
            int last = to.intValue();
            int step = Math.max(1, (last - from.intValue() + POINTS - 2) / (POINTS - 1));
            List<BigDecimal> all = new ArrayList<>();
            for (int value = from.intValue(); value < last; value += step) {
                all.add(BigDecimal.valueOf(value));
            }
            all.add(BigDecimal.valueOf(last));
            return List.copyOf(all);
        }
        BigDecimal step = to.subtract(from).divide(BigDecimal.valueOf(POINTS - 1L), MathContext.DECIMAL32);
        List<BigDecimal> values = new ArrayList<>(IntStream.range(0, POINTS - 1)
                .mapToObj(i -> from.add(step.multiply(BigDecimal.valueOf(i))))
                .toList());
        values.add(to);
        return List.copyOf(values);
    }

    /** The piece in a bore whose clearance can be varied. */
    private static String inner(List<Key> keys) {
        List<String> names = keys.stream().map(Key::name).toList();
        if (!names.contains("bore")) {
            return "";
        }
        return Kinds.RUN_IN_A_BORE.stream().filter(names::contains).findFirst().orElse("");
    }

    private static Optional<Key> find(List<Key> keys, List<String> path) {
        Optional<Key> first =
                keys.stream().filter(key -> key.name().equals(path.get(0))).findFirst();
        if (path.size() == 1) {
            return first.filter(PartVary::number);
        }
        if (first.isPresent() && first.get().type() instanceof Type.OneGroup group) {
            return find(group.shape().keys(), path.subList(1, path.size()));
        }
        boolean named = first.isPresent() && first.get().type() instanceof Type.NamedGroups && path.size() > 2;
        return named ? find(inner(first.get()).keys(), path.subList(2, path.size())) : Optional.empty();
    }

    private static Shape inner(Key key) {
        return ((Type.NamedGroups) key.type()).shape();
    }

    private static boolean number(Key key) {
        return key.type() instanceof Type.Dimensioned
                || key.type() instanceof Type.Wearing
                || key.type() instanceof Type.WholeNumber;
    }

    private static Dimension dimension(Key key) {
        if (key.type() instanceof Type.Dimensioned quantity) {
            return quantity.dimension();
        }
        return key.type() instanceof Type.Wearing ? Dimension.LENGTH : Dimension.RATIO;
    }

    /** The words with this value in the place of that of its key. */
    List<String> words(List<String> given, BigDecimal value) {
        String written = value.toPlainString() + unit;
        return switch (of) {
            case DUTY -> given;
            case KEY -> replaced(given, name, written);
            case CLEARANCE -> replaced(given, "bore", wider(given, written));
        };
    }

    private String wider(List<String> given, String clearance) {
        String piece = written(given, inner)
                .orElseThrow(() -> new WrongInputException("hotidle part: --vary clearance keeps the " + inner
                        + " and widens the bore\nmend: add " + inner + "=14.00mm"));
        double sum = OptionValues.quantity(inner, piece, Dimension.LENGTH)
                + OptionValues.quantity("--vary", clearance, Dimension.LENGTH);
        return Units.inSi(new BigDecimal(sum).round(new MathContext(12)).doubleValue(), Dimension.LENGTH)
                .replace(" ", "");
    }

    private static List<String> replaced(List<String> given, String key, String value) {
        List<String> words = new ArrayList<>();
        given.stream().filter(word -> !word.startsWith(key + "=")).forEach(words::add);
        words.add(key + "=" + value);
        return words;
    }

    /** What the user wrote behind a key. */
    static Optional<String> written(List<String> given, String key) {
        return given.stream()
                .filter(word -> word.startsWith(key + "="))
                .map(word -> word.substring(key.length() + 1).strip())
                .findFirst();
    }

    /** The options with this value in the place of theirs. */
    PartOptions duty(PartOptions options, BigDecimal value) {
        return of == Of.DUTY ? options.with(name, value.toPlainString() + unit) : options;
    }

    /** The words for one answer beside the chart: the last value where the user gave none. */
    List<String> completed(List<String> given) {
        String key = of == Of.CLEARANCE ? "bore" : name;
        return of == Of.DUTY || written(given, key).isPresent() ? given : words(given, values.get(values.size() - 1));
    }

    /** The same for the options. */
    PartOptions completed(PartOptions options) {
        boolean given = name.equals("drop") ? options.drop != null : options.temperature != null;
        return of == Of.DUTY && !given ? duty(options, values.get(values.size() - 1)) : options;
    }

    /** What is drawn of a part over it. */
    PartChart chart(PartRun run, List<String> given, PartOptions options) {
        String key = of == Of.CLEARANCE ? "bore" : name;
        return new PartChart(
                run.kind().word(),
                run.kind().carriesLoad(),
                name,
                axis(),
                given.stream().filter(word -> !word.startsWith(key + "=")).toList(),
                values.stream().map(BigDecimal::doubleValue).toList(),
                values.stream()
                        .map(value -> run.of(words(given, value), duty(options, value)))
                        .toList());
    }

    /** Title of the axis. */
    private String axis() {
        String what = of == Of.CLEARANCE ? "clearance, bore less " + inner : name;
        return unit.isEmpty() ? what : what + " [" + unit + "]";
    }
}
