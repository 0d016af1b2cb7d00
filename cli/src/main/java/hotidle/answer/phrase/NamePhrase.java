package hotidle.answer.phrase;

import hotidle.answer.format.Wrap;
import hotidle.fault.FaultKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a name stands for that a circuit's file gives, as against a word of the program. */
public final class NamePhrase {

    public static final String DUTY =
            "a driving condition: engine speed, temperatures, range and torque at which a unit is judged";

    public static final String RANGE = "a range: the clutches that it applies and the oil that it feeds";

    public static final String PORT = "a place at which a gauge can be fitted";

    private NamePhrase() {}

    /** @param about what the file says of it; may be empty */
    public static String build(String about) {
        return "a build" + (about.isEmpty() ? "" : ": " + about);
    }

    /** @param about what the file says of it; may be empty */
    public static String part(String kind, String about) {
        return "a part of the kind " + kind + (about.isEmpty() ? "" : ": " + about);
    }

    public static String size(String key, String part, String kind) {
        return "the size '" + key + "' of " + part + ", a part of the kind " + kind;
    }

    /** A fault, with its part behind an at where it was asked so. */
    public static String fault(String asked, FaultKind kind) {
        return Wrap.lines(
                        asked + ": a fault that may be laid over a build, as --fault " + kind.word() + "@PART takes it",
                        "",
                        "  ")
                + "seen in: gauge, list faults\n";
    }

    /** @param measures with its article, for example "a pressure" */
    public static String unit(String unit, String measures) {
        return unit + ": a unit in which " + measures + " is given" + "\nseen in: list units\n";
    }

    /**
     * A name.
     *
     * @param is what it is by circuit
     */
    public static String said(String name, Map<String, String> is) {
        Map<String, List<String>> circuits = new LinkedHashMap<>();
        is.forEach((circuit, what) ->
                circuits.computeIfAbsent(what, none -> new ArrayList<>()).add(circuit));
        return Wrap.lines("'" + name + "' is a name that a circuit's file gives:", "", "  ")
                + circuits.entrySet().stream()
                        .map(one -> Wrap.lines(String.join(", ", one.getValue()) + ": " + one.getKey(), "  ", "    "))
                        .collect(Collectors.joining());
    }
}
