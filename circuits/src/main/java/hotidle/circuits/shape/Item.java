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

    record Amount(double value) implements Item {}

    record Word(String word) implements Item {}

    record Words(List<String> words) implements Item {
        public Words {
            words = List.copyOf(words);
        }
    }

    /** A size that wears, with the places of its values. */
    record Size(Attributes.Sizes sizes) implements Item {}

    record Group(Attributes given) implements Item {}

    record Groups(Map<String, Attributes> groups) implements Item {}

    record Nodes(Map<String, String> nodes) implements Item {}

    record Numbers(Map<String, Double> numbers) implements Item {}

    record Rows(List<Attributes.Row> rows) implements Item {
        public Rows {
            rows = List.copyOf(rows);
        }
    }

    /** The value in use of a number or a size. */
    default OptionalDouble number() {
        if (this instanceof Amount number) {
            return OptionalDouble.of(number.value());
        }
        return this instanceof Size size ? OptionalDouble.of(size.sizes().inUse()) : OptionalDouble.empty();
    }

    /** An item with its place. */
    record Placed(Item item, Place place) {

        /** The same, where it holds groups with copies of them. */
        Placed copy(Problems problems) {
            if (item instanceof Group group) {
                return new Placed(new Group(group.given().copy(problems)), place);
            }
            if (item instanceof Groups groups) {
                Map<String, Attributes> copies = new LinkedHashMap<>();
                groups.groups().forEach((name, given) -> copies.put(name, given.copy(problems)));
                return new Placed(new Groups(Collections.unmodifiableMap(copies)), place);
            }
            return this;
        }
    }
}
