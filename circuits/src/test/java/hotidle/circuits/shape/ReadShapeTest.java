package hotidle.circuits.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.circuits.text.Yaml;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A made kind of part with a key of each sort, read from a few words; what is wrong in it is told and what is right is kept. */
class ReadShapeTest {

    private static final Shape LAND = new Shape(
            "land",
            List.of(
                    Key.quantity("length", Dimension.LENGTH, "how long it seals")
                            .allowed("0.1 mm", "50 mm"),
                    Key.node("vent", "where it drains").optional()));

    private static final Shape PART = new Shape(
            "made-part",
            List.of(
                    Key.quantity("force", Dimension.FORCE, "what it holds")
                            .usual("1 N", "90 N")
                            .allowed("0 N", "900 N"),
                    Key.size("bore", "its diameter").allowed("1 mm", "300 mm").optional(),
                    Key.node("from", "where oil enters").optional(),
                    Key.of("ports", new Type.Ports(), "what it joins").optional(),
                    Key.of("lands", new Type.NamedGroups(LAND), "its lands").optional(),
                    Key.of("land", new Type.OneGroup(LAND), "its one land").optional(),
                    Key.of("ranges", new Type.NameList(Names.RANGE), "when it is fed")
                            .optional(),
                    Key.of("asked", new Type.PerName(Names.SOLENOID, Dimension.PRESSURE), "what is asked")
                            .optional(),
                    Key.of("table", new Type.Table(Dimension.TORQUE, Dimension.PRESSURE), "torque and pressure")
                            .optional(),
                    Key.of("stops", new Type.RisingPair(Dimension.LENGTH), "its stops")
                            .optional(),
                    Key.of("oil", new Type.ViscosityLine(), "viscosity").optional(),
                    Key.of("parts", new Type.PartNames(), "others").optional(),
                    Key.of("sources", new Type.Notes(), "where numbers come from")
                            .optional()));

    private static final Scope SCOPE = new Scope(Map.of(
            Names.NODE, List.of("line", "sump"),
            Names.RANGE, List.of("first", "second"),
            Names.SOLENOID, List.of("pilot")));

    private final ReadingLog log = new ReadingLog();
    private Problems problems;

    private Attributes read(String... lines) {
        String text = String.join("\n", lines) + "\n";
        problems = new Problems("made.yaml", text);
        Value value = Yaml.read(text, problems).orElseThrow();
        return new ShapeReader(SCOPE, problems, log).read(PART, "made", new Value.Entry("made", Place.START, value));
    }

    private String told() {
        return problems.inOrder().stream().map(Problem::text).collect(Collectors.joining("\n"));
    }

    private void told(String... words) {
        for (String word : words) {
            assertTrue(told().contains(word), "'" + word + "' is not in\n" + told());
        }
    }

    @Test
    void whatIsRightIsKept() {
        Attributes part = read(
                "force: 40 N",
                "from: line",
                "ports: {in: line, out: sump}",
                "lands: {first: {length: 4 mm, vent: sump}, second: {length: 6 mm}}",
                "ranges: [first, second]",
                "asked: {pilot: 2 bar}",
                "table: [[0 N.m, 5 bar], [300 N.m, 10 bar]]",
                "stops: [0 mm, 4 mm]",
                "oil: [35 cSt at 40 degC, 7 cSt at 100 degC]",
                "parts: {one: {}, other: {}}",
                "sources: [a drawing, a test]");
        assertEquals("", told());
        assertFalse(part.broken());
        assertTrue(part.nodesKnown());
        assertEquals(40, part.number("force"));
        assertEquals("line", part.word("from"));
        assertEquals(Map.of("in", "line", "out", "sump"), part.nodes("ports"));
        assertEquals(6e-3, part.groups("lands").get("second").number("length"), 1e-15);
        assertEquals(List.of("first", "second"), part.words("ranges"));
        assertEquals(2e5, part.numbers("asked").get("pilot"), 1e-6);
        assertEquals(
                List.of(0.0, 300.0),
                part.rows("table").stream().map(Attributes.TableRow::x).toList());
        assertEquals(4e-3, part.rows("stops").get(1).x(), 1e-15);
        assertEquals(2, part.rows("oil").size());
        assertEquals(List.of("one", "other"), part.words("parts"));
        assertEquals(List.of("a drawing", "a test"), part.words("sources"));
        assertTrue(part.stands("force") && !part.stands("bore") && !part.has("bore"));
    }

    @Test
    void whatIsMissingIsToldWithItsUsualRange() {
        Attributes part = read("from: line");
        told("made-part 'made' has no force", "usually 1 N to 90 N");
        assertTrue(part.broken());
        assertTrue(part.nodesKnown(), "a force names no node");
    }

    /** Of what names an unknown node it is not known what it joins. */
    @Test
    void whereANodeIsUnknownSoIsWhatItJoins() {
        assertFalse(read("force: 1 N", "from: lien").nodesKnown());
        told("from 'lien', which is not the name of a node", "line");
        assertFalse(read("force: 1 N", "ports: {in: nowhere}").nodesKnown());
        assertFalse(read("force: 1 N", "lands: 5").nodesKnown());
        told("needs names behind lands", "write {name: {length: ...}}");
        Attributes inner = read("force: 1 N", "lands: {first: {length: 4 mm, vent: nowhere}}");
        assertTrue(inner.broken());
        assertFalse(inner.nodesKnown());
        assertTrue(read("force: 1 N", "lands: {first: {length: 400 mm}}").nodesKnown());
        assertTrue(read("force: many", "ports: {in: line}").nodesKnown());
    }

