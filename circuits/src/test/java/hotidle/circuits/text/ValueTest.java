package hotidle.circuits.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The tree of a file: what stands where, what a build puts in its place, and which numbers are assumed. */
class ValueTest {

    private static Value.Entries tree(String text) {
        Problems problems = new Problems("a.yaml", text);
        Value read = Yaml.read(text, problems).orElseThrow();
        assertEquals(List.of(), problems.inOrder());
        return (Value.Entries) read;
    }

    private static Value at(Value.Entries tree, String key) {
        return tree.entry(key).orElseThrow().value();
    }

    @Test
    void aKeyIsExchangedWhereItStandsAndANewOneComesLast() {
        Value.Entries tree = tree("a: 1\nb: 2\n");
        Value three = new Value.Text("3", new Place(9, 9, 1));
        assertEquals(
                List.of("a", "b"),
                tree.with(new Value.Entry("a", Place.START, three)).keys());
        assertEquals(three, at(tree.with(new Value.Entry("a", Place.START, three)), "a"));
        assertEquals(
                List.of("a", "b", "c"),
                tree.with(new Value.Entry("c", Place.START, three)).keys());
        assertEquals(Optional.empty(), tree.entry("c"), "the tree itself stays as it was");
    }

    @Test
    void whatABuildChoseStandsWhereTheBuildSaysIt() {
        Value.Chosen chosen = new Value.Chosen(
                new Value.Text("1 mm", new Place(1, 4, 4)), new Value.Text("2 mm", new Place(7, 3, 4)));
        assertEquals(new Place(7, 3, 4), chosen.place());
    }

    @Test
    void everyValueHasItsPlaceAndWidth() {
        Value.Entries tree = tree("bore: 14 mm\nlist: [one, 'two']\ngroup:\n  gap: \"5 um\"\nempty:\n");
        assertEquals(new Place(1, 7, 5), at(tree, "bore").place());
        assertEquals(new Place(1, 1, 4), tree.entry("bore").orElseThrow().keyPlace());
        Value.Items list = (Value.Items) at(tree, "list");
        assertEquals(new Place(2, 7, 1), list.place(), "a list is where it begins");
        assertEquals(new Place(2, 8, 3), list.items().get(0).place());
        assertEquals(new Place(2, 13, 5), list.items().get(1).place(), "with its quotes");
        Value.Entries group = (Value.Entries) at(tree, "group");
        assertEquals(new Place(4, 3, 1), group.place());
        assertEquals(new Place(4, 8, 6), at(group, "gap").place());
        assertEquals("", ((Value.Text) at(tree, "empty")).text());
    }

    @Test
    void aFurtherFileKeepsItsNumberInEveryPlace() {
        Problems problems = new Problems("a.yaml", "x: 1");
        int base = problems.source("base.yaml", "b: [c]");
        Value.Entries read = (Value.Entries) Yaml.read("b: [c]", problems, base).orElseThrow();
        assertEquals(new Place(1, 1, 1, base), read.entry("b").orElseThrow().keyPlace());
        assertEquals(base, ((Value.Items) at(read, "b")).items().get(0).place().source());
    }

    @Test
    void aNumberCutAtItsDecimalCommaIsOneTextAgain() {
        Value.Entries tree = tree("list: [3,5 mm, 7]\ngroup: {bore: 14,03 mm, valve: 14 mm}\n");
        List<Value> items = ((Value.Items) at(tree, "list")).items();
        assertEquals("3,5 mm", ((Value.Text) items.get(0)).text());
        assertEquals(new Place(1, 8, 6), items.get(0).place());
        assertEquals(2, items.size());
        Value.Entries group = (Value.Entries) at(tree, "group");
        assertEquals("14,03 mm", ((Value.Text) at(group, "bore")).text());
        assertEquals(new Place(2, 15, 8), at(group, "bore").place());
        assertEquals(List.of("bore", "valve"), group.keys());
        Value.Entries apart = (Value.Entries) at(tree("g: {a: 3,4: x}"), "g");
        assertEquals(List.of("a", "4"), apart.keys(), "what has a value of its own is a key");
    }

