package hotidle.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;

/** The questions of {@code new}, asked one by one on a terminal. */
final class AskedAnswers {

    private final CommandSpec spec;

    AskedAnswers(CommandSpec spec) {
        this.spec = spec;
    }

    /** What is answered, by question; an empty line, or the end of what is typed, answers nothing. */
    Map<String, String> ask(Set<String> questions, Map<String, OptionalDouble> now) {
        PrintWriter err = spec.commandLine().getErr();
        Map<String, String> answers = new LinkedHashMap<>();
        try {
            BufferedReader lines = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            for (String question : questions) {
                String help = spec.findOption("--" + question).description()[0];
                err.print(question + ", " + help + shown(question, now) + "? ");
                err.flush();
                String line = lines.readLine();
                if (line == null) {
                    break;
                }
                if (!line.isBlank()) {
                    answers.put(question, line.strip());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return answers;
    }

    private static String shown(String question, Map<String, OptionalDouble> now) {
        OptionalDouble value = now.getOrDefault(question, OptionalDouble.empty());
        if (value.isEmpty()) {
            return "";
        }
        double si = value.getAsDouble();
        String text =
                switch (question) {
                    case "displacement" -> String.format(java.util.Locale.ROOT, "%.1f cm3/rev", si * 1e6);
                    case "engine-torque" -> String.format(java.util.Locale.ROOT, "%.0f N.m", si);
                    case "set-pressure" ->
                        hotidle.answer.format.Quantity.PRESSURE.with(
                                hotidle.answer.format.Quantity.UnitSystem.SHOP, si);
                    case "bore-diameter" -> String.format(java.util.Locale.ROOT, "%.1f mm", si * 1e3);
                    default -> String.format(java.util.Locale.ROOT, "%.1f L/min", si * 6e4);
                };
        return " [ready: " + text + "]";
    }
}
