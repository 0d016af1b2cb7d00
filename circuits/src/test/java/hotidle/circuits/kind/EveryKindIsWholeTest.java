package hotidle.circuits.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.Library;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a kind of part needs besides its declaration: its page of the reference, a sample, and rows of published values. */
class EveryKindIsWholeTest {

    /** Section of solver/VALIDATION.md in which the law of each kind stands against published values. */
    private static final Map<String, String> ROWS = Map.ofEntries(
            Map.entry("orifice", "Orifice"),
            Map.entry("lube-branch", "Orifice"),
            Map.entry("selector", "Orifice"),
            Map.entry("annular-gap", "Gap"),
            Map.entry("flat-gap", "Gap"),
            Map.entry("face-gap", "Gap"),
            Map.entry("passage", "Passage"),
            Map.entry("bushing", "Bushing"),
            Map.entry("pump-chamber", "Pump"),
            Map.entry("crescent-pump", "Pump"),
            Map.entry("vane-pump", "Pump"),
            Map.entry("relief-valve", "Relief valve"),
            Map.entry("check-valve", "Relief valve"),
            Map.entry("spool-valve", "Spool valve"),
            Map.entry("clutch", "Clutch"),
            Map.entry("band", "Clutch"),
            Map.entry("cooler", "Cooler"));

    /** Kinds of which no published value was found; they rest on laws of the others, or on a point that the user measures. */
    private static final Set<String> NO_ROWS = Set.of("sealing-ring", "filter", "pump-inlet", "solenoid", "converter");

    @Test
    void everyKindHasItsPageItsSampleAndItsRowsOrIsNamedAsHavingNone() throws IOException {
        String reference = Files.readString(Path.of("REFERENCE.md"));
        StringBuilder samples =
                new StringBuilder(Files.readString(Path.of("src/test/resources/hotidle/circuits/every-kind.yaml")));
        Library.names().forEach(name -> samples.append(Library.text(name).orElseThrow()));
        String sheet = Files.readString(Path.of("../solver/VALIDATION.md"));
        for (String word : Kinds.words()) {
            assertTrue(reference.contains("\n## " + word + "\n"), word);
            assertTrue(samples.indexOf("kind: " + word) > 0, word);
        }
        ROWS.values().forEach(section -> assertTrue(sheet.contains("\n## " + section + "\n"), section));
        Set<String> known = new HashSet<>(ROWS.keySet());
        known.addAll(NO_ROWS);
        assertEquals(Set.copyOf(Kinds.words()), known);
    }
}
