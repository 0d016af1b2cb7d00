package hotidle.cli;

import hotidle.circuits.Library;
import hotidle.circuits.create.NewUnit;
import hotidle.circuits.create.UnitAnswers;
import hotidle.circuits.text.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a unit of one's own from a ready circuit and a dozen answers. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description = {
            "Makes the circuit file of a unit of your own from a ready circuit like it and what you know of it: what you do not know is"
                    + " scaled from the ready circuit and marked as assumed.",
            "Give answers as options, as rows 'question,answer' of a CSV file, or let yourself be asked with --ask."
        })
final class NewCommand implements Callable<Integer> {

    @Parameters(paramLabel = "NAME", description = "name of the unit; the file is NAME.yaml")
    String name;

    @Option(names = "--like", required = true, paramLabel = "CIRCUIT", description = "the ready circuit it is like")
    String like;

    @Option(
            names = "--answers",
            paramLabel = "FILE.csv",
            description = "rows 'question,answer'; a question is the name of an option")
    Path answers;

    @Option(
            names = "--ask",
            description = "asks each question that is not answered yet; an empty line leaves it as it is")
    boolean ask;

    @Option(
            names = "--out",
            paramLabel = "FILE.yaml",
            description = "file to write; it must be new. Default: NAME.yaml")
    Path out;

    @Option(names = "--displacement", paramLabel = "SIZE", description = "of the pump, all chambers: 24cm3/rev")
    String displacement;

    @Option(names = "--engine-torque", paramLabel = "TORQUE", description = "highest of the engine: 450N.m")
    String engineTorque;

    @Option(names = "--set-pressure", paramLabel = "PRESSURE", description = "highest line pressure forward: 185psi")
    String setPressure;

    @Option(
            names = "--idle-pressure",
            paramLabel = "PRESSURE",
            description = "line pressure without engine torque: 80psi")
    String idlePressure;

    @Option(names = "--converter-feed", paramLabel = "PRESSURE", description = "that the converter needs: 25psi")
    String converterFeed;

    @Option(names = "--cooler-flow", paramLabel = "FLOW", description = "that the cooler is made for: 8L/min")
    String coolerFlow;

    @Option(names = "--lubrication", paramLabel = "FLOW", description = "that all lube branches need: 1.2L/min")
    String lubrication;

    @Option(names = "--bore-diameter", paramLabel = "SIZE", description = "of the valve-body bores, their mean: 11mm")
    String boreDiameter;

    @Option(names = "--bores", paramLabel = "COUNT", description = "valve-body bores that leak: 18")
    String bores;

    @Option(names = "--ranges", paramLabel = "NAMES", description = "driving ranges that it has: reverse,first,second")
    String ranges;

    @Option(
            names = "--clutch",
            paramLabel = "NAME=AREA",
            description = "piston area of a clutch: forward-clutch=135cm2; again for each")
    List<String> clutches = List.of();

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        if (!name.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new WrongInputException(
                    "hotidle: " + name
                            + " is no name of a unit\nwhy:  a name has small letters, digits and hyphens\nmend: write bus-12, for example");
        }
        Path file = out == null ? Path.of(name + ".yaml") : out;
        NewFile.check("--out", file);
        String text = Library.text(like)
                .orElseThrow(() -> new WrongInputException("hotidle: --like " + like
                        + " is no ready circuit\nready circuits: " + String.join(", ", Library.names())));
        Map<String, String> given = new LinkedHashMap<>();
        options().forEach((question, answer) -> {
            if (answer != null) {
                given.put(question, answer);
            }
        });
        if (answers != null) {
            AnswersFile.read(answers, options().keySet()).forEach(given::putIfAbsent);
        }
        if (ask) {
            new AskedAnswers(spec)
                    .ask(options().keySet(), NewUnit.now(like, text))
                    .forEach(given::putIfAbsent);
        }
        String made = made(text, given);
        NewFile.write("--out", file, made);
        spec.commandLine()
                .getErr()
                .println(file + ": " + made.lines().count() + " lines; 'hotidle check " + file
                        + "' says what it holds, 'hotidle sheet " + file + "' what to measure");
        return HotIdle.DONE;
    }

    private String made(String text, Map<String, String> given) {
        try {
            return NewUnit.of(name, like, text, answers(given));
        } catch (UnitAnswers.WrongAnswerException wrong) {
            throw new WrongInputException("hotidle: --" + wrong.question() + ": " + wrong.getMessage());
        }
    }

    /** Every question with the option's answer, null where there is none. */
    private Map<String, String> options() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("displacement", displacement);
        all.put("engine-torque", engineTorque);
        all.put("set-pressure", setPressure);
        all.put("idle-pressure", idlePressure);
        all.put("converter-feed", converterFeed);
        all.put("cooler-flow", coolerFlow);
        all.put("lubrication", lubrication);
        all.put("bore-diameter", boreDiameter);
        all.put("bores", bores);
        all.put("ranges", ranges);
        all.put("clutch", clutches.isEmpty() ? null : String.join(",", clutches));
        return all;
    }

    private static UnitAnswers answers(Map<String, String> given) {
        return new UnitAnswers(
                number(given, "displacement", Dimension.DISPLACEMENT),
                number(given, "engine-torque", Dimension.TORQUE),
                number(given, "set-pressure", Dimension.PRESSURE),
                number(given, "idle-pressure", Dimension.PRESSURE),
                number(given, "converter-feed", Dimension.PRESSURE),
                number(given, "cooler-flow", Dimension.FLOW),
                number(given, "lubrication", Dimension.FLOW),
                number(given, "bore-diameter", Dimension.LENGTH),
                count(given),
                names(given.getOrDefault("ranges", "")),
                areas(names(given.getOrDefault("clutch", ""))));
    }

    private static OptionalDouble number(Map<String, String> given, String question, Dimension dimension) {
        if (!given.containsKey(question)) {
            return OptionalDouble.empty();
        }
        double value = OptionValues.quantity("--" + question, given.get(question), dimension);
        if (!(value > 0)) {
            throw new WrongInputException(
                    "hotidle: --" + question + " " + given.get(question) + ": it must be above zero");
        }
        return OptionalDouble.of(value);
    }

    private static OptionalInt count(Map<String, String> given) {
        String text = given.getOrDefault("bores", "");
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        if (!text.matches("[1-9]\\d?")) {
            throw new WrongInputException("hotidle: --bores " + text + ": write a whole number from 1 to 99");
        }
        return OptionalInt.of(Integer.parseInt(text));
    }

    private static List<String> names(String text) {
        List<String> names = new ArrayList<>();
        for (String one : text.split("[,;]", -1)) {
            if (!one.isBlank()) {
                names.add(one.strip());
            }
        }
        return names;
    }

    private static Map<String, Double> areas(List<String> words) {
        Map<String, Double> areas = new LinkedHashMap<>();
        for (String word : words) {
            int at = word.indexOf('=');
            if (at < 1) {
                throw new WrongInputException(
                        "hotidle: --clutch " + word + ": write its name and its area, forward-clutch=135cm2");
            }
            areas.put(word.substring(0, at), OptionValues.quantity("--clutch", word.substring(at + 1), Dimension.AREA));
        }
        return areas;
    }
}
