package hotidle.circuits.shape;

import hotidle.circuits.text.Place;
import hotidle.circuits.text.Problems;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** What was read behind a key, numbers in SI. */
sealed interface Item {

    record Scalar(double value) implements Item {}

    record Word(String word) implements Item {}

    record WordList(List<String> words) implements Item {
        public WordList {
            words = List.copyOf(words);
        }
    }

    /** A size that wears, with the places of its values. */
    record WearingSize(Attributes.Sizes sizes) implements Item {}

    record KeyGroup(Attributes given) implements Item {}

    record KeyGroups(Map<String, Attributes> groups) implements Item {}

    record Nodes(Map<String, String> nodes) implements Item {}

    record Numbers(Map<String, Double> numbers) implements Item {}

    record Rows(List<Attributes.TableRow> rows) implements Item {
        public Rows {
            rows = List.copyOf(rows);
        }
    }

    /** The value in use of a number or a size. */
    default OptionalDouble number() {
        if (this instanceof Scalar number) {
            return OptionalDouble.of(number.value());
        }
        return this instanceof WearingSize size ? OptionalDouble.of(size.sizes().inUse()) : OptionalDouble.empty();
    }

    /** An item with its place. */
    record PlacedItem(Item item, Place place) {

        /** The same, where it holds groups with copies of them. */
        PlacedItem copy(Problems problems) {
            if (item instanceof KeyGroup group) {
                return new PlacedItem(new KeyGroup(group.given().copy(problems)), place);
            }
            if (item instanceof KeyGroups groups) {
                Map<String, Attributes> copies = new LinkedHashMap<>();
                groups.groups().forEach((name, given) -> copies.put(name, given.copy(problems)));
                return new PlacedItem(new KeyGroups(Collections.unmodifiableMap(copies)), place);
            }
            return this;
        }
    }
}
