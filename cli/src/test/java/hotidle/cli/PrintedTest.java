package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.Answer;
import hotidle.answer.format.TextTable;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class PrintedTest {

    /** An answer of one line pressure; not all of it is known. */
    private record Line(boolean complete) implements Answer {
        @Override
        public String screen() {
            return "line 99 psi\n";
        }

        @Override
        public String full() {
            return "line 99 psi of the 150 psi commanded\n";
        }

        @Override
        public TextTable table() {
            return new TextTable(List.of("line psi")).add(List.of("99"));
        }

        @Override
        public Object json() {
            return Map.of("line_psi", 99);
        }
    }

    private record Shown(int code, String text) {}

    private static Shown print(boolean complete, String... options) {
        OutputOptions shared = new OutputOptions();
        CommandLine command = new CommandLine(CommandLine.Model.CommandSpec.create()
                        .addMixin("shared", CommandLine.Model.CommandSpec.forAnnotatedObject(shared)))
                .setCaseInsensitiveEnumValuesAllowed(true);
        StringWriter out = new StringWriter();
        command.setOut(new PrintWriter(out));
        command.parseArgs(options);
        int code = Printed.print(command.getCommandSpec(), shared, new Line(complete));
        command.getOut().flush();
        return new Shown(code, out.toString());
    }

    @Test
    void anAnswerOfWhichSomethingIsNotKnownEndsWithOneInEveryFormat() {
        assertEquals(new Shown(1, "line 99 psi\n"), print(false));
        assertEquals(new Shown(1, "line psi\n99\n"), print(false, "--format", "csv"));
        assertEquals(1, print(false, "--format", "json").code());
    }

    @Test
    void theWholeTextIsPrintedOnlyWhereItIsAskedForAndNeverInPlaceOfNumbers() {
        assertEquals(
                "line 99 psi of the 150 psi commanded\n", print(true, "--full").text());
        assertEquals("line psi\n99\n", print(true, "--full", "--format", "csv").text());
    }

    @Test
    void aWholeAnswerEndsWithNought() {
        assertEquals(0, print(true).code());
        assertTrue(print(true, "--format", "json").text().contains("\"line_psi\" : 99"));
    }
}
