package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Remedy;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The words of the spring of a {@link SpoolValve}: its force is written as such, or as the pressure at which the valve balances.
 *
 * <pre>
 * Set pressure   p·A = preload + rate·x: A the area on which p opens the valve less that on which it closes it, in every range; x the
 *                position at which the opening named begins to open; other pressures, flow force, friction and shims zero
 * </pre>
 */
final class SpoolSpringKeys {

    private SpoolSpringKeys() {}

    static List<Key> keys() {
        return List.of(
                Key.quantity("spring-rate", Dimension.SPRING_RATE, "rate of the spring")
                        .allowed("0.001 N/mm", "1000 N/mm")
                        .usual("0.2 N/mm", "50 N/mm"),
                Key.quantity(
                                "preload",
                                Dimension.FORCE,
                                "force of the spring with the spool at 0, without shims; in place of set-pressure")
                        .neededWhere("no set-pressure is given")
                        .allowed("-10000 N", "10000 N")
                        .usual("0 N", "600 N"),
                Key.quantity(
                                "set-pressure",
                                Dimension.PRESSURE,
                                "pressure at which the spring alone balances the spool where set-edge begins to open, without shims"
                                        + " and pilot pressure; in place of preload, which follows from it in every build")
                        .neededWhere("no preload is given")
                        .allowed("0.1 psi", "5000 psi")
                        .usual("10 psi", "400 psi")
                        .measured("gauge, with the pilot pressure off"),
                Key.of(
                                "set-edge",
                                new Type.FreeText(),
                                "opening at which set-pressure is meant; left out: the first one that opens up, or the only one")
                        .optional(),
                Key.quantity(
                                "shim",
                                Dimension.LENGTH,
                                "shims under the spring; adds spring-rate times shim to the preload")
                        .byDefault("0 mm", "no shims (assumed)")
                        .allowed("-20 mm", "20 mm")
                        .usual("0 mm", "4 mm"),
                Key.quantity(
                                "installed-height",
                                Dimension.LENGTH,
                                "height of the spring with the spool at 0, without shims")
                        .neededWhere("solid-height is given")
                        .allowed("1 mm", "300 mm")
                        .usual("10 mm", "100 mm")
                        .measured("calliper: depth of the spring pocket with the spool on its seat"),
                Key.quantity("solid-height", Dimension.LENGTH, "height of the spring with its coils touching")
                        .neededWhere("installed-height is given")
                        .allowed("0.5 mm", "300 mm")
                        .usual("5 mm", "90 mm")
                        .measured("calliper, coils pressed together; or coils times wire diameter"));
    }

    /** Notes a spring of which neither the force nor the pressure is given. */
    static void needs(Attributes given) {
        if (given.lacks("preload") && given.lacks("set-pressure")) {
            given.error(
                    ProblemCode.SPRING_NOT_KNOWN,
                    "preload",
                    "has neither a set-pressure nor a preload",
                    "its spring must be known",
                    Remedy.set("write ", "set-pressure", "90 psi")
                            .then(", at which its first opening begins to open, or ")
                            .set("preload", "120 N"));
        }
    }

    static void check(Attributes given) {
        checkHeights(given);
        if (given.has("preload") && given.has("set-pressure")) {
            given.error(
                    ProblemCode.SPRING_GIVEN_TWICE,
                    "preload",
                    "has both a preload and a set-pressure",
                    "the one follows from the other, the areas and the spring-rate",
                    "leave out one of them");
        } else if (given.has("set-pressure")) {
            checkSet(given);
        } else if (given.has("set-edge")) {
            given.error(
                    ProblemCode.SET_EDGE_WITHOUT_PRESSURE,
                    "set-edge",
                    "has a set-edge without a set-pressure",
                    "it says where that is meant",
                    "leave it out");
        }
    }

    private static void checkHeights(Attributes given) {
        if (given.has("installed-height") != given.has("solid-height")) {
            boolean solid = given.has("solid-height");
            given.error(
                    ProblemCode.SPRING_HEIGHT_ALONE,
                    solid ? "solid-height" : "installed-height",
                    "has "
                            + (solid
                                    ? "a solid-height without an installed-height"
                                    : "an installed-height without a solid-height"),
                    "where the coils touch follows from both",
                    "add the other, or leave it out");
            return;
        }
        if (bind(given).isEmpty()) {
            return;
        }
        double bind = bind(given).getAsDouble();
        double low = given.rows("stops").get(0).x();
        double high = given.rows("stops").get(1).x();
        String left = String.format(Locale.ROOT, "the coils touch with the spool at %.2f mm", bind * 1000);
        if (bind <= low) {
            given.error(
                    ProblemCode.COILS_TOUCH_AT_ONCE,
                    "solid-height",
                    "has a spring that is solid before the spool moves",
                    left,
                    "look at installed-height, solid-height and shim");
        } else if (bind < high) {
            given.warning(
                    ProblemCode.COILS_TOUCH_BEFORE_STOP,
                    "solid-height",
                    "has a spring whose coils touch before the spool reaches its upper stop",
                    left + String.format(Locale.ROOT, ", the stop is at %.2f mm", high * 1000),
                    "look at installed-height, solid-height and shim; a spring that goes solid breaks");
        }
    }

