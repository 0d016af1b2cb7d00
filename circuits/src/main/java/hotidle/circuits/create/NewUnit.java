package hotidle.circuits.create;

import hotidle.circuits.text.AssumedMark;
import hotidle.transmission.SetPressure;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
        by = new ScaleFactors(
                UnitAnswers.ratio(answers.displacement(), ready.displacement()),
                UnitAnswers.ratio(answers.setPressure(), ready.set()),
                UnitAnswers.ratio(answers.engineTorque(), ready.torque()),
                UnitAnswers.ratio(answers.coolerFlow(), ready.coolerFlow()),
                UnitAnswers.ratio(answers.lubrication(), ready.lubrication()),
                UnitAnswers.ratio(answers.boreDiameter(), ready.boreDiameter()));
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
        made.scale();
        return made.written(true, made.lubrication());
    }

    /** The same without what to measure first, which takes most of the time. */
    static String quick(String name, ReadyUnit ready, UnitAnswers answers) {
        NewUnit made = new NewUnit(name, ready, answers);
        made.scale();
        return made.written(false, made.lubrication()).text();
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
        for (String clutch : answers.clutches().keySet()) {
            boolean there = Draft.map(parts.get(clutch))
                    .map(part -> part.containsKey("piston-area"))
                    .orElse(false);
            if (!there) {
                throw new UnitAnswers.WrongAnswerException(
                        "clutch",
                        clutch + " is no clutch or band of it; those are " + String.join(", ", pistons(parts)));
            }
        }
        Map<String, Object> command = draft.section("command");
        String regulator = Draft.text(command, "regulator");
        ScalingRules rules = new ScalingRules(by, answers, HotGaps.of(ready.unit()));
        parts.forEach((part, keys) -> rules.scale(part, Draft.map(keys).orElseThrow(), part.equals(regulator)));
        parts.values().forEach(NewUnit::unmeasured);
        CommandTables tables = new CommandTables(command);
        if (tables.there()) {
            tables.scale(ready.unit().command().pilot().orElseThrow(), by, answers);
        }
        draft.section("duty")
                .values()
                .forEach(duty -> Draft.map(duty)
                        .ifPresent(keys -> keys.computeIfPresent(
                                "engine-torque", (key, old) -> Amounts.times((String) old, by.torque()))));
        GatheredBores.gather(draft, answers.boreCount());
        Map<String, Object> root = draft.root();
        root.remove("jobs"); // of another shop, on another unit
        withoutStrength(draft.section("gearsets"));
        root.put("circuit", name);
        root.put("about", "unit of our own, scaled from " + ready.name());
        root.put("builds", new LinkedHashMap<>(Map.of("fresh", Map.of("about", "all fits new"))));
        draft.fault().ifPresent(fault -> {
            throw new UnitAnswers.WrongAnswerException("", "such a unit would not pass check, " + fault);
        });
        RegulatorFit fit = new RegulatorFit(draft);
        if (!tables.there()) {
            answers.idlePressure().ifPresent(fit::idle);
        }
        answers.reversePressure().ifPresent(fit::reverse);
    }

    /** Sized where it was asked for, or where a branch gets too little that has enough in the ready unit. */
    private Optional<LubricationFit> lubrication() {
        boolean asked = answers.lubrication().isPresent();
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

    private static List<String> pistons(Map<String, Object> parts) {
        return parts.entrySet().stream()
                .filter(part -> Draft.map(part.getValue()).orElseThrow().containsKey("piston-area"))
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
        if (answers.setPressure().isPresent()) {
            new CommandTables(draft.section("command")).known();
        }
        parts.forEach((part, value) -> {
            Map<String, Object> keys = Draft.map(value).orElseThrow();
            String kind = Draft.text(keys, "kind");
            if (answers.displacement().isPresent()) {
                sure(keys, "displacement");
            }
            if (answers.clutch(part).isPresent()) {
                sure(keys, "piston-area");
            }
            if (kind.equals("cooler") && answers.coolerFlow().isPresent()) {
                sure(keys, "flow");
            }
            if (kind.equals("converter") && answers.converterFeed().isPresent()) {
                keys.put("charge-needed", Amounts.of(answers.converterFeed().getAsDouble() / SetPressure.PSI, "psi"));
            }
            if (kind.equals("annular-gap") && answers.boreCount().isPresent()) {
                sure(keys, "count");
            }
        });
    }

    private static void sure(Map<String, Object> keys, String key) {
        keys.computeIfPresent(key, (same, text) -> AssumedMark.without((String) text));
    }
}
