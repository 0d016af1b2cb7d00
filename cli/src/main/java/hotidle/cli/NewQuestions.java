package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.circuits.create.UnitAnswers;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import picocli.CommandLine.Option;

/** The questions of {@code new}, each an option. */
final class NewQuestions {

    /** Their names, in the order in which they are asked. */
    static final Set<String> ALL = Collections.unmodifiableSet(
            new LinkedHashSet<>(new NewQuestions().options().keySet()));

    @Option(
            names = "--displacement",
            paramLabel = "SIZE",
            description = "of the pump, all chambers: 24cm3/rev or 1.46in3/rev")
    String displacement;

    @Option(
            names = "--engine-torque",
            paramLabel = "TORQUE",
            description = "highest of the engine: 450N.m or 330lbf.ft")
    String engineTorque;

    @Option(names = "--set-pressure", paramLabel = "PRESSURE", description = "highest line pressure forward: 185psi")
    String setPressure;

    @Option(
            names = "--idle-pressure",
            paramLabel = "PRESSURE",
            description = "line pressure at hot idle in gear, as a gauge reads it on a sound unit: 80psi")
    String idlePressure;

    @Option(names = "--idle-speed", paramLabel = "SPEED", description = "engine speed at hot idle in gear: 650rpm")
    String idleSpeed;

    @Option(
            names = "--reverse-pressure",
            paramLabel = "PRESSURE",
            description = "line pressure in reverse at the throttle or command of the set pressure: 230psi")
    String reversePressure;

    @Option(names = "--converter-feed", paramLabel = "PRESSURE", description = "that the converter needs: 25psi")
    String converterFeed;

    @Option(names = "--cooler-flow", paramLabel = "FLOW", description = "that the cooler is made for: 8L/min or 2.1gpm")
    String coolerFlow;

    @Option(
            names = "--lubrication",
            paramLabel = "FLOW",
            description = "that all lube branches need: 1.2L/min or 0.32gpm")
    String lubrication;

    @Option(
            names = "--bore-diameter",
            paramLabel = "SIZE",
            description = "of the valve-body bores, their mean: 11mm or 0.43in")
    String boreDiameter;

    @Option(names = "--bores", paramLabel = "COUNT", description = "valve-body bores that leak: 18")
    String bores;

    @Option(
            names = "--ranges",
            paramLabel = "NAMES",
            description = "driving ranges that it has: reverse,first,second or R,1,2")
    String ranges;

    @Option(
            names = "--clutch",
            paramLabel = "NAME=AREA",
            description = "piston area of a clutch or band: forward-clutch=135cm2; again for each")
    List<String> clutches = List.of();

    @Option(
            names = "--faces",
            paramLabel = "NAME=COUNT",
            description =
                    "friction faces of a clutch, with their mean radius where you know it: forward-clutch=10 or forward-clutch=10x68mm;"
                            + " a band of the ready circuit becomes a plate clutch by it; again for each")
    List<String> faces = List.of();

    @Option(
            names = "--hub-diameter",
            paramLabel = "SIZE",
            description = "of the converter's hub where the pump's bushing runs: 43mm or 1.69in")
    String hubDiameter;

    @Option(
            names = "--hub-clearance",
            paramLabel = "SIZE",
            description = "of that bushing when new, bore less hub: 0.06mm or 0.0024in")
    String hubClearance;

    /** Answers by question, of those that were given. */
    Map<String, String> answered() {
        Map<String, String> given = options();
        given.values().removeIf(Objects::isNull);
        return given;
    }

    /** As what the answer to a question is shown. */
    static Quantity quantity(String question) {
        return switch (UnitAnswers.QUANTITIES.get(question)) {
            case DISPLACEMENT -> Quantity.DISPLACEMENT;
            case TORQUE -> Quantity.TORQUE;
            case FLOW -> Quantity.FLOW;
            case LENGTH -> Quantity.SIZE;
            case SPEED -> Quantity.SPEED;
            default -> Quantity.PRESSURE;
        };
    }

    /** Every question with its answer, null where there is none. */
    private Map<String, String> options() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("displacement", displacement);
        all.put("engine-torque", engineTorque);
        all.put("set-pressure", setPressure);
        all.put("idle-pressure", idlePressure);
        all.put("idle-speed", idleSpeed);
        all.put("reverse-pressure", reversePressure);
        all.put("converter-feed", converterFeed);
        all.put("cooler-flow", coolerFlow);
        all.put("lubrication", lubrication);
        all.put("ranges", ranges);
        all.put("clutch", clutches.isEmpty() ? null : String.join(",", clutches));
        all.put("faces", faces.isEmpty() ? null : String.join(",", faces));
        all.put("hub-diameter", hubDiameter);
        all.put("hub-clearance", hubClearance);
        all.put("bore-diameter", boreDiameter);
        all.put("bores", bores);
        return all;
    }
}
