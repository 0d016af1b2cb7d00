package hotidle.circuits.create;

import hotidle.circuits.text.Dimension;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of a unit of one's own; what is not answered is as in the ready circuit. SI.
 *
 * @param numbers  answers that are one number, by question: those of {@link #QUANTITIES}, and {@link #BORES}
 * @param ranges   driving ranges that the unit has, in the ready circuit's names; none named: all
 * @param clutches piston area of clutches [m²] by the ready circuit's names
 * @param faces    friction faces of clutches by the ready circuit's names
 */
public record UnitAnswers(
        Map<String, Double> numbers, List<String> ranges, Map<String, Double> clutches, Map<String, Faces> faces) {

    /** Questions that ask for a quantity, and of what dimension; what each means its option says. */
    public static final Map<String, Dimension> QUANTITIES = quantities();

    /** The question for a count. */
    public static final String BORES = "bores";

    private static Map<String, Dimension> quantities() {
        Map<String, Dimension> all = new LinkedHashMap<>();
        all.put("displacement", Dimension.DISPLACEMENT); // of the pump, all chambers
        all.put("engine-torque", Dimension.TORQUE); // the engine's highest
        all.put("set-pressure", Dimension.PRESSURE); // highest of the forward ranges
        all.put(
                "idle-pressure",
                Dimension.PRESSURE); // read on the line of the sound unit at the slowest driving condition
        all.put("idle-speed", Dimension.SPEED); // of that driving condition
        all.put("reverse-pressure", Dimension.PRESSURE); // in reverse at the command of the set pressure
        all.put("converter-feed", Dimension.PRESSURE); // that the converter needs
        all.put("cooler-flow", Dimension.FLOW); // that the cooler is made for
        all.put("lubrication", Dimension.FLOW); // that all lube branches need
        all.put("hub-diameter", Dimension.LENGTH); // where the bushing runs
        all.put("hub-clearance", Dimension.LENGTH); // diametral, of the bushing on the hub
        all.put("bore-diameter", Dimension.LENGTH); // mean of the valve-body bores
        return Collections.unmodifiableMap(all);
    }

    /**
     * Friction faces of a clutch.
     *
     * @param count      1 or more
     * @param meanRadius half of the mean of the lining's inner and outer diameter [m]; empty where only the count is known
     */
    public record Faces(int count, OptionalDouble meanRadius) {}

    public UnitAnswers {
        numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
        ranges = List.copyOf(ranges);
        clutches = Collections.unmodifiableMap(new LinkedHashMap<>(clutches));
        faces = Collections.unmodifiableMap(new LinkedHashMap<>(faces));
        for (String question : numbers.keySet()) {
            if (!QUANTITIES.containsKey(question) && !question.equals(BORES)) {
                throw new IllegalArgumentException(question + " asks for no number");
            }
        }
    }

    /** Numbers alone. */
    public static UnitAnswers of(Map<String, Double> numbers) {
        return new UnitAnswers(numbers, List.of(), Map.of(), Map.of());
    }

    /** Nothing answered: the ready circuit itself, every number of it assumed. */
    public static final UnitAnswers NONE = of(Map.of());

    /** A question of an answer that cannot be taken. */
    public static final class WrongAnswerException extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final String question;

        WrongAnswerException(String question, String message) {
            super(message);
            this.question = question;
        }

        /** Which answer it was; empty where several together make what cannot be. */
        public String question() {
            return question;
        }
    }

    /** A number [SI]; empty where it was not answered. */
    public OptionalDouble number(String question) {
        Double value = numbers.get(question);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    boolean has(String question) {
        return numbers.containsKey(question);
    }

    /** The ratio of an answer to what the ready circuit has; 1 where it was not answered. */
    double ratio(String question, double ready) {
        return has(question) && ready > 0 ? numbers.get(question) / ready : 1;
    }

    /** Questions that are answered, by their names. */
    List<String> given() {
        List<String> given = new ArrayList<>(numbers.keySet());
        if (!ranges.isEmpty()) {
            given.add("ranges");
        }
        if (!clutches.isEmpty()) {
            given.add("clutch");
        }
        if (!faces.isEmpty()) {
            given.add("faces");
        }
        return given;
    }

    Optional<Double> clutch(String name) {
        return Optional.ofNullable(clutches.get(name));
    }

    Optional<Faces> facesOf(String clutch) {
        return Optional.ofNullable(faces.get(clutch));
    }
}
