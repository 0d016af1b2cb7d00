package hotidle.circuits.create;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import hotidle.part.Bushing;
import hotidle.part.PumpChamber;
import hotidle.study.IdleMargins;
import hotidle.transmission.QuotedSet;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A ready circuit that a unit of one's own is to be like: what it has, and which questions make sense of it. */
public final class ReadyUnit {

    private final String name;
    private final String text;
    private final Draft draft;
    private final Transmission unit;

    private ReadyUnit(String name, String text) {
        this.name = name;
        this.text = text;
        draft = Draft.of(text);
        unit = CircuitReader.read(text, name).circuit().orElseThrow().unit();
    }

    /**
     * Of a good file.
     *
     * @param text complete in itself
     */
    public static ReadyUnit of(String name, String text) {
        return new ReadyUnit(name, text);
    }

    /** What it is called. */
    public String name() {
        return name;
    }

    /** A draft of its own to change. */
    Draft draft() {
        return Draft.of(text);
    }

    Transmission unit() {
        return unit;
    }

    double displacement() {
        return unit.network().parts().stream()
                .filter(placed -> placed.part() instanceof PumpChamber)
                .mapToDouble(placed -> ((PumpChamber) placed.part()).displacement())
                .sum();
    }

    double set() {
        return unit.commanded().isPresent() ? QuotedSet.now(unit) : 0;
    }

    double torque() {
        return unit.duties().stream()
                .mapToDouble(duty -> duty.engineTorque())
                .max()
                .orElse(0);
    }

    double coolerFlow() {
        return sum("cooler", "flow");
    }

    double lubrication() {
        return sum("lube-branch", "needs");
    }

    private double sum(String kind, String key) {
        return draft.section("parts").values().stream()
                .flatMap(part -> Draft.map(part).stream())
                .filter(part -> Draft.text(part, "kind").equals(kind) && part.containsKey(key))
                .mapToDouble(part -> Units.parse(Draft.text(part, key), Dimension.FLOW))
                .sum();
    }

    double boreDiameter() {
        return GatheredBores.of(draft).stream()
                .filter(bore -> bore.containsKey("valve"))
                .mapToDouble(bore -> Units.parse(Draft.text(bore, "valve"), Dimension.LENGTH))
                .average()
                .orElse(0);
    }

    double hubDiameter() {
        return draft.section("parts").values().stream()
                .flatMap(part -> Draft.map(part).stream())
                .filter(part -> Draft.text(part, "kind").equals("bushing"))
                .mapToDouble(part -> Units.parse(Draft.text(part, "hub"), Dimension.LENGTH))
                .findFirst()
                .orElse(0);
    }

    private OptionalDouble hubClearance() {
        return unit.network().parts().stream()
                .filter(placed -> placed.part() instanceof Bushing)
                .map(placed -> ((Bushing) placed.part()).fit())
                .mapToDouble(fit -> fit.outer() - fit.inner())
                .findFirst();
    }

    /** What of the line pressure without engine torque its regulator's spring holds alone [-]; for one that a solenoid commands. */
    double springShare() {
        return new CommandTables(draft.section("command")).springAlone() / QuotedSet.noTorque(unit);
    }

    /** Friction faces of the clutches that some ranges apply; no range named: all. */
    public Map<String, Integer> faces(List<String> ranges) {
        Map<String, Integer> faces = new LinkedHashMap<>();
        pistons("clutch", ranges)
                .forEach(clutch -> faces.put(clutch, (int) Amounts.number(Draft.text(draft.part(clutch), "surfaces"))
                        .orElseThrow()));
        return faces;
    }

    /** What it has of a question that asks for a quantity [SI], or a count. */
    public Map<String, OptionalDouble> now() {
        Map<String, OptionalDouble> now = new LinkedHashMap<>();
        now.put("displacement", known(displacement()));
        now.put("engine-torque", known(torque()));
        now.put("set-pressure", known(set()));
        now.put("idle-speed", IdleSpeed.of(this));
        now.put("converter-feed", converterFeed());
        now.put("cooler-flow", known(coolerFlow()));
        now.put("lubrication", known(lubrication()));
        now.put("hub-diameter", known(hubDiameter()));
        now.put("hub-clearance", hubClearance());
        now.put("bore-diameter", known(boreDiameter()));
        now.put(UnitAnswers.BORES, known(GatheredBores.of(draft).size()));
        return now;
    }

