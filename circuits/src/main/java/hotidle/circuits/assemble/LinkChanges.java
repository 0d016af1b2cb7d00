package hotidle.circuits.assemble;

import hotidle.circuits.shape.Shape;
import hotidle.circuits.text.Value;
import java.util.Map;
import java.util.Optional;

/**
 * Applies the changes of a build to what carries in the gear train: another shaft, another rating. Members and teeth stay, so that
 * ranges need not be found again.
 *
 * @param changes  does what a change says
 * @param sections of the gear train that name what carries, with the keys that a build may change
 */
public record LinkChanges(Changes changes, Map<String, Shape> sections) {

    /** Whether a change names something that carries and no part. */
    public boolean names(Value.Entries parts, Value.Entries gears, Changes.Change change) {
        String name = Changes.path(change).get(0);
        return parts.entry(name).isEmpty() && section(gears, name).isPresent();
    }

    private Optional<String> section(Value.Entries gears, String name) {
        return sections.keySet().stream()
                .filter(section ->
                        gears.entry(section).map(Value.Entry::value).orElse(null) instanceof Value.Entries named
                                && named.entry(name).isPresent())
                .findFirst();
    }

    /** The gear train with a change applied that names something in it. */
    public Value.Entries apply(Value.Entries gears, Changes.Change change) {
        String name = Changes.path(change).get(0);
        String section = section(gears, name).orElseThrow();
        Value.Entry whole = gears.entry(section).orElseThrow();
        Value.Entries named = (Value.Entries) whole.value();
        Value.Entry link = named.entry(name).orElseThrow();
        Value.Entries with = changes.within(sections.get(section), link, change);
        return gears.with(
                new Value.Entry(section, whole.keyPlace(), named.with(new Value.Entry(name, link.keyPlace(), with))));
    }
}
