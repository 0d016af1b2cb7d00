package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.NewPhrase;
import hotidle.circuits.create.ReadyUnit;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;

/**
 * The questions of {@code new}, asked one by one on a terminal. Each answer is put to the ready unit at once, and every one that can be
 * taken is kept in a file.
 *
 * @param ready    the circuit that the unit is like
 * @param units    in which numbers are shown
 * @param kept     file of answers
 * @param terminal whether a person types, who can be asked again
 * @param spec     of the command, whose options the questions are
 */
record AskedAnswers(ReadyUnit ready, Quantity.UnitSystem units, Path kept, boolean terminal, CommandSpec spec) {

    /** So often a person is asked one question (chosen). */
    private static final int MOST_TRIES = 5;

    /**
     * Asks what is not answered yet; an empty line keeps what stands in brackets.
     *
     * @param given answers so far, by question
     * @return all answers
     * @throws WrongInputException where one cannot be taken and nobody can be asked again, or where the answers end before the
     *     questions do
     */
    Map<String, String> ask(Map<String, String> given, BufferedReader lines) {
        Map<String, String> answers = new LinkedHashMap<>(given);
        List<String> questions = NewQuestions.ALL.stream()
                .filter(question -> !given.containsKey(question))
                .filter(question -> ready.cannot(question).isEmpty())
                .toList();
        err().print(Wrap.lines(NewPhrase.asks(questions.size(), ready.name(), kept), "", ""));
        NewQuestions.ALL.forEach(question -> ready.cannot(question)
                .ifPresent(why -> err().print(Wrap.lines(NewPhrase.notAsked(question, why), "", "  "))));
        List<String> refused = new ArrayList<>();
        try {
            for (int i = 0; i < questions.size(); i++) {
                refused.addAll(one(questions, i, answers, refused, lines));
                err().flush();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (!refused.isEmpty()) {
            throw new WrongInputException(all(refused) + stopped(answers));
        }
        return answers;
    }

    /** Answers that came by a pipe and cannot be taken, under one heading where there are several. */
    private static String all(List<String> refused) {
        String each = String.join("\n", refused);
        return refused.size() == 1
                ? each
                : NewPhrase.refused(refused.size()) + "\n" + each.replaceAll("(?m)^hotidle: ", "");
    }

    /**
     * Asks one question.
     *
     * @param refused answers before it that could not be taken
     * @return what is wrong with its answer, where nobody can be asked again
     */
    private List<String> one(
            List<String> questions, int at, Map<String, String> answers, List<String> refused, BufferedReader lines)
            throws IOException {
        String question = questions.get(at);
        if (question.equals("ranges")) {
            err().println(NewPhrase.ranges(ready.name(), ready.applied()));
        }
        for (int tries = 1; ; tries++) {
            err().print(NewPhrase.question(
                    at + 1, questions.size(), question, about(question), shown(question, answers)));
            err().flush();
            String line = lines.readLine();
            if (!terminal || line == null) {
                err().println();
            }
            if (line == null) {
                List<String> wrong = new ArrayList<>(refused);
                wrong.add(NewPhrase.ended(question, at + 1, questions.size()));
                throw new WrongInputException(all(wrong) + stopped(answers));
            }
            if (line.isBlank()) {
                return List.of();
            }
            Map<String, String> more = new LinkedHashMap<>(answers);
            more.put(question, line.strip());
            List<String> wrong = NewAnswers.wrong(more, ready);
            if (wrong.isEmpty()) {
                answers.put(question, line.strip());
                AnswersFile.write(kept, answers);
                said(question, answers);
                return List.of();
            }
            if (!terminal) {
                return wrong;
            }
            if (tries == MOST_TRIES) {
                err().println();
                throw new WrongInputException(String.join("\n", wrong) + stopped(answers));
            }
            wrong.forEach(one -> err().print(NewPhrase.again(one.replaceFirst("^hotidle: (--)?", ""))));
        }
    }

    /** Keeps the answers so far, where there are any, and says where. */
    private String stopped(Map<String, String> answers) {
        if (answers.isEmpty()) {
            return "";
        }
        AnswersFile.write(kept, answers);
        return "\n" + NewPhrase.stopped(kept);
    }

    private void said(String question, Map<String, String> answers) {
        if (question.equals("ranges")) {
            List<String> ranges = NewAnswers.of(answers).ranges();
            err().println("  " + NewPhrase.has(ready.pistons("clutch", ranges), ready.pistons("band", ranges)));
        }
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }

    /** What a question asks for, without its example, which could be taken for what an empty line keeps. */
    private String about(String question) {
        return switch (question) {
            case "clutch" -> "piston areas that you know, NAME=AREA,NAME=AREA";
            case "faces" -> "friction faces that you know, NAME=COUNT or NAME=COUNTxMEAN-RADIUS";
            default -> spec.findOption("--" + question).description()[0].replaceFirst(":.*", "");
        };
    }

    /** What an empty line keeps. */
    private String shown(String question, Map<String, String> answers) {
        OptionalDouble value = ready.after(NewAnswers.of(answers), question);
        return switch (question) {
            case "ranges" -> String.join(",", ready.applied().keySet());
            case "clutch" -> NewPhrase.SCALED;
            case "faces" ->
                ready.faces(NewAnswers.of(answers).ranges()).entrySet().stream()
                        .map(one -> one.getKey() + "=" + one.getValue())
                        .collect(Collectors.joining(","));
            case "bores" -> String.valueOf(Math.round(value.orElse(0)));
            default -> NewQuestions.quantity(question).with(units, value.orElse(0));
        };
    }
}