    @Test
    void aGroupWithAFaultBreaksWhatHoldsIt() {
        assertTrue(read("force: 1 N", "land: {length: 400 mm}").broken());
        told("400 mm");
        assertTrue(
                read("force: 1 N", "lands: {first: {length: 4 mm}, second: {}}").broken());
        told("land 'second' of made-part 'made' has no length");
        assertTrue(read("force: 1 N", "land: [1, 2]").broken());
        told("needs keys of its own", "its keys are length, vent");
    }

    @Test
    void listsAndTablesSayWhatTheyLack() {
        assertTrue(read("force: 1 N", "ranges: [first, sixth]").broken());
        told("'sixth', which is not the name of a range");
        assertTrue(read("force: 1 N", "asked: {pilots: 2 bar}").broken());
        told("'pilots', which is not the name of a solenoid");
        assertTrue(read("force: 1 N", "asked: {pilot: 2 mm}").broken());
        assertTrue(read("force: 1 N", "table: []").broken());
        told("has no rows in table");
        assertTrue(read("force: 1 N", "table: [[0 N.m, 5 bar], [0 N.m, 6 bar]]").broken());
        told("has rows in table that do not rise");
        assertTrue(read("force: 1 N", "table: [[0 N.m]]").broken());
        told("has a row that is no pair in table");
        assertTrue(read("force: 1 N", "stops: [4 mm, 1 mm]").broken());
        told("has stops that fall");
        assertFalse(read("force: 1 N", "stops: [4 mm, 4 mm]").broken(), "a stop may be where it starts");
        assertTrue(read(
                        "force: 1 N",
                        "oil: [1 cSt at 1 degC, 2 cSt at 2 degC, 3 cSt at 3 degC, 4 cSt at 4 degC, 5 cSt at 5 degC]")
                .broken());
        told("has 5 viscosities");
        assertFalse(
                read("force: 1 N", "oil: [40 cSt at 1 degC, 30 cSt at 20 degC, 20 cSt at 30 degC, 10 cSt at 40 degC]")
                        .broken());
        assertTrue(read("force: 1 N", "parts: [one]").broken());
        told("needs names behind parts", "write {name: ...}");
        assertTrue(read("force: 1 N", "ports: [line]").broken());
        assertTrue(read("force: 1 N", "sources: [{a: b}]").broken());
    }

    /** Of a mapping the names are kept, each of which has a text. */
    @Test
    void notesMayBeAMappingOrNothing() {
        assertEquals(
                List.of("bore"),
                read("force: 1 N", "sources: {bore: from a test}").words("sources"));
        assertFalse(read("force: 1 N", "sources:").broken());
        assertEquals("", told());
    }

    /** What a build or a study changes a size to is checked as if it had been read. */
    @Test
    void numbersAreFoundByTheirPathAndChangedInPlace() {
        Attributes part = read("force: 40 N", "bore: 12 mm", "land: {length: 3 mm}", "lands: {first: {length: 4 mm}}");
        List<NumberPath> paths = NumberPath.of(PART, part);
        assertEquals(
                List.of("force", "bore", "lands.first.length", "land.length"),
                paths.stream().map(NumberPath::name).toList());
        assertEquals(
                List.of(Dimension.FORCE, Dimension.LENGTH, Dimension.LENGTH, Dimension.LENGTH),
                paths.stream().map(NumberPath::dimension).toList());
        assertEquals(
                List.of(40.0, 0.012, 0.004, 0.003),
                paths.stream().map(path -> path.value(part)).toList());
        paths.get(2).change(5e-3, part, problems);
        paths.get(3).change(2e-3, part, problems);
        paths.get(0).change(-0.0, part, problems);
        assertEquals(5e-3, part.groups("lands").get("first").number("length"));
        assertEquals(2e-3, part.group("land").orElseThrow().number("length"));
        assertEquals(Double.doubleToLongBits(0.0), Double.doubleToLongBits(part.number("force")), "never -0");
        assertEquals("", told());
        Attributes copy = part.copy(problems);
        paths.get(2).change(1, copy, problems);
        told("1 m");
        assertTrue(copy.broken());
        assertFalse(copy.groups("lands").get("first").has("length"), "taken away");
        assertEquals(5e-3, part.groups("lands").get("first").number("length"), "what it was copied from stays");
    }

    /** A size that is written keeps what it was new; one that was not is new as well. */
    @Test
    void aChangedSizeKeepsWhatItWasNew() {
        Attributes part = read("force: 40 N", "bore: {new: 12 mm, limit: 12.1 mm}");
        NumberPath bore = NumberPath.of(PART, part).get(1);
        bore.change(12.05e-3, part, problems);
        Attributes.Sizes sizes = part.sizes("bore").orElseThrow();
        assertEquals(12.05e-3, sizes.inUse());
        assertEquals(12e-3, sizes.fresh(), 1e-15);
        assertEquals(12.1e-3, sizes.limit().orElseThrow(), 1e-15);
        assertTrue(sizes.changed());
        assertEquals("", told());
    }
}
