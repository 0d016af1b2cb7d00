package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.assess.Roles;
import hotidle.network.Placed;
import hotidle.part.Clutch;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.result.Unsolved;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * One build at one duty point, every limit judged.
 *
 * @param unit     the build
 * @param duty     the duty
 * @param outcome  at the duty's own speed
 * @param assessed what that state means; empty where it was not found
 * @param hub      the hub over the range of speeds; empty without a loaded bushing
 * @param held     the line held at the set pressure; empty where nothing commands one
 * @param margins  none where the state was not found
 * @param dragging clutches that press although the range does not apply them, with their pressure [Pa]
 * @param leaky    applied clutches whose pressure is far below the line, with the difference [Pa]
 */
public record Judgement(
        Transmission unit,
        DutyPoint duty,
        Outcome outcome,
        Optional<Assessment> assessed,
        Optional<HubOverSpeed> hub,
        Optional<HeldLine> held,
        List<Margin> margins,
        Map<String, Double> dragging,
        Map<String, Double> leaky) {

    /** A clutch this far below the line points to a leak in its circuit: 15 psi, common practice [Pa]. */
    public static final double LEAKY = 15 * SetPressure.PSI;

    public Judgement {
        margins = List.copyOf(margins);
        dragging = java.util.Collections.unmodifiableMap(new TreeMap<>(dragging));
        leaky = java.util.Collections.unmodifiableMap(new TreeMap<>(leaky));
    }

    /**
     * Judges.
     *
     * @param speeds engine speeds over which the hub's film and load are searched [rev/s], rising
     */
    public static Judgement of(Transmission unit, DutyPoint duty, List<Double> speeds) {
        return new DutyChain(duty.name(), speeds).judged(unit, duty);
    }

    /** The same of a unit that differs from this one in nothing but how its other duties are driven. */
    public Judgement in(Transmission other) {
        return new Judgement(other, duty, outcome, assessed, hub, held, margins, dragging, leaky);
    }

    /**
     * One margin alone, solved without what others need.
     *
     * @param speeds as in {@link #of}
     * @return empty where no state was found, or the margin is not judged at the duty
     */
    static Optional<Margin> one(Transmission unit, DutyPoint duty, List<Double> speeds, Key key) {
        return Optional.ofNullable(
                new DutyChain(duty.name(), speeds).margins(unit, Set.of(key)).get(key));
    }

    /**
     * The margins that a state has by itself, whether it is solved or not: the hub's at the state's own speed, and not regulation,
     * which is asked with the line held.
     */
    static Map<Key, Margin> at(Transmission unit, DutyPoint duty, Solution state) {
        Assessment assessed = Assessment.of(unit, duty, state);
        Optional<HubOverSpeed> hub = assessed.roles().hub().map(placed -> HubOverSpeed.alone(state, placed));
        Map<Key, Margin> margins = new LinkedHashMap<>();
        for (Margin margin : new Limits(assessed).all(Optional.empty(), hub)) {
            margins.put(Key.of(duty, margin), margin);
        }
        return margins;
    }

    /** The applied clutches, the lockup among them. */
    public static List<Margin> grips(Assessment assessed) {
        return new Limits(assessed).grips();
    }

    /** The applied clutches, the lockup among them, that have too little pressure for their torque. */
    public static List<Margin> slipping(Assessment assessed) {
        return new Limits(assessed)
                .grips().stream()
                        .filter(margin -> margin.verdict() == Margin.Verdict.FAILS)
                        .toList();
    }

    /** Clutches that press although the range does not apply them, with their pressure [Pa]. */
    public static Map<String, Double> dragging(Assessment assessed) {
        return new Limits(assessed).dragging();
    }

    /** Which limit at which duty. */
    public record Key(String duty, Margin.Kind kind, String part) {
        static Key of(DutyPoint duty, Margin margin) {
            return new Key(duty.name(), margin.kind(), margin.part());
        }
    }

    /** What a reader asks of the state; empty where it was not found. */
    public Optional<Figures> figures() {
        return assessed.map(Assessment::figures);
    }

    /** Why the pump cannot hold the line; empty where it can, or where that is not judged. */
    public Optional<PumpShortage> shortage() {
        return PumpShortage.of(this);
    }

    /** What the clutch of a margin, or the lockup, has to carry. */
    public GripLoad gripLoad(Margin margin) {
        return GripLoad.of(unit, duty, margin.part());
    }

    /** Clutches that press although the range does not apply them. */
    public List<DraggingClutch> draggingClutches() {
        return dragging.entrySet().stream()
                .map(one -> new DraggingClutch(
                        duty.name(),
                        duty.range(),
                        one.getKey(),
                        one.getValue(),
                        ((Clutch) unit.network()
                                        .part(one.getKey())
                                        .orElseThrow()
                                        .part())
                                .yields()))
                .toList();
    }

    /** The hub where its film is thinnest; empty where no film is known. */
    public Optional<HubLoad> hubWhereThinnest() {
        String name = Roles.of(unit).hub().map(Placed::name).orElse("");
        return hub.flatMap(HubOverSpeed::thinnest).map(state -> HubLoad.of(name, state));
    }

    /** Why it is not known whether the pump could hold the line; empty where it is, or where nothing is commanded. */
    public Optional<Unsolved> regulationNotKnown() {
        return held.flatMap(HeldLine::unsolved);
    }

    /** Speeds at which hub film and load are not known, since no state was found there [rev/s]. */
    public List<Double> hubNotKnown() {
        return hub.map(HubOverSpeed::unsolved).orElse(List.of());
    }

    /** Whether this is the slowest duty and its line is not held, or not known. */
    boolean lowAtIdle() {
        boolean regulated = figures().map(Figures::regulated).orElse(false);
        return held.map(line -> LowAtIdle.at(unit, duty, regulated, line))
                .orElseGet(() -> LowAtIdle.at(unit, duty, regulated));
    }

    /** Whether everything asked for is known. */
    public boolean known() {
        return outcome.state().isPresent()
                && regulationNotKnown().isEmpty()
                && hubNotKnown().isEmpty();
    }

    /** The margin with the least headroom of those that are known to fail or to hold. */
    public Optional<Margin> least() {
        return margins.stream().filter(Margin::known).min(Comparator.comparingDouble(Margin::headroom));
    }

    /** The margins of which it is not known whether they hold: named beside every answer that is given without them. */
    public List<Margin> undecided() {
        return margins.stream().filter(margin -> !margin.known()).toList();
    }

    /**
     * The margin that is told first: the one with the least headroom, or that of the pump where the least one only follows from it.
     */
    public Optional<Margin> first() {
        return least().map(worst -> margins.stream()
                .filter(margin -> margin.kind() == Margin.Kind.REGULATION
                        && margin.verdict() == Margin.Verdict.FAILS
                        && followsFromPump(worst))
                .findFirst()
                .orElse(worst));
    }

    /** Whether a margin fails because the pump has too little oil: what the regulator feeds, and what a low line presses. */
    public boolean followsFromPump(Margin margin) {
        boolean low = assessed.map(one -> !one.figures().regulated()).orElse(false);
        return margin.verdict() == Margin.Verdict.FAILS
                && switch (margin.kind()) {
                    case LUBRICATION, COOLER, CONVERTER_CHARGE -> true;
                    case APPLY, APPLY_SLIDING, LOCKUP -> low;
                    default -> false;
                };
    }
}
