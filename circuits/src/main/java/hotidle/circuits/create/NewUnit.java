package hotidle.circuits.create;

import hotidle.circuits.text.AssumedMark;
import hotidle.transmission.SetPressure;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes the file of a unit of one's own from a ready circuit and what is known of the unit. */
public final class NewUnit {

    private final String name;
    private final ReadyUnit ready;
    private final UnitAnswers answers;
    private final Draft draft;
    private final ScaleFactors by;

    private NewUnit(String name, ReadyUnit ready, UnitAnswers answers) {
        this.name = name;
        this.ready = ready;
        this.answers = answers;
        draft = ready.draft();
        by = ScaleFactors.of(answers, ready);
    }

    /**
     * A unit that was made.
     *
     * @param text         of its file
     * @param measureFirst which assumed sizes move its verdict most; empty where nothing is judged, or it was not asked for
     */
    public record MadeUnit(String text, Optional<MeasureFirst> measureFirst) {}

    /**
     * Makes one.
     *
     * @param name of the new circuit
     * @throws UnitAnswers.WrongAnswerException where an answer cannot be taken
     */
    public static MadeUnit of(String name, ReadyUnit ready, UnitAnswers answers) {
        NewUnit made = new NewUnit(name, ready, answers);
        return made.whole(true);
    }

    /** The same without what to measure first, which takes most of the time. */
    static String quick(String name, ReadyUnit ready, UnitAnswers answers) {
        NewUnit made = new NewUnit(name, ready, answers);
        return made.whole(false).text();
    }

    /** What the gauge reads moves a little with what the lubrication takes. */
    private MadeUnit whole(boolean ranked) {
        scale();
        Optional<LubricationFit> lubrication = lubrication();
        lubrication.ifPresent(fit -> idlePressure());
        return written(ranked, lubrication);
    }

    /** Puts answers to a ready unit to see whether they can be taken, and what comes of them before its lubrication is sized. */
    static Draft tried(ReadyUnit ready, UnitAnswers answers) {
        NewUnit made = new NewUnit("tried", ready, answers);
        made.scale();
        return made.draft;
    }

    private void scale() {
        answers.given()
                .forEach(question -> ready.cannot(question).ifPresent(why -> {
                    throw new UnitAnswers.WrongAnswerException(question, why);
                }));
        if (!answers.ranges().isEmpty()) {
            new FewerRanges(draft).keep(answers.ranges());
        }
        Map<String, Object> parts = draft.section("parts");
        there("clutch", answers.clutches().keySet(), "piston-area", "clutch or band");
        answers.faces()
                .forEach((clutch, faces) -> Draft.map(parts.get(clutch))
                        .filter(BandToPlates::isBand)
                        .ifPresent(band -> BandToPlates.change(band, faces)));
        there("faces", answers.faces().keySet(), "surfaces", "clutch");
        Map<String, Object> command = draft.section("command");
        String regulator = Draft.text(command, "regulator");
        ScalingRules rules = new ScalingRules(by, answers, HotGaps.of(ready.unit()));
        parts.forEach((part, keys) -> rules.scale(part, Draft.map(keys).orElseThrow(), part.equals(regulator)));
        parts.values().forEach(NewUnit::unmeasured);
        CommandTables tables = new CommandTables(command);
        if (tables.there()) {
            tables.scale(by);
        }
        IdleSpeed idleSpeed = new IdleSpeed(draft, ready);
        answers.number("idle-speed").ifPresent(idleSpeed::set);
        draft.section("duty")
                .values()
                .forEach(duty -> Draft.map(duty)
                        .ifPresent(keys -> keys.computeIfPresent(
                                "engine-torque", (key, old) -> Amounts.times((String) old, by.torque()))));
        GatheredBores.gather(draft, answers.number(UnitAnswers.BORES));
        Map<String, Object> root = draft.root();
        root.remove("jobs"); // of another shop, on another unit
        withoutStrength(draft.section("gearsets"));
        root.put("circuit", name);
        root.put("about", "unit of our own, scaled from " + ready.name());
        root.put("builds", new LinkedHashMap<>(Map.of("fresh", Map.of("about", "all fits new"))));
        draft.fault().ifPresent(fault -> {
            throw new UnitAnswers.WrongAnswerException("", "such a unit would not pass check, " + fault);
        });
        answers.number("reverse-pressure").ifPresent(new RegulatorFit(draft)::reverse);
        idlePressure();
        Needs.check(draft, answers);
    }

    /** Makes the gauge at idle read what was asked for. */
    private void idlePressure() {
        OptionalDouble asked = answers.number("idle-pressure");
        if (asked.isEmpty()) {
            return;
        }
        RegulatorFit fit = new RegulatorFit(draft);
        CommandTables tables = new CommandTables(draft.section("command"));
        IdleGauge gauge = new IdleGauge(draft);
        if (!tables.there()) {
            gauge.make(
                    asked.getAsDouble(), fit.leastIdle(), "with no preload left on the regulator's spring", fit::idle);
            return;
        }
        double least = fit.softens() ? fit.leastAlone() : tables.springAlone();
        String whatLeast = fit.softens()
                ? "with no preload left on the regulator's spring"
                : "which the regulator's spring holds alone";
        double share = ready.springShare();
        List<Double> before = tables.pressures();
        gauge.make(asked.getAsDouble(), least, whatLeast, pressure -> {
            if (pressure < tables.springAlone()) {
                fit.soften(Math.max(share * pressure, least));
            }
            tables.noTorque(pressure, before);
        });
    }

