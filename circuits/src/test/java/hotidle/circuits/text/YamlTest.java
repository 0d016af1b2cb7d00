package hotidle.circuits.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class YamlTest {

    /** A bus as a picture sign, two halves in UTF-16, before, across and after each place where a reader may fill its buffer. */
    @Test
    void aPictureSignAnywhereInAFileIsReadAsItIs() {
        String bus = "\ud83d\ude8c";
        for (int before = 1000; before < 1050; before++) {
            String text = "about: " + "x".repeat(before) + bus + " end\n";
            Problems problems = new Problems("bus.yaml", text);
            Value.Entries read = (Value.Entries) Yaml.read(text, problems, 0).orElseThrow();
            assertTrue(problems.inOrder().isEmpty(), () -> problems.inOrder().toString());
            Value.Text about = (Value.Text) read.entry("about").orElseThrow().value();
            assertEquals("x".repeat(before) + bus + " end", about.text());
        }
    }

    /** Half a pair is no character: it is told, wherever it stands, at the end of the file too. */
    @Test
    void halfAPictureSignIsTold() {
        for (int before = 1000; before < 1050; before++) {
            String text = "about: " + "x".repeat(before) + "\ud83d";
            Problems problems = new Problems("bus.yaml", text);
            Yaml.read(text, problems, 0);
            assertEquals(1, problems.inOrder().size());
        }
    }
}
