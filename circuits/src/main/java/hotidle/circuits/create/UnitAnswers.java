package hotidle.circuits.create;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What is known of a unit of one's own; what is not answered is as in the ready circuit. SI.
 *
 * @param displacement  of the pump, all chambers [m³/rev]
 * @param engineTorque  highest of the engine [N·m]
 * @param setPressure   highest line pressure of the forward ranges [Pa]
 * @param idlePressure  line pressure without engine torque [Pa]
 * @param reversePressure line pressure in reverse at the command of the set pressure [Pa]
 * @param converterFeed pressure that the converter needs [Pa]
 * @param coolerFlow    that the cooler is made for [m³/s]
 * @param lubrication   flow that all lube branches need [m³/s]
 * @param boreDiameter  mean diameter of the valve-body bores [m]
 * @param boreCount     valve-body bores that leak
 * @param ranges        driving ranges that the unit has, in the ready circuit's names; none named: all
 * @param clutches      piston area of clutches [m²] by the ready circuit's names
 */
public record UnitAnswers(
        OptionalDouble displacement,
        OptionalDouble engineTorque,
        OptionalDouble setPressure,
        OptionalDouble idlePressure,
        OptionalDouble reversePressure,
        OptionalDouble converterFeed,
        OptionalDouble coolerFlow,
        OptionalDouble lubrication,
        OptionalDouble boreDiameter,
        OptionalInt boreCount,
        List<String> ranges,
        Map<String, Double> clutches) {

    public UnitAnswers {
        ranges = List.copyOf(ranges);
        clutches = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(clutches));
    }

    /** Nothing answered: the ready circuit itself, every number of it assumed. */
    public static final UnitAnswers NONE = new UnitAnswers(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalInt.empty(),
            List.of(),
            Map.of());

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

    /** The ratio of an answer to what the ready circuit has; 1 where it was not answered. */
    static double ratio(OptionalDouble answer, double ready) {
        return answer.isPresent() && ready > 0 ? answer.getAsDouble() / ready : 1;
    }

    /** Questions that are answered, by their names. */
    List<String> given() {
        Map<String, Boolean> answered = new LinkedHashMap<>();
        answered.put("displacement", displacement.isPresent());
        answered.put("engine-torque", engineTorque.isPresent());
        answered.put("set-pressure", setPressure.isPresent());
        answered.put("idle-pressure", idlePressure.isPresent());
        answered.put("reverse-pressure", reversePressure.isPresent());
        answered.put("converter-feed", converterFeed.isPresent());
        answered.put("cooler-flow", coolerFlow.isPresent());
        answered.put("lubrication", lubrication.isPresent());
        answered.put("bore-diameter", boreDiameter.isPresent());
        answered.put("bores", boreCount.isPresent());
        answered.put("ranges", !ranges.isEmpty());
        answered.put("clutch", !clutches.isEmpty());
        return answered.entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .toList();
    }

    Optional<Double> clutch(String name) {
        return Optional.ofNullable(clutches.get(name));
    }
}
