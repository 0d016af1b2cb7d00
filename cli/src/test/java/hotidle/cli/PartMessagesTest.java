package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.single.PartKeys;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a builder reads when a part on its own is asked for wrongly, its help, and its charts. */
class PartMessagesTest {

    private static final String GAP = "annular-gap bore=14.06mm valve=14mm length=8mm ";
    private static final String HUB = "bushing bore=50.07mm hub=50mm length=17mm load=1500N speed=2000rpm ";
    private static final String PILOT = "solenoid feed-diameter=0.8mm exhaust-diameter=1.2mm command=60psi ";

    @TempDir
    Path folder;

    private static void assertOneMessage(String command, String... says) {
        Run run = PartCommandTest.run(command.strip());
        assertEquals(HotIdle.WRONG_INPUT, run.code(), command + run.err());
        assertEquals("", run.out(), command);
        for (String word : says) {
            assertTrue(run.err().contains(word), word + " is not in: " + run.err());
        }
        assertEquals(1, run.err().split("hotidle part|hotidle: ", -1).length - 1 - quoted(run), run.err());
        assertFalse(run.err().contains("\tat ") || run.err().contains("Exception"), run.err());
    }

    /** Messages that name the command once more, to say where help is. */
    private static int quoted(Run run) {
        return run.err().split("'hotidle part", -1).length - 1;
    }

    @Test
    void everyFaultIsOneClearMessage() {
        assertOneMessage("annular-gap bore=14.06mm valve=14mm --drop 150psi", "no length", "add length=");
        assertOneMessage(GAP.replace("8mm", "-8mm") + "--drop 150psi", "length -8mm", "0.01 mm and 1 m");
        assertOneMessage(GAP.replace("8mm", "8psi") + "--drop 150psi", "'psi' is the unit of a pressure");
        assertOneMessage(GAP.replace("8mm", "8") + "--drop 150psi", "without its unit", "8 mm");
        assertOneMessage(GAP.replace("valve", "valv") + "--drop 150psi", "unknown key 'valv'", "valve");
        assertOneMessage("anular-gap --drop 150psi", "no kind of part", "annular-gap");
        assertOneMessage(GAP + "from=line --drop 150psi", "does not take the key 'from'", "--at from=150psi");
        assertOneMessage(GAP.replace("valve=14mm", "valve=14.1mm") + "--drop 150psi", "14.1000 mm", "narrower");
    }

    @Test
    void everyWrongOptionIsOneClearMessage() {
        assertOneMessage(GAP, "no pressure is given", "--drop 150psi");
        assertOneMessage(GAP + "--drop 150", "without its unit");
        assertOneMessage(GAP + "--drop 99999999psi", "out of range");
        assertOneMessage(GAP + "--drop 1psi --at from=2psi", "leave out one");
        assertOneMessage(GAP + "--drop -90psi --at to=1psi", "below vacuum");
        assertOneMessage(GAP + "--at in=2psi", "no port 'in'", "from, to");
        assertOneMessage(GAP + "--at from", "no name with its value");
        assertOneMessage(GAP + "--at to=1psi --at to=2psi", "twice");
        assertOneMessage(GAP + "--drop 1psi --oil shuttle", "shuttle-atf");
        assertOneMessage(GAP + "--drop 1psi --oil shuttle-atf --viscosity 7mPa.s", "either --oil");
        assertOneMessage(GAP + "--drop 1psi --viscosity 7mPa.s", "go together");
        assertOneMessage(GAP + "--drop 1psi --viscosity 0.1mPa.s --density 900kg/m3", "0.3 mm²/s");
        assertOneMessage(GAP + "--drop 1psi --temperature 900degC", "250 degC");
        assertOneMessage(GAP + "--drop 1psi --speed 900rpm", "--speed changes nothing");
        assertOneMessage(GAP + "--drop 1psi --hold position=1mm", "nothing that --hold");
        assertOneMessage(HUB + "--hold position=1mm", "no position", "eccentricity");
        assertOneMessage(HUB + "--hold eccentricity=2", "beyond its stops", "0.995");
        assertOneMessage(PILOT + "--drop 60psi", "supply, pilot, exhaust");
        assertOneMessage(PILOT + "--at supply=60psi --hold opening=0.5", "--at pilot=");
        assertOneMessage(PartCommandTest.command("pump-chamber").replace("--at to=", "--drop "), "--at to=150psi");
    }

    @Test
    void everyWrongChartIsOneClearMessageAndLeavesNoFile() throws Exception {
        String drawn = GAP + "--drop 1psi --plot " + folder.resolve("a.png") + " --vary ";
        assertOneMessage(GAP + "--drop 1psi --vary length=1..3mm", "go together");
        assertOneMessage(drawn + "length=3mm", "two ends");
        assertOneMessage(drawn + "length=3..1mm", "does not rise");
        assertOneMessage(drawn + "length=1..3psi", "'psi' is the unit of a pressure");
        assertOneMessage(drawn + "lengt=1..3mm", "no number 'lengt'", "length");
        assertOneMessage(drawn + "bore=13..15mm", "narrower");
        assertOneMessage(drawn.replace(".png", ".gif") + "length=1..3mm", ".png, .svg or .pdf");
        assertOneMessage(
                "pump-inlet --at node=1psi --plot " + folder.resolve("a.png") + " --vary temperature=1..9degC",
                "nothing to draw");
        try (var files = Files.list(folder)) {
            assertEquals(0, files.count());
        }
    }

