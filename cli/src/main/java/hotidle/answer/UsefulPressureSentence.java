package hotidle.answer;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.UsefulPressurePhrase;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.UsefulPressure;
import java.util.Optional;

/** Which sentence is said of the highest set pressure that still buys torque. */
public final class UsefulPressureSentence {

    private UsefulPressureSentence() {}

    /** Empty where nothing but clutches is judged. */
    public static Optional<String> of(Quantity.UnitSystem units, String build, UsefulPressure useful) {
        return useful.weakest().map(link -> said(new UsefulPressurePhrase(units), build, useful, link));
    }

    /** The same in short. */
    public static Optional<String> brief(Quantity.UnitSystem units, String build, UsefulPressure useful) {
        UsefulPressurePhrase phrase = new UsefulPressurePhrase(units);
        return useful.weakest().map(link -> {
            if (useful.pressure().isEmpty()) {
                return phrase.everywhereBrief(build, useful.highest());
            }
            return useful.crosses()
                    ? phrase.upToBrief(build, useful.pressure().getAsDouble(), link.name())
                    : UsefulPressurePhrase.nowhereBrief(build, link.name());
        });
    }

    /** The same where a set pressure is asked for that buys no torque; empty where it does. */
    public static Optional<String> beyond(Quantity.UnitSystem units, String build, Optional<UsefulPressure> useful) {
        return useful.filter(one -> one.pressure().isPresent() && one.pressure().getAsDouble() < one.highest())
                .flatMap(one -> brief(units, build, one));
    }

    private static String said(UsefulPressurePhrase phrase, String build, UsefulPressure useful, Carrier link) {
        String unsolved = useful.unsolved().isEmpty() ? "" : UsefulPressurePhrase.notKnown(useful.unsolved());
        if (useful.pressure().isEmpty()) {
            return phrase.everywhere(build, useful.highest(), link.name(), useful.range(), link.torque()) + unsolved;
        }
        double from = useful.pressure().getAsDouble();
        return (useful.crosses()
                        ? phrase.upTo(build, from, link.name(), useful.range(), link.torque())
                        : phrase.nowhere(build, from, link.name(), useful.range(), link.torque()))
                + unsolved;
    }
}
