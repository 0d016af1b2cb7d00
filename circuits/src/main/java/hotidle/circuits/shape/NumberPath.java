package hotidle.circuits.shape;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
import hotidle.circuits.text.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A quantity or a size of a part, and the way to it.
 *
 * @param steps keys, and names of groups between them; the last one is the number's own key
 * @param key   declaration of the last one
 */
public record NumberPath(List<String> steps, Key key) {

    public NumberPath {
        steps = List.copyOf(steps);
    }

    /** All quantities and sizes that something has, in the order in which they are read. */
    public static List<NumberPath> of(Shape shape, Attributes given) {
        List<NumberPath> paths = new ArrayList<>();
        add(shape, given, List.of(), paths);
        return paths;
    }

    private static void add(Shape shape, Attributes given, List<String> before, List<NumberPath> paths) {
        for (Key key : shape.keys()) {
            List<String> steps = joined(before, key.name());
            if (key.type() instanceof Type.OneGroup inner) {
                given.group(key.name()).ifPresent(group -> add(inner.shape(), group, steps, paths));
            } else if (key.type() instanceof Type.NamedGroups inner) {
                for (Map.Entry<String, Attributes> group :
                        given.groups(key.name()).entrySet()) {
                    add(inner.shape(), group.getValue(), joined(steps, group.getKey()), paths);
                }
            } else if (isNumber(key) && given.has(key.name())) {
                paths.add(new NumberPath(steps, key));
            }
        }
    }

    private static List<String> joined(List<String> before, String last) {
        List<String> all = new ArrayList<>(before);
        all.add(last);
        return all;
    }

    private static boolean isNumber(Key key) {
        return key.type() instanceof Type.Dimensioned || key.type() instanceof Type.Wearing;
    }

    /** As written in a change, below the part. */
    public String name() {
        return String.join(".", steps);
    }

    /** What it is a quantity of; a size is a length. */
    public Dimension dimension() {
        return key.type() instanceof Type.Dimensioned quantity ? quantity.dimension() : Dimension.LENGTH;
    }

    /** Its value [SI]; of a size the one in use. */
    public double value(Attributes given) {
        return holder(given).number(key.name());
    }

    /**
     * Puts another value there. One outside its bounds is told and taken away, as if it had been read.
     *
     * @param value [SI]
     * @param given what has the number
     */
    public void change(double value, Attributes given, Problems problems) {
        Attributes holder = holder(given);
        if (!within(value) && !readable(value, holder, problems)) {
            holder.take(key);
        } else {
            holder.change(key.name(), value + 0.0); // never -0
        }
    }

    private boolean within(double value) {
        return key.allowed().isPresent() && key.allowed().get().holds(value);
    }

    /** Whether a value is good when written out; if not, the problems say why. */
    private boolean readable(double value, Attributes holder, Problems problems) {
        Value text = new Value.Text(Units.inSi(value, dimension()), Place.START);
        return new AmountReader(problems)
                .quantity(key, key.name(), holder, text, dimension())
                .isPresent();
    }

    private Attributes holder(Attributes given) {
        Attributes holder = given;
        for (int i = 0; i < steps.size() - 1; i++) {
            Map<String, Attributes> groups = holder.groups(steps.get(i));
            holder = groups.isEmpty() ? holder.group(steps.get(i)).orElseThrow() : groups.get(steps.get(++i));
        }
        return holder;
    }
}