    @Test
    void aMappingOfTooManyKeysIsToldAsAListIs() {
        StringBuilder text = new StringBuilder("g: {");
        for (int i = 0; i < Yaml.MOST; i++) {
            text.append("k").append(i).append(": 1, ");
        }
        tree(text + "}");
        Problems problems = new Problems("a.yaml", "");
        Yaml.read(text + "more: 1}", problems);
        assertEquals(
                "more than 2000 entries stand here", problems.inOrder().get(0).message());
    }

    @Test
    void twoNumbersWithABlankBetweenStayTwo() {
        assertEquals(
                2, ((Value.Items) at(tree("list: [3, 5 mm]"), "list")).items().size());
        assertEquals(2, ((Value.Items) at(tree("list: [a,5]"), "list")).items().size());
        assertEquals(2, ((Value.Items) at(tree("list: [5,a]"), "list")).items().size());
        assertEquals(
                2,
                ((Value.Items) at(tree("list: [3,\n  5 mm]"), "list")).items().size());
    }

    @Test
    void groupsThatStandTwiceAreToldAndReadAsOne() {
        String text = "parts:\n  a: 1\nparts:\n  a: 2\n  b: 3\nx: 1\nx: 2\n";
        Problems problems = new Problems("a.yaml", text);
        Value.Entries read = (Value.Entries) Yaml.read(text, problems).orElseThrow();
        assertEquals(
                List.of("key 'parts' stands twice", "key 'x' stands twice"),
                problems.inOrder().stream().map(Problem::message).toList());
        assertEquals("it stands first at a.yaml:1:1", problems.inOrder().get(0).why());
        assertEquals(
                "put all of it under one of them", problems.inOrder().get(0).mend());
        assertEquals("leave one of them out", problems.inOrder().get(1).mend());
        Value.Entries parts = (Value.Entries) at(read, "parts");
        assertEquals(List.of("a", "b"), parts.keys());
        assertEquals("1", ((Value.Text) at(parts, "a")).text(), "the first one counts");
        assertEquals("1", ((Value.Text) at(read, "x")).text());
    }

    @Test
    void aListIsNoKeyAndNeitherIsNothing() {
        for (String text : List.of("[a, b]: 1", "? " + System.lineSeparator() + ": 1")) {
            Problems problems = new Problems("a.yaml", text);
            Yaml.read(text, problems);
            assertEquals("a key must be a word", problems.inOrder().get(0).message(), text);
        }
    }

    @Test
    void anEmptyFileIsEmptyText() {
        Value nothing = Yaml.read("", new Problems("a.yaml", "")).orElseThrow();
        assertEquals(new Value.Text("", Place.START), nothing);
    }

    @Test
    void assumedNumbersAreFoundByTheirMarkInTheOrderOfTheFile() {
        Value.Entries tree = tree("""
                b: ~3 mm
                a:
                  deep: {new: ~1 mm, limit: 2 mm}
                  shut: {new: 1 mm, limit: ~2 mm}
                  plain: 4 mm
                c: [1, ~2]
                d: [[1], [~2]]
                e: [1, 2]
                """);
        assertEquals(List.of("b", "a.deep", "c", "d"), AssumedMark.paths(tree));
        Value.Entry measured = new Value.Entry(
                "b", Place.START, new Value.Chosen(at(tree, "b"), new Value.Text("3.1 mm", Place.START)));
        assertEquals(List.of("a.deep", "c", "d"), AssumedMark.paths(tree.with(measured)), "measured since");
        Value.Entry guessed =
                new Value.Entry("e", Place.START, new Value.Chosen(at(tree, "e"), new Value.Text("~7", Place.START)));
        assertEquals(List.of("b", "a.deep", "c", "d", "e"), AssumedMark.paths(tree.with(guessed)), "a guess since");
    }

    @Test
    void theMarkStandsInFrontAndNowhereElse() {
        assertTrue(AssumedMark.on("~3 mm"));
        assertFalse(AssumedMark.on("3 mm ~"));
        assertEquals("3 mm", AssumedMark.without("~ 3 mm"));
        assertEquals(" 3 mm", AssumedMark.without(" 3 mm"));
    }
}
