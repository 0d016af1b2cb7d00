package hotidle.circuits.create;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.AssumedMark;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import hotidle.part.PumpChamber;
import hotidle.transmission.Command;
import hotidle.transmission.QuotedSet;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes the file of a unit of one's own from a ready circuit and what is known of the unit. */
public final class NewUnit {

    private final String name;
    private final String like;
    private final UnitAnswers answers;
    private final Draft draft;
    private final Transmission ready;
    private final ScaleFactors by;

    private NewUnit(String name, String like, String text, UnitAnswers answers) {
        this.name = name;
        this.like = like;
        this.answers = answers;
        draft = Draft.of(text);
        DescribedCircuit described = CircuitReader.read(text, like).circuit().orElseThrow();
        ready = described.unit();
        by = factors();
    }

    /**
     * The text of the file.
     *
     * @param name of the new circuit
     * @param like name of the ready circuit
     * @param text of the ready circuit, complete in itself
     * @throws UnitAnswers.WrongAnswerException where an answer cannot be taken
     */
    public static String of(String name, String like, String text, UnitAnswers answers) {
        return new NewUnit(name, like, text, answers).text(true);
    }

    /** The same without what to measure first, which takes most of the time. */
    static String quick(String name, String like, String text, UnitAnswers answers) {
        return new NewUnit(name, like, text, answers).text(false);
    }

    private ScaleFactors factors() {
        return new ScaleFactors(
                UnitAnswers.ratio(answers.displacement(), displacement()),
                UnitAnswers.ratio(answers.setPressure(), set()),
                UnitAnswers.ratio(answers.engineTorque(), torque()),
                UnitAnswers.ratio(answers.coolerFlow(), sum("cooler", "flow", Dimension.FLOW)),
                UnitAnswers.ratio(answers.lubrication(), sum("lube-branch", "needs", Dimension.FLOW)),
                UnitAnswers.ratio(answers.boreDiameter(), boreDiameter()));
    }

    private double displacement() {
        return ready.network().parts().stream()
                .filter(placed -> placed.part() instanceof PumpChamber)
                .mapToDouble(placed -> ((PumpChamber) placed.part()).displacement())
                .sum();
    }

    private double set() {
        return ready.commanded().isPresent() ? QuotedSet.now(ready) : 0;
    }

    private double torque() {
        return ready.duties().stream()
                .mapToDouble(duty -> duty.engineTorque())
                .max()
                .orElse(0);
    }

    private double sum(String kind, String key, Dimension dimension) {
        return draft.section("parts").values().stream()
                .flatMap(part -> Draft.map(part).stream())
                .filter(part -> Draft.text(part, "kind").equals(kind) && part.containsKey(key))
                .mapToDouble(part -> Units.parse(Draft.text(part, key), dimension))
                .sum();
    }

    private double boreDiameter() {
        return GatheredBores.of(draft).stream()
                .filter(bore -> bore.containsKey("valve"))
                .mapToDouble(bore -> Units.parse(Draft.text(bore, "valve"), Dimension.LENGTH))
                .average()
                .orElse(0);
    }

