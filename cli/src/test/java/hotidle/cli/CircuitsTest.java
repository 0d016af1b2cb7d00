package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Circuits found by their name or their file. */
class CircuitsTest {

    @TempDir
    Path folder;

    private final StringWriter err = new StringWriter();

    private DescribedCircuit load(String name) {
        return Circuits.load(name, new PrintWriter(err));
    }

    private String refused(String name) {
        return assertThrows(WrongInputException.class, () -> load(name)).getMessage();
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void aReadyCircuitIsFoundByItsNameWithoutAWord() {
        assertEquals("training-rig", load("training-rig").name());
        assertEquals("", err.toString());
    }

    @Test
    void aFileIsFoundByItsPath() throws IOException {
        String text = Library.text("training-rig").orElseThrow().replace("circuit: training-rig", "circuit: mine");
        assertEquals("mine", load(file("rig.yaml", text).toString()).name());
    }

    @Test
    void whatIsNeitherIsRefusedWithAllReadyCircuits() {
        String wrong = refused("shuttle-six");
        assertTrue(wrong.startsWith("hotidle: there is no file shuttle-six, nor a ready circuit of that name"), wrong);
        Library.names().forEach(name -> assertTrue(wrong.contains(name), name));
    }

    @Test
    void aFolderIsNoCircuit() {
        assertTrue(refused(folder.toString()).endsWith(" is a folder; name a circuit file in it"));
    }

    @Test
    void everyFaultOfAFileIsToldAtOnceWithItsPlace() throws IOException {
        String text = Library.text("training-rig")
                .orElseThrow()
                .replaceFirst("kind: orifice", "kind: orifise")
                .replaceFirst("regions:", "regoins:");
        String wrong = refused(file("rig.yaml", text).toString());
        assertTrue(wrong.contains("orifise"), wrong);
        assertTrue(wrong.contains("regoins"), wrong);
        assertTrue(wrong.lines().filter(line -> line.contains("rig.yaml:")).count() >= 2, wrong);
    }

    @Test
    void aFileBesideItMayBeTheOneThatItStandsOn() throws IOException {
        file("own-base.yaml", Library.text("training-rig").orElseThrow());
        Path on = file("own.yaml", "circuit: own\nbased-on: own-base.yaml\nabout: stands on the one beside it\n");
        ReadInputs inputs = new ReadInputs();
        DescribedCircuit own = Circuits.load(on.toString(), Optional.empty(), new PrintWriter(err), inputs);
        assertEquals("own", own.name());
        assertFalse(own.unit().network().parts().isEmpty());
    }

    @Test
    void aSheetThatIsNotThereIsRefusedByItsOption() {
        String wrong = assertThrows(
                        WrongInputException.class,
                        () -> Circuits.load(
                                "training-rig", Optional.of(folder.resolve("none.csv")), new PrintWriter(err)))
                .getMessage();
        assertTrue(
                wrong.startsWith("hotidle: --sheet " + folder.resolve("none.csv") + ": there is no such file"), wrong);
    }

    @Test
    void bytesAreReadAsTheyAre() throws IOException {
        Path file = Files.write(folder.resolve("bytes"), new byte[] {0, (byte) 0xFF, 7});
        assertArrayEquals(new byte[] {0, (byte) 0xFF, 7}, Circuits.bytes(file, ""));
    }

    @Test
    void aBuildThatIsNoneIsRefusedWithThoseThereAre() {
        DescribedCircuit rig = load("crescent-four");
        String wrong = assertThrows(WrongInputException.class, () -> Circuits.units(rig, List.of("worm")))
                .getMessage();
        assertTrue(wrong.contains("worm") && wrong.contains("worn"), wrong);
        assertEquals(
                rig.builds().get(0).name(),
                Circuits.adjustable(rig, (String) null).unit().build());
    }
}
