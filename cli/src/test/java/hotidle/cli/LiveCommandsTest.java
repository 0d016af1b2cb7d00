package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Quantity;
import hotidle.answer.live.LiveFileRecord;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.cli.live.OtherCommands;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** What a live page has made by other commands is what these make. */
class LiveCommandsTest {

    private static final DescribedCircuit RIG = ReadyCircuits.read("training-rig");

    private static final LiveCommands COMMANDS = new LiveCommands(RIG, inputs(), program());

    private static ReadInputs inputs() {
        ReadInputs inputs = new ReadInputs();
        inputs.add("training-rig.yaml", Library.text("training-rig").orElseThrow());
        return inputs;
    }

    private static CommandSpec program() {
        CommandLine program = new CommandLine(new HotIdle());
        program.parseArgs();
        return program.getCommandSpec();
    }

    private static OtherCommands.AskedReport asked(Optional<LiveFileRecord> changed, String build) {
        return new OtherCommands.AskedReport(
                changed, build, Quantity.UnitSystem.SHOP, List.of("without its faults"), Optional.empty(), "");
    }

    /** The lines of the sections, which hold all numbers; what stands above and below tells of command and files. */
    private static List<String> numbers(String html) {
        return html.lines().filter(line -> line.contains("<td")).toList();
    }

    @Test
    void aReportOfTheBuildAsWrittenHasTheNumbersOfTheCommand(@TempDir Path folder) throws Exception {
        String html = COMMANDS.report(asked(Optional.empty(), "one-hole"));
        Path file = folder.resolve("rig.html");
        Run.of("report", "training-rig", "--build", "one-hole", "--units", "shop", "--out", file.toString());
        List<String> expected = numbers(Files.readString(file)).stream()
                .filter(line -> !line.contains("hotidle report"))
                .toList();
        assertTrue(expected.size() > 20, expected.size() + " lines");
        List<String> made = numbers(html);
        expected.forEach(line -> assertTrue(made.contains(line), line));
        assertTrue(html.contains("without its faults"));
    }

    @Test
    void aReportOfAFileThatCannotBeReadIsRefusedWithTheReasonAndNoStackTrace() {
        LiveFileRecord broken = new LiveFileRecord("rig-changed.yaml", "circuit: rig-changed\nbased-on: \"nosuch\"\n");
        String why = assertThrows(
                        IllegalArgumentException.class, () -> COMMANDS.report(asked(Optional.of(broken), "changed")))
                .getMessage();
        assertTrue(why.startsWith("rig-changed.yaml:2:"), why);
    }

    @Test
    void aHubIsSearchedOverTheSpeedsOfMargins() {
        assertEquals(OptionValues.searched(null, RIG.unit(), MarginsCommand.STEP), COMMANDS.searched(RIG.unit()));
    }
}
