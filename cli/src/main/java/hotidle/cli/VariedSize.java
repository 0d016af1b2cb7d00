package hotidle.cli;

import hotidle.circuits.kind.Kinds;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Units;
import hotidle.study.WindowMap;
import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A size of a part that goes from one value to another, as written behind --vary.
 *
 * @param text   as written
 * @param name   part.key
 * @param from   first number
 * @param to     last number
 * @param step   with its slash, or empty
 * @param unit   of all three
 */
record VariedSize(String text, String name, String from, String to, String step, String unit) {

    private static final String EXAMPLE = "write --vary hub-bushing.clearance=0.02..0.15mm, for example";

    /** Values where no step is given. */
    private static final int VALUES = 10;

    /** Most values: more could not be told apart in a picture (chosen). */
    private static final int MOST_VALUES = 60;

    private static final String NUMBER = "[+-]?\\d{1,9}(?:\\.\\d{0,9})?";
    private static final Pattern FORM = Pattern.compile("(?<name>[^=]+)=(?<from>" + NUMBER + ")\\.\\.(?<to>" + NUMBER
            + ")(?<step>(?:/" + NUMBER + ")?)\\s*(?<unit>.*)");

    private static final String CLEARANCE = "clearance";

    static VariedSize of(String text) {
        Matcher form = FORM.matcher(text.strip());
        if (!form.matches()) {
            throw wrong(text, " is no size with its two ends", EXAMPLE);
        }
        return new VariedSize(
                text,
                form.group("name").strip(),
                form.group("from"),
                form.group("to"),
                form.group("step"),
                form.group("unit").strip());
    }

    private static WrongInputException wrong(String text, String what, String mend) {
        return new WrongInputException("hotidle: --vary " + text + what + "\nmend: " + mend);
    }

    /** The size in a build. */
    WindowMap.Axis axis(Adjustable build) {
        Map<String, WindowMap.Axis> all = new LinkedHashMap<>();
        for (WearSize dimension : build.dimensions()) {
            all.put(dimension.name(), new WindowMap.Axis(dimension.name(), dimension, 0));
            for (String inner : Kinds.RUN_IN_A_BORE) {
                String clearance = dimension.part() + "." + CLEARANCE;
                if (dimension.key().equals("bore") && !all.containsKey(clearance)) {
                    build.dimension(dimension.part() + "." + inner)
                            .ifPresent(piece ->
                                    all.put(clearance, new WindowMap.Axis(clearance, dimension, piece.value())));
                }
            }
        }
        build.remake()
                .others()
                .forEach(other -> all.putIfAbsent(other.name(), new WindowMap.Axis(other.name(), other, 0)));
        WindowMap.Axis axis = all.get(name);
        if (axis == null) {
            throw unknown(all);
        }
        return axis;
    }

    private WrongInputException unknown(Map<String, WindowMap.Axis> all) {
        List<String> parts =
                all.keySet().stream().map(VariedSize::part).distinct().toList();
        String part = part(name);
        if (!parts.contains(part)) {
            return wrong(text, ": no part '" + part + "' has a size that can be varied", Nearest.mend(part, parts));
        }
        List<String> keys = all.keySet().stream()
                .filter(other -> part(other).equals(part))
                .map(other -> other.substring(part.length() + 1))
                .toList();
        if (name.equals(part)) {
            return wrong(text, " does not say which size of " + part, "valid: " + String.join(", ", keys));
        }
        String key = name.substring(part.length() + 1);
        return wrong(text, ": " + part + " has no size '" + key + "'", Nearest.mend(key, keys));
    }

    private static String part(String name) {
        int dot = name.indexOf('.');
        return dot < 0 ? name : name.substring(0, dot);
    }

    /** The values in SI, rising, as the axis counts them; both ends are sizes that the part can have. */
    List<Double> values(Adjustable build, WindowMap.Axis axis) {
        hotidle.circuits.text.Dimension dimension = axis.dimension().kind() == WearSize.SizeKind.AREA
                ? hotidle.circuits.text.Dimension.AREA
                : hotidle.circuits.text.Dimension.LENGTH;
        double low = si(from, dimension);
        double high = si(to, dimension);
        if (!(high > low)) {
            throw wrong(text, " does not rise", low > high ? "exchange the two ends" : "give two different ends");
        }
        for (double end : List.of(low, high)) {
            possible(build, axis, end, end == low ? from : to);
        }
        if (step.isEmpty()) {
            return IntStream.range(0, VALUES)
                    .mapToObj(i -> low + (high - low) * i / (VALUES - 1))
                    .toList();
        }
        return stepped(dimension);
    }

    private double si(String number, hotidle.circuits.text.Dimension dimension) {
        Units.Amount amount = Units.read(number + unit, dimension);
        if (!amount.good()) {
            throw wrong(
                    text,
                    ": " + number + unit + ", " + amount.wrong(),
                    "end it in its unit: " + String.join(", ", Units.of(dimension)));
        }
        return amount.si();
    }

    private List<Double> stepped(hotidle.circuits.text.Dimension dimension) {
        List<Double> values = new ArrayList<>();
        try {
            values.addAll(Units.series(from + ".." + to + step + unit, dimension));
        } catch (IllegalArgumentException e) {
            throw wrong(text, " has a step that is not above zero or too small", "write a step between the two ends");
        }
        if (values.size() > MOST_VALUES) {
            throw wrong(
                    text, " has " + values.size() + " values; a map has " + MOST_VALUES + " at most", "widen its step");
        }
        return List.copyOf(values);
    }

    private void possible(Adjustable build, WindowMap.Axis axis, double end, String written) {
        if (axis.inner() > 0 && !(end > 0)) {
            throw wrong(text, ": a clearance must be above zero", EXAMPLE);
        }
        try {
            build.remake().with(Map.of(axis.dimension().name(), end + axis.inner()));
        } catch (IllegalArgumentException impossible) {
            throw wrong(
                    text,
                    ": " + written + unit + " is impossible: " + impossible.getMessage(),
                    "give two ends between which the part can be made");
        }
    }
}