    /** Refuses an answer on what the unit has not. */
    private void there(String question, Iterable<String> names, String key, String kind) {
        Map<String, Object> parts = draft.section("parts");
        for (String name : names) {
            boolean there = Draft.map(parts.get(name))
                    .map(part -> part.containsKey(key))
                    .orElse(false);
            if (!there) {
                throw new UnitAnswers.WrongAnswerException(
                        question, name + " is no " + kind + " of it; those are " + String.join(", ", with(key)));
            }
        }
    }

    /** Sized where it was asked for, or where a branch gets too little that has enough in the ready unit. */
    private Optional<LubricationFit> lubrication() {
        boolean asked = answers.has("lubrication");
        boolean starved = !answers.given().isEmpty() && LubricationFit.least(draft) < 0;
        return asked || starved ? LubricationFit.of(draft) : Optional.empty();
    }

    /** The file of what was scaled. */
    private MadeUnit written(boolean ranked, Optional<LubricationFit> lubrication) {
        Map<String, Object> root = draft.root();
        Map<String, Object> parts = draft.section("parts");
        for (String section : List.of("oils", "parts", "ranges", "command", "duty", "heat")) {
            Amounts.mark(draft.section(section));
        }
        known(parts);
        Map<String, Object> whole = new LinkedHashMap<>(root);
        root.put("parts", Likened.of(parts));
        Optional<MeasureFirst> first = ranked ? MeasureFirst.of(whole) : Optional.empty();
        return new MadeUnit(
                CircuitWriter.write(
                        new ScalingComment(name, ready.name(), by, lubrication, answers).lines(first), root),
                first);
    }

    /** What carries in the ready unit says nothing of another one; that its pinions fit is known. */
    private static void withoutStrength(Map<String, Object> train) {
        train.remove("ratings");
        for (String section : List.of("shafts", "one-way-clutches")) {
            Draft.map(train.get(section))
                    .ifPresent(named -> named.values()
                            .forEach(one -> Draft.map(one)
                                    .ifPresent(keys -> keys.keySet().retainAll(List.of("joins")))));
        }
        Draft.map(train.get("sets"))
                .ifPresent(sets -> sets.values()
                        .forEach(set -> Draft.map(set)
                                .ifPresent(keys -> keys.keySet().removeAll(List.of("pinion-teeth", "pinion-count")))));
    }

    private List<String> with(String key) {
        return draft.section("parts").entrySet().stream()
                .filter(part -> Draft.map(part.getValue()).orElseThrow().containsKey(key))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Nothing of it has been measured yet. */
    private static void unmeasured(Object part) {
        Draft.map(part).ifPresent(keys -> {
            keys.remove("measured");
            keys.values().forEach(NewUnit::unmeasured);
        });
    }

    /** What was answered is no assumption. */
    private void known(Map<String, Object> parts) {
        if (answers.has("idle-speed")) {
            new IdleSpeed(draft, ready).conditions().forEach(keys -> sure(keys, "speed"));
        }
        if (answers.has("set-pressure")) {
            new CommandTables(draft.section("command")).known();
        }
        parts.forEach((part, value) -> {
            Map<String, Object> keys = Draft.map(value).orElseThrow();
            String kind = Draft.text(keys, "kind");
            if (answers.has("displacement")) {
                sure(keys, "displacement");
            }
            if (answers.clutch(part).isPresent()) {
                sure(keys, "piston-area");
            }
            if (answers.facesOf(part).isPresent()) {
                sure(keys, "surfaces");
            }
            if (kind.equals("bushing")) {
                knownHub(keys);
            }
            if (kind.equals("cooler") && answers.has("cooler-flow")) {
                sure(keys, "flow");
            }
            if (kind.equals("converter") && answers.has("converter-feed")) {
                keys.put(
                        "charge-needed",
                        Amounts.of(answers.number("converter-feed").getAsDouble() / SetPressure.PSI, "psi"));
            }
            if (kind.equals("annular-gap") && answers.has(UnitAnswers.BORES)) {
                sure(keys, "count");
            }
        });
    }

    /** Of a bore it is the clearance that counts. */
    private void knownHub(Map<String, Object> bushing) {
        if (answers.has("hub-diameter")) {
            sure(bushing, "hub");
        }
        if (answers.has("hub-clearance")) {
            sure(bushing, "bore");
            Draft.map(bushing.get("bore")).ifPresent(sizes -> sure(sizes, "new"));
        }
    }

    private static void sure(Map<String, Object> keys, String key) {
        keys.computeIfPresent(key, (same, value) -> value instanceof String text ? AssumedMark.without(text) : value);
    }
}
