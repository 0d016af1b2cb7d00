package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;

/** A duty point whose temperatures follow from heat has all that heat depends on, and begins at one that does not begin at it. */
final class WarmedDuty implements Rule.OfDuty {

    /** Whether its temperatures follow from heat. */
    private static boolean of(Attributes duty) {
        return duty.has("after") || duty.text("balance").equals("yes");
    }

    @Override
    public void check(Attributes file, Attributes duty, Parts parts) {
        if (duty.has("after") != duty.has("lasts")) {
            String missing = duty.has("after") ? "lasts" : "after";
            duty.error(
                    ProblemCode.AFTER_WITHOUT_TIME,
                    duty.has("after") ? "after" : "lasts",
                    "needs " + missing + " too",
                    "a driving condition begins at another and lasts for a time",
                    "add " + missing + ", or leave both out");
        } else if (of(duty)) {
            needs(file, duty);
            circle(file, duty);
        }
    }

    private static void needs(Attributes file, Attributes duty) {
        String key = duty.has("after") ? "after" : "balance";
        if (file.group("heat").isEmpty()) {
            duty.error(
                    ProblemCode.HEAT_NOT_GIVEN,
                    key,
                    "has temperatures that follow from heat, and the file says nothing of heat",
                    "masses and losses decide how warm it gets",
                    "add a section heat, or give temperatures");
        }
        if (!duty.has("turbine-speed-ratio") && !duty.text("lockup").equals("on")) {
            duty.missing(
                    "turbine-speed-ratio",
                    "the converter's slip makes most of the heat",
                    "add 'turbine-speed-ratio: 0' at stall, for example");
        }
    }

    private static void circle(Attributes file, Attributes duty) {
        Map<String, Attributes> duties = file.groups("duty");
        Deque<String> seen = new ArrayDeque<>(List.of(duty.name()));
        Attributes next = duty;
        while (next != null && next.has("after")) {
            String before = next.word("after");
            if (!duties.containsKey(before)) {
                return;
            }
            if (seen.contains(before)) {
                if (before.equals(duty.name())) {
                    duty.error(
                            ProblemCode.AFTER_ITSELF,
                            "after",
                            "begins after itself",
                            String.join(" after ", seen) + " after " + before,
                            "leave out one after");
                }
                return;
            }
            seen.add(before);
            next = duties.get(before);
        }
    }
}
