package hotidle.cli;

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

    /** Answers by question, of those that were given. */
    Map<String, String> answered() {
        Map<String, String> given = options();
        given.values().removeIf(Objects::isNull);
        return given;
    }

    /** Every question with its answer, null where there is none. */
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
}