    @Test
    void helpListsTheKindsAndTheKeysOfEach() {
        Run kinds = Run.of("part", "--help");
        assertEquals(HotIdle.DONE, kinds.code());
        for (Kind kind : Kinds.ALL) {
            assertTrue(kinds.out().contains("  " + kind.word() + " "), kind.word());
            Run help = Run.of("part", kind.word(), "--help");
            assertEquals(HotIdle.DONE, help.code());
            assertTrue(
                    Run.of("part", kind.word(), "--help", "--full")
                            .out()
                            .contains(kind.physics().source()),
                    kind.word());
            for (Key key : PartKeys.of(kind)) {
                assertTrue(help.out().contains("  " + key.name() + "=  " + key.meaning()), kind.word() + help.out());
            }
        }
        String hub = Run.of("part", "bushing", "--help").out();
        for (String words :
                List.of("load=", "speed=", "in N, lbf, kN", "allowed: 1 mm to 300 mm", "measure: micrometer")) {
            assertTrue(hub.contains(words), words);
        }
    }

    @Test
    void warningsAreSaidOutsideTheValidRange() {
        String wide = "annular-gap bore=15mm valve=14mm length=1mm ";
        assertTrue(PartCommandTest.run(wide + "--drop 150psi").out().contains("holds for laminar flow"));
        String cold = "annular-gap bore=14.001mm valve=14mm length=8mm ";
        assertTrue(PartCommandTest.run(cold + "--drop 1psi --temperature -40degC")
                .out()
                .contains("the pieces would bind"));
        String heavy = HUB.replace("1500N", "30000N").replace("2000rpm", "400rpm");
        String words = PartCommandTest.run(heavy.strip()).out();
        assertTrue(words.contains("metal contact: ") && words.contains("unit load is above"), words);
        assertTrue(PartCommandTest.run("pump-inlet --at node=-0.9bar").out().contains("starved"));
        assertTrue(PartCommandTest.run(PILOT + "--at supply=30psi").out().contains("at its upper stop"));
        assertTrue(
                PartCommandTest.run("orifice diameter=40mm --drop 1psi").out().contains("usual is"));
        String fast =
                "bushing bore=50.5mm hub=50mm length=17mm load=1N speed=7000rpm --viscosity 1mPa.s --density 830kg/m3";
        assertTrue(PartCommandTest.run(fast).out().contains("vortices"));
    }

    @Test
    void whatIsLeftToTheProgramIsSaid() {
        String text = PartCommandTest.run(GAP + "--drop 1psi --full").out();
        assertTrue(text.contains("(oil and temperature by default)") && text.contains("eccentricity 1: "), text);
        String asked = PartCommandTest.run(GAP + "--drop 1psi --oil shuttle-atf --temperature 100degC --full")
                .out();
        assertFalse(asked.contains("by default"), asked);
    }

    @Test
    void chartsGoOverAnyNumber() throws Exception {
        for (String what : List.of(
                GAP + "--drop 150psi --vary clearance=0.01..0.15mm",
                GAP + "--drop 150psi --vary eccentricity=0..1",
                "annular-gap bore=14.06mm valve=14mm --drop 150psi --vary length=1..12mm",
                GAP + "--vary drop=1..300psi",
                GAP + "--drop 150psi --vary temperature=20..140degC",
                "orifice diameter=2mm --drop 1psi --vary count=1..8",
                HUB + "--vary speed=500..3000rpm",
                PartCommandTest.command("spool-valve") + " --vary openings.bypass.edge=0.5..2mm",
                PartCommandTest.command("converter") + " --vary losses.off.drop=0.1..1bar")) {
            Path file = folder.resolve("chart.svg");
            Run run = PartCommandTest.run(what, "--plot", file.toString());
            assertEquals(HotIdle.DONE, run.code(), what + run.err());
            String name = what.substring(what.indexOf("--vary ") + 7, what.lastIndexOf('='));
            String svg = Files.readString(file);
            assertTrue(svg.contains(" at " + name), what);
            assertTrue(svg.contains(what.startsWith("bushing") ? "least film [thou]" : "flow [gpm]"), what);
        }
    }

    @Test
    void aReversedDropReversesTheFlow() throws Exception {
        JsonNode there = PartCommandTest.json(GAP + "--drop 150psi");
        JsonNode back = PartCommandTest.json(GAP + "--drop -150psi");
        assertEquals(
                -there.get("flow_m3_s").doubleValue(), back.get("flow_m3_s").doubleValue(), 1e-15);
        assertEquals(there.get("reynolds").doubleValue(), back.get("reynolds").doubleValue(), 1e-9);
    }
}