    /**
     * What a unit like it has of a question, after some answers: line pressures at idle and in reverse follow from the set pressure.
     *
     * @throws UnitAnswers.WrongAnswerException where an answer cannot be taken
     */
    public OptionalDouble after(UnitAnswers answers, String question) {
        if (question.equals("hub-diameter")) {
            return known(hubDiameter() * ScaleFactors.of(answers, this).hub());
        }
        if (!question.equals("idle-pressure") && !question.equals("reverse-pressure")) {
            return now().getOrDefault(question, OptionalDouble.empty());
        }
        Draft tried = NewUnit.tried(this, answers);
        Transmission scaled = tried.unit().orElse(unit);
        return question.equals("idle-pressure")
                ? IdleMargins.gauge(scaled)
                : OptionalDouble.of(new RegulatorFit(tried).reverse(scaled));
    }

    private OptionalDouble converterFeed() {
        return draft.section("parts").values().stream()
                .flatMap(part -> Draft.map(part).stream())
                .filter(part -> Draft.text(part, "kind").equals("converter") && part.containsKey("charge-needed"))
                .mapToDouble(part -> Units.parse(Draft.text(part, "charge-needed"), Dimension.PRESSURE))
                .findFirst();
    }

    private static OptionalDouble known(double value) {
        return value > 0 ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** Why a question cannot be answered for a unit like it; empty where it can. */
    public Optional<String> cannot(String question) {
        RegulatorFit fit = new RegulatorFit(draft);
        String why =
                switch (question) {
                    case "idle-pressure" ->
                        new CommandTables(draft.section("command")).there() || fit.boostedByThrottle()
                                ? ""
                                : "has neither a table of line pressure nor a throttle pressure that boosts its regulator";
                    case "reverse-pressure" ->
                        fit.drainsInReverse()
                                ? ""
                                : "has no area of its regulator that is drained in reverse, so that reverse has the line"
                                        + " pressure of any range";
                    case "ranges" -> applied().isEmpty() ? "has no range that applies a clutch" : "";
                    case "clutch", "faces" ->
                        pistons("clutch").isEmpty() && pistons("band").isEmpty() ? "has no clutch" : "";
                    case "hub-diameter", "hub-clearance" ->
                        now().get(question).isPresent() ? "" : "has no bushing on the pump's hub";
                    default ->
                        now().getOrDefault(question, OptionalDouble.empty()).isPresent()
                                ? ""
                                : "has nothing of the kind";
                };
        return why.isEmpty() ? Optional.empty() : Optional.of(name + " " + why);
    }

    /** Clutches and bands of each range that applies any, in the order of the file. */
    public Map<String, Set<String>> applied() {
        Map<String, Set<String>> applied = new LinkedHashMap<>();
        for (Range range : unit.ranges()) {
            Set<String> clutches = new LinkedHashSet<>(draft.section("parts").keySet());
            clutches.retainAll(range.applied().keySet());
            if (!clutches.isEmpty()) {
                applied.put(range.name(), clutches);
            }
        }
        return applied;
    }

    /**
     * Its clutches that some ranges apply.
     *
     * @param kind   clutch or band
     * @param ranges names; none named: all
     */
    public List<String> pistons(String kind, List<String> ranges) {
        Set<String> used = new LinkedHashSet<>();
        applied().forEach((range, clutches) -> {
            if (ranges.isEmpty() || ranges.contains(range)) {
                used.addAll(clutches);
            }
        });
        return pistons(kind).stream().filter(used::contains).toList();
    }

    private List<String> pistons(String kind) {
        return draft.section("parts").entrySet().stream()
                .filter(part -> Draft.map(part.getValue())
                        .map(keys -> Draft.text(keys, "kind").equals(kind) && keys.containsKey("piston-area"))
                        .orElse(false))
                .map(Map.Entry::getKey)
                .toList();
    }

    /**
     * What is wrong with answers, if they are put to it; the first of them.
     *
     * @return empty where all can be taken
     */
    public Optional<UnitAnswers.WrongAnswerException> wrong(UnitAnswers answers) {
        try {
            NewUnit.tried(this, answers);
            return Optional.empty();
        } catch (UnitAnswers.WrongAnswerException wrong) {
            return Optional.of(wrong);
        }
    }
}