    /** Position at which the coils touch [m]; empty where the file does not say. */
    private static OptionalDouble bind(Attributes given) {
        return given.has("installed-height") && given.has("solid-height")
                ? OptionalDouble.of(
                        given.number("installed-height") - given.number("shim") - given.number("solid-height"))
                : OptionalDouble.empty();
    }

    private static void checkSet(Attributes given) {
        if (given.has("set-edge") && !given.groups("openings").containsKey(given.word("set-edge"))) {
            given.error(
                    ProblemCode.SET_EDGE_IS_NO_OPENING,
                    "set-edge",
                    "has set-edge '" + given.word("set-edge") + "', which is no opening of it",
                    "",
                    Nearest.mend(
                            given.word("set-edge"), given.groups("openings").keySet()));
            return;
        }
        if (edge(given).isEmpty()) {
            given.error(
                    ProblemCode.NOTHING_OPENS_UP,
                    "set-pressure",
                    "has a set-pressure, but none of its openings opens up",
                    "then it is not known at which of them the pressure is meant",
                    "add set-edge: and the name of an opening");
            return;
        }
        List<String> pushing = given.groups("areas").values().stream()
                .filter(area -> opens(area) && always(area))
                .map(area -> area.word("node"))
                .distinct()
                .toList();
        if (pushing.size() != 1 || !(area(given) > 0)) {
            given.error(
                    ProblemCode.NOT_ONE_NODE_OPENS,
                    "set-pressure",
                    pushing.size() > 1
                            ? "has a set-pressure, but several nodes open it: " + String.join(", ", pushing)
                            : "has a set-pressure, but no pressure that opens it in every range",
                    "a set-pressure is that of the one node whose pressure moves it against its spring",
                    "write preload in place of set-pressure");
            return;
        }
        if (preload(given) < 0) {
            given.error(
                    ProblemCode.SPRING_TOO_STIFF,
                    "set-pressure",
                    "has a set-pressure that its spring would exceed without any preload",
                    String.format(
                            Locale.ROOT,
                            "spring-rate times edge is %.1f N: more than set-pressure times area",
                            given.number("spring-rate")
                                    * edge(given).orElseThrow().number("edge")),
                    "look at set-pressure, spring-rate, edge and areas");
        }
    }

    /** The opening at which the set pressure is meant. */
    private static Optional<Attributes> edge(Attributes given) {
        Map<String, Attributes> openings = given.groups("openings");
        if (given.has("set-edge")) {
            return Optional.of(openings.get(given.word("set-edge")));
        }
        return openings.size() == 1
                ? openings.values().stream().findFirst()
                : openings.values().stream()
                        .filter(opening -> opening.word("opens").equals("up"))
                        .min(Comparator.comparingDouble(opening -> opening.number("edge")));
    }

    private static boolean opens(Attributes area) {
        return area.word("acts").equals("open");
    }

    /** Fed in every range. */
    private static boolean always(Attributes area) {
        return area.words("ranges").isEmpty();
    }

    /** Area on which the pressure that opens it acts in every range [m²]. */
    private static double area(Attributes given) {
        List<Attributes> always = given.groups("areas").values().stream()
                .filter(SpoolSpringKeys::always)
                .toList();
        List<String> pushing = always.stream()
                .filter(SpoolSpringKeys::opens)
                .map(area -> area.word("node"))
                .toList();
        return always.stream()
                .filter(area -> pushing.contains(area.word("node")))
                .mapToDouble(area -> opens(area) ? area.number("area") : -area.number("area"))
                .sum();
    }

    /** Force of the spring at 0, without shims [N]. */
    private static double preload(Attributes given) {
        return given.numberIf("preload")
                .orElseGet(() -> given.number("set-pressure") * area(given)
                        - given.number("spring-rate")
                                * edge(given).orElseThrow().number("edge"));
    }

    static SpoolSpring make(Attributes given) {
        double rate = given.number("spring-rate");
        return new SpoolSpring(
                rate,
                preload(given) + rate * given.number("shim"),
                given.rows("stops").get(0).x(),
                given.rows("stops").get(1).x(),
                given.number("friction"),
                bind(given));
    }
}
