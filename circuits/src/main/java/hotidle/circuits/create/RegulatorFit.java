package hotidle.circuits.create;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import hotidle.transmission.QuotedSet;
import hotidle.transmission.Range;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Spring and areas of a regulator so that line pressures are the ones asked for where no table commands them.
 *
 * <pre>
 * throttle  the set pressure S and the line pressure I without engine torque are both straight in the regulator's preload F and in the
 *           area A on which throttle pressure boosts it. S, I and their slopes are read off the unit itself, then F and A solved
 * solenoid  where the spring alone holds more than is asked for without engine torque, its preload is lowered and the pilot's area made
 *           larger by as much force as is missing at the highest pilot pressure
 * reverse   of two areas that open the regulator at the line one, Af, is drained in reverse. At the command of the set pressure S both
 *           hold S·(Al + Af) = N forward, and the other one alone N/Al in reverse: Al becomes N over the pressure asked for, Af the rest
 *           of their sum, so that forward pressures stay
 * </pre>
 */
final class RegulatorFit {

    /** By how much preload and area are varied to read slopes; exact for straight lines, whatever it is [-]. */
    private static final double STEP = 0.1;

    private static final double SQUARE_MILLIMETRES = 1e6;

    private final Draft draft;
    private final Map<String, Object> regulator;
    private final String line;
    private final String preload;
    private final String boostArea;

    RegulatorFit(Draft draft) {
        this.draft = draft;
        Map<String, Object> command = draft.section("command");
        line = Draft.text(command, "line");
        regulator = Draft.map(draft.section("parts").get(Draft.text(command, "regulator")))
                .orElse(Map.of());
        preload = Draft.text(regulator, "preload");
        boostArea = areas("close").stream()
                .findFirst()
                .map(area -> Draft.text(area, "area"))
                .orElse("");
    }

    private List<Map<String, Object>> areas(String acts) {
        return Draft.map(regulator.get("areas")).stream()
                .flatMap(areas -> areas.values().stream())
                .flatMap(area -> Draft.map(area).stream())
                .filter(area -> Draft.text(area, "acts").equals(acts))
                .toList();
    }

    /** Whether a pressure that follows the throttle boosts it, so that spring and one area make the line pressure. */
    boolean boostedByThrottle() {
        return !draft.section("command").containsKey("line-pressure")
                && Amounts.number(Draft.text(regulator, "preload")).orElse(0) > 0
                && areas("close").size() == 1;
    }

    /** Whether one of its two areas at the line is drained in reverse. */
    boolean drainsInReverse() {
        return always().isPresent() && drained().isPresent() && areas("open").size() == 2;
    }

    private Optional<Map<String, Object>> always() {
        return areas("open").stream()
                .filter(area ->
                        !area.containsKey("ranges") && Draft.text(area, "node").equals(line))
                .findFirst();
    }

    private Optional<Map<String, Object>> drained() {
        return areas("open").stream()
                .filter(area ->
                        area.containsKey("ranges") && Draft.text(area, "node").equals(line))
                .findFirst();
    }

    /** Line pressures as the file now makes them [Pa]. */
    private record Pressures(double set, double idle) {
        static Pressures of(Draft draft) {
            Transmission unit = draft.unit().orElseThrow();
            return new Pressures(QuotedSet.now(unit), QuotedSet.noTorque(unit));
        }

        Pressures less(Pressures other) {
            return new Pressures(set - other.set, idle - other.idle);
        }
    }

    /**
     * Makes the line pressure without engine torque what is asked for, the set pressure staying as it is.
     *
     * @param idle [Pa], from {@link #leastIdle} to below the set pressure
     */
    void idle(double idle) {
        Map<String, Object> boost = areas("close").get(0);
        regulator.put("preload", preload);
        boost.put("area", boostArea);
        Pressures now = Pressures.of(draft);
        Pressures byPreload = slope(regulator, "preload", now);
        Pressures byArea = slope(boost, "area", now);
        double determinant = byPreload.set * byArea.idle - byArea.set * byPreload.idle;
        double spring = 1 - (idle - now.idle) * byArea.set / determinant;
        double area = 1 + (idle - now.idle) * byPreload.set / determinant;
        regulator.computeIfPresent("preload", (key, old) -> Amounts.times((String) old, spring));
        boost.computeIfPresent("area", (key, old) -> Amounts.times((String) old, area));
    }