    private String text(boolean ranked) {
        if (!answers.ranges().isEmpty()) {
            new FewerRanges(draft).keep(answers.ranges());
        }
        Map<String, Object> root = draft.root();
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
        String regulator = Draft.text(draft.section("command"), "regulator");
        ScalingRules rules = new ScalingRules(by, answers);
        parts.forEach((part, keys) -> rules.scale(part, Draft.map(keys).orElseThrow(), part.equals(regulator)));
        parts.values().forEach(NewUnit::unmeasured);
        command();
        draft.section("duty")
                .values()
                .forEach(duty -> Draft.map(duty)
                        .ifPresent(keys -> keys.computeIfPresent(
                                "engine-torque", (key, old) -> Amounts.times((String) old, by.torque()))));
        GatheredBores.gather(draft, answers.boreCount());
        for (String section : List.of("oils", "parts", "ranges", "command", "duty", "heat")) {
            Amounts.mark(draft.section(section));
        }
        known(parts);
        root.remove("jobs"); // of another shop, on another unit
        withoutStrength(draft.section("gearsets"));
        root.put("circuit", name);
        root.put("about", "unit of our own, scaled from " + like);
        root.put("builds", new LinkedHashMap<>(Map.of("fresh", Map.of("about", "all fits new"))));
        root.put("parts", Likened.of(parts));
        Map<String, Object> whole = new LinkedHashMap<>(root);
        whole.put("parts", parts);
        return CircuitWriter.write(
                new ScalingComment(name, like, by).lines(ranked ? MeasureFirst.of(whole) : Optional.empty()), root);
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

    private void command() {
        Map<String, Object> command = draft.section("command");
        boolean tables = command.containsKey("line-pressure");
        if (!tables) {
            if (answers.idlePressure().isPresent()) {
                throw new UnitAnswers.WrongAnswerException(
                        "idle-pressure",
                        like + " has no table of line pressure; throttle valve and spring make it there");
            }
            return;
        }
        List<Object> rows = Draft.list(command.get("line-pressure")).orElseThrow();
        Command.Pilot pilot = ready.command().pilot().orElseThrow();
        double low = pilot.lineByTorque().at(0) * by.pressure();
        double high = pilot.lineByTorque().highest() * by.pressure();
        double idle = answers.idlePressure().orElse(low);
        double spring = pilot.pilotByLine().points().get(0).x() * by.pressure();
        if (idle < spring || idle > high * 1.0001) {
            throw new UnitAnswers.WrongAnswerException(
                    "idle-pressure",
                    String.format(
                            Locale.ROOT,
                            "it must lie between what the spring holds alone, %.0f psi, and the set pressure, %.0f psi",
                            spring / SetPressure.PSI,
                            high / SetPressure.PSI));
        }
        for (int i = 0; i < rows.size(); i++) {
            List<Object> row = Draft.list(rows.get(i)).orElseThrow();
            double was = Units.parse((String) row.get(1), Dimension.PRESSURE) * by.pressure();
            double is = high > low ? idle + (was - low) * (high - idle) / (high - low) : i == 0 ? idle : high;
            row.set(0, Amounts.times((String) row.get(0), by.torque()));
            row.set(1, Amounts.of(is / SetPressure.PSI, "psi"));
        }
        Draft.list(command.get("pilot-pressure")).orElseThrow().forEach(one -> {
            List<Object> row = Draft.list(one).orElseThrow();
            row.set(0, Amounts.times((String) row.get(0), by.pressure()));
        });
    }

    /** What was answered is no assumption. */
    private void known(Map<String, Object> parts) {
        if (answers.setPressure().isPresent()) {
            Draft.list(draft.section("command").get("line-pressure"))
                    .ifPresent(rows ->
                            rows.forEach(row -> Draft.list(row).orElseThrow().set(1, AssumedMark.without((String)
                                    Draft.list(row).orElseThrow().get(1)))));
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

    /** What the ready circuit has of a question, for who is asked [SI]. */
    public static Map<String, OptionalDouble> now(String like, String text) {
        NewUnit one = new NewUnit("now", like, text, UnitAnswers.NONE);
        Map<String, OptionalDouble> now = new LinkedHashMap<>();
        now.put("displacement", OptionalDouble.of(one.displacement()));
        now.put("engine-torque", OptionalDouble.of(one.torque()));
        now.put("set-pressure", OptionalDouble.of(one.set()));
        now.put("cooler-flow", OptionalDouble.of(one.sum("cooler", "flow", Dimension.FLOW)));
        now.put("lubrication", OptionalDouble.of(one.sum("lube-branch", "needs", Dimension.FLOW)));
        now.put("bore-diameter", OptionalDouble.of(one.boreDiameter()));
        return now;
    }
}