    /** The lowest that it gives, with no preload left [Pa]. */
    double leastIdle() {
        Pressures now = Pressures.of(draft);
        Pressures byPreload = slope(regulator, "preload", now);
        Pressures byArea = slope(areas("close").get(0), "area", now);
        return now.idle + (byPreload.set * byArea.idle - byArea.set * byPreload.idle) / byArea.set;
    }

    /** Whether the regulator's spring can be made softer under a solenoid: it has a preload, and one area for the pilot pressure. */
    boolean softens() {
        return Amounts.number(Draft.text(regulator, "preload")).orElse(0) > 0
                && areas("close").size() == 1;
    }

    /** Line pressure that the spring holds alone once its preload is gone [Pa]. */
    double leastAlone() {
        double now = new CommandTables(draft.section("command")).springAlone();
        double held = preload(now);
        double perPascal = (held - preload(now * (1 - STEP))) / (STEP * now);
        return now - held / perPascal;
    }

    /** Preload with which the spring holds a line pressure alone [N]. */
    private double preload(double alone) {
        Transmission unit = draft.unit().orElseThrow();
        String forward = unit.ranges().stream()
                .filter(Range::forward)
                .map(Range::name)
                .findFirst()
                .orElseThrow();
        double none = new CommandTables(draft.section("command")).springAlone();
        return unit.command().preloadFor(unit.network(), unit.command().control(forward, none), alone);
    }

    /**
     * A softer spring under a solenoid, and a larger area for the pilot pressure, so that at its highest it holds what it held.
     *
     * @param alone line pressure that the spring holds alone [Pa]
     */
    void soften(double alone) {
        CommandTables tables = new CommandTables(draft.section("command"));
        double was = Units.parse(Draft.text(regulator, "preload"), Dimension.FORCE);
        double is = preload(alone);
        Map<String, Object> pilot = areas("close").get(0);
        double area = squareMetres(pilot) + (was - is) / tables.mostPilot();
        regulator.put("preload", Amounts.of(is, "N"));
        pilot.put("area", Amounts.of(area * SQUARE_MILLIMETRES, "mm2"));
        tables.springAlone(alone);
    }

    /** What the pressures change by where a size is twice as large. */
    private Pressures slope(Map<String, Object> keys, String key, Pressures now) {
        Object old = keys.get(key);
        keys.put(key, Amounts.times((String) old, 1 + STEP));
        Pressures more = Pressures.of(draft).less(now);
        keys.put(key, old);
        return new Pressures(more.set / STEP, more.idle / STEP);
    }

    /**
     * Line pressure in reverse at the command of the set pressure [Pa], which without an area of its own is that pressure.
     *
     * @param unit that the draft describes
     */
    double reverse(Transmission unit) {
        return QuotedSet.now(unit) * sum() / squareMetres(always().orElseThrow());
    }

    private double sum() {
        return squareMetres(always().orElseThrow()) + squareMetres(drained().orElseThrow());
    }

    /**
     * Makes the line pressure of reverse what is asked for at the command of the set pressure, those of the forward ranges staying as
     * they are.
     *
     * @param asked [Pa]
     * @throws UnitAnswers.WrongAnswerException where it is not above the set pressure, or where the relief valve opens
     */
    void reverse(double asked) {
        double set = QuotedSet.now(draft.unit().orElseThrow());
        double most = relief();
        if (!(asked > set && asked < most)) {
            throw new UnitAnswers.WrongAnswerException(
                    "reverse-pressure",
                    "it must lie above the set pressure, " + SetPressure.told(set)
                            + (most < Double.POSITIVE_INFINITY
                                    ? ", and below " + SetPressure.told(most) + ", where the relief valve opens"
                                    : ""));
        }
        double sum = sum();
        double kept = sum * set / asked;
        always().orElseThrow().put("area", Amounts.of(kept * SQUARE_MILLIMETRES, "mm2"));
        drained().orElseThrow().put("area", Amounts.of((sum - kept) * SQUARE_MILLIMETRES, "mm2"));
    }

    /** Where the line's relief valve opens [Pa]. */
    private double relief() {
        return draft.section("parts").values().stream()
                .flatMap(part -> Draft.map(part).stream())
                .filter(part -> Draft.text(part, "kind").equals("relief-valve"))
                .filter(part -> Draft.text(part, "from").equals(line) && part.containsKey("cracking-pressure"))
                .mapToDouble(part -> Units.parse(Draft.text(part, "cracking-pressure"), Dimension.PRESSURE))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double squareMetres(Map<String, Object> area) {
        return ScalingRules.squareMetres(Draft.text(area, "area"));
    }
}
