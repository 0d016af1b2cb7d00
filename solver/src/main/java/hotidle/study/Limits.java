package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.assess.FilmOil;
import hotidle.assess.Margin;
import hotidle.assess.MarginNote;
import hotidle.assess.Roles;
import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.part.Clutch;
import hotidle.part.Converter;
import hotidle.part.PumpInlet;
import hotidle.part.ReliefValve;
import hotidle.part.Setting;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.HeatInputs;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All limits of an assessed state, each as a margin. Past 300 lines, since each is a few lines beside the others of its sort. */
record Limits(Assessment assessed, Transmission unit, DutyPoint duty, Roles roles, Solution state) {

    /** Region of the pan. */
    private static final String SUMP = "sump";

    Limits(Assessment assessed) {
        this(assessed, assessed.unit(), assessed.duty(), assessed.roles(), assessed.state());
    }

    List<Margin> all(Optional<HeldLine> held, Optional<HubOverSpeed> hub) {
        List<Margin> margins = new ArrayList<>();
        held.flatMap(HeldLine::balance).ifPresent(line -> margins.add(regulation(line)));
        margins.addAll(grips());
        margins.addAll(assessed.consumers());
        hub.ifPresent(over -> film(margins, over));
        roles.hub()
                .flatMap(placed -> FilmOil.of(placed, state).map(oil -> oil.margin(placed.name())))
                .ifPresent(margins::add);
        inlet().ifPresent(margins::add);
        margins.addAll(relief());
        margins.addAll(warmth());
        margins.addAll(new RatedLimits(assessed).all());
        return margins;
    }

    /** Every applied clutch, and the lockup. */
    List<Margin> grips() {
        List<Margin> margins = new ArrayList<>();
        applied().forEach((clutch, applied) -> clutch(margins, clutch, applied));
        lockup().ifPresent(margins::add);
        return margins;
    }

    private Margin regulation(HeldLine.LineBalance held) {
        return Margin.of(Margin.Kind.REGULATION, pump(), held.supply(), held.demand(), Margin.Scale.FLOW)
                .noted(Stream.of(hungry(held), starved(held), pushedBack(held), lifted())
                        .flatMap(Optional::stream)
                        .toArray(MarginNote[]::new));
    }

    /** A relief valve that lifts below the set pressure takes what the others miss. */
    private Optional<MarginNote> lifted() {
        OptionalDouble set = assessed.figures().set();
        return unit.reliefs(roles.line()).stream()
                .filter(placed -> set.isPresent() && cracking(placed) < set.getAsDouble())
                .map(placed -> MarginNote.of(MarginNote.Remark.RELIEF_LIFTS_BELOW_SET, placed.name()))
                .findFirst();
    }

    private static double cracking(Placed relief) {
        return ((ReliefValve) relief.part()).poppet().cracking();
    }

    private static Optional<MarginNote> hungry(HeldLine.LineBalance held) {
        return held.hungry().map(part -> MarginNote.of(MarginNote.Remark.SHORT_AT_FULL_FEED, part));
    }

    /** Why a variable pump brings so little, where its slide is not what it could be. */
    private static Optional<MarginNote> pushedBack(HeldLine.LineBalance held) {
        return held.slide() < Figures.FULL && held.supply() < held.demand()
                ? Optional.of(MarginNote.of(MarginNote.Remark.SLIDE_PUSHED_BACK, held.slide()))
                : Optional.empty();
    }

    /** Why a pump brings so little: cold oil does not pass the filter as fast as both chambers would take it. */
    private static Optional<MarginNote> starved(HeldLine.LineBalance held) {
        return held.filling() < Figures.FULL
                ? Optional.of(MarginNote.of(MarginNote.Remark.INLET_LIMITS_SUPPLY, held.filling()))
                : Optional.empty();
    }

    /** All chambers: which of them is short cannot be told. */
    private String pump() {
        return roles.chambers().isEmpty()
                ? roles.line()
                : roles.chambers().stream().map(Placed::name).collect(Collectors.joining(" + "));
    }

    private Map<Placed, Range.Applied> applied() {
        Map<Placed, Range.Applied> applied = new java.util.LinkedHashMap<>();
        Range range = unit.range(duty.range()).orElseThrow();
        for (Placed placed : unit.network().parts()) {
            if (placed.part() instanceof Clutch && range.applied().containsKey(placed.name())) {
                applied.put(placed, range.applied().get(placed.name()));
            }
        }
        return applied;
    }

    private void clutch(List<Margin> margins, Placed placed, Range.Applied applied) {
        Clutch clutch = (Clutch) placed.part();
        Head head = head(placed, clutch, applied.speedRatio());
        double torque = GripLoad.of(duty, applied, clutch).torque();
        double pressure = state.pressure(placed.nodes().get(0));
        for (boolean slipping : new boolean[] {false, true}) {
            margins.add(Margin.of(
                            slipping ? Margin.Kind.APPLY_SLIDING : Margin.Kind.APPLY,
                            placed.name(),
                            pressure,
                            clutch.pressureFor(torque, head.force, slipping),
                            Margin.Scale.PRESSURE)
                    .noted(head.notes.toArray(MarginNote[]::new)));
        }
    }

    /** Force of the oil's rotation [N] and what to say of it. */
    private record Head(double force, List<MarginNote> notes) {}

    /** Where the turbine's speed is not known, the lesser of a standing drum's head and that at the engine's speed. */
    private Head head(Placed placed, Clutch clutch, double speedRatio) {
        if (clutch.piston().ring().isEmpty()) {
            return new Head(0, List.of());
        }
        double density = state.conditions().setting(placed).oil().liquidDensity();
        OptionalDouble turbine = duty.turbineSpeed();
        if (turbine.isPresent()) {
            return new Head(clutch.head(density, speedRatio * turbine.getAsDouble()), List.of());
        }
        double turning = clutch.head(density, speedRatio * duty.speed());
        return new Head(Math.min(turning, 0), List.of(MarginNote.of(MarginNote.Remark.TURBINE_SPEED_NOT_GIVEN)));
    }

    private Optional<Margin> lockup() {
        return roles.converter()
                .filter(placed -> duty.lockup() != Setting.Lockup.OFF)
                .flatMap(placed -> ((Converter) placed.part())
                        .lockup()
                        .filter(clutch -> clutch.torqueArm() > 0)
                        .map(clutch -> Margin.of(
                                Margin.Kind.LOCKUP,
                                placed.name(),
                                state.measure(placed.name(), Converter.APPLY_LESS_RELEASE)
                                        .orElseThrow(),
                                clutch.dropFor(GripLoad.of(duty, clutch).torque()),
                                Margin.Scale.PRESSURE))
                        .map(this::slipping));
    }

    /** A lockup that is said to slip, though its pressure would hold it. */
    private Margin slipping(Margin lockup) {
        return duty.lockup() == Setting.Lockup.SLIPPING && lockup.headroom() >= 0
                ? lockup.noted(MarginNote.of(MarginNote.Remark.SLIPPING_WOULD_HOLD))
                : lockup;
    }

    private void film(List<Margin> margins, HubOverSpeed over) {
        Placed placed = roles.hub().orElseThrow();
        String hub = placed.name();
        double permissible = state.measure(hub, Bushing.PERMISSIBLE_FILM).orElseThrow();
        if (!over.contact().isEmpty()) {
            margins.add(Margin.notKnown(Margin.Kind.FILM, hub, permissible, Margin.Scale.LENGTH)
                    .at(over.contact().get(0))
                    .noted(MarginNote.of(MarginNote.Remark.METAL_CONTACT)));
        } else if (permissible > 0) {
            over.thinnest().ifPresent(thinnest -> margins.add(thinnest(placed, thinnest, permissible)));
        }
        over.heaviest()
                .ifPresent(heaviest -> margins.add(Margin.of(
                                Margin.Kind.UNIT_LOAD,
                                hub,
                                heaviest.measure(hub, Bushing.UNIT_LOAD).orElseThrow(),
                                heaviest.measure(hub, Bushing.PERMISSIBLE_LOAD).orElseThrow(),
                                Margin.Scale.PRESSURE)
                        .at(heaviest.conditions().speed())));
    }

    /**
     * Thinner than the roughness allows it fails; up to what a published criterion asks of machined bearings it is not known, nor
     * where the film gets less oil than a full one needs, however thick.
     */
    static Margin thinnest(Placed hub, Solution thinnest, double permissible) {
        double edge = thinnest.measure(hub.name(), Bushing.EDGE_FILM).orElseThrow();
        double published = thinnest.measure(hub.name(), Bushing.TRUMPLER_FILM).orElseThrow();
        Optional<FilmOil> less = FilmOil.of(hub, thinnest).filter(oil -> !oil.enough());
        double unsure = less.isPresent() ? Double.POSITIVE_INFINITY : Math.max(published, permissible);
        List<MarginNote> notes = new ArrayList<>();
        if (edge <= 0) {
            notes.add(MarginNote.of(MarginNote.Remark.EDGE_TOUCHES));
        }
        less.ifPresent(oil -> notes.add(MarginNote.of(MarginNote.Remark.FILM_SHORT_OF_OIL, oil.share())));
        return Margin.of(Margin.Kind.FILM, hub.name(), edge, permissible, Margin.Scale.LENGTH)
                .unsureTo(unsure)
                .at(thinnest.conditions().speed())
                .noted(notes.toArray(MarginNote[]::new));
    }

    /** Pressure at the roots of the teeth against that at which air is released; a pump that fills in part is judged by its filling. */
    private Optional<Margin> inlet() {
        return roles.inlet().map(placed -> {
            double filling = state.own(placed.name(), PumpInlet.FILLING);
            if (filling < 1) {
                return Margin.of(Margin.Kind.PUMP_INLET, placed.name(), filling, 1, Margin.Scale.SHARE)
                        .noted(MarginNote.of(MarginNote.Remark.INLET_STARVED));
            }
            double ambient = state.conditions().ambient();
            double release = state.conditions().setting(placed).oil().release();
            return Margin.of(
                    Margin.Kind.PUMP_INLET,
                    placed.name(),
                    state.measure(placed.name(), PumpInlet.ROOT_PRESSURE).orElseThrow() + ambient,
                    release + ambient,
                    Margin.Scale.PRESSURE);
        });
    }

    /**
     * A relief valve on a line that is commanded stays shut: where it lifts, it holds the line, and no longer the regulator.
     */
    private List<Margin> relief() {
        if (unit.commanded().isEmpty()) {
            return List.of();
        }
        return unit.reliefs(roles.line()).stream()
                .map(placed -> Margin.of(
                        Margin.Kind.RELIEF,
                        placed.name(),
                        state.pressure(placed.nodes().get(0))
                                - state.pressure(placed.nodes().get(1)),
                        cracking(placed),
                        Margin.Scale.PRESSURE))
                .toList();
    }

    /** Sump and what leaves the converter, where both follow from the unit's own heat. */
    private List<Margin> warmth() {
        if (!duty.settled()) {
            return List.of();
        }
        HeatInputs heat = unit.heat().orElseThrow();
        List<Margin> margins = new ArrayList<>();
        margins.add(Margin.warmth(
                Margin.Kind.OIL_TEMPERATURE, SUMP, duty.temperatures().get(SUMP), heat.oilLimit(), heat.ambient()));
        roles.converter()
                .ifPresent(converter -> margins.add(Margin.warmth(
                        Margin.Kind.CONVERTER_TEMPERATURE,
                        converter.name(),
                        duty.temperatures().get(converter.region()),
                        heat.converterLimit(),
                        heat.ambient())));
        return margins;
    }

    Map<String, Double> dragging() {
        Map<String, Double> found = new TreeMap<>();
        Set<Placed> applied = applied().keySet();
        for (Placed placed : unit.network().parts()) {
            if (placed.part() instanceof Clutch clutch && !applied.contains(placed)) {
                double pressure = state.pressure(placed.nodes().get(0));
                if (pressure > clutch.yields()) {
                    found.put(placed.name(), pressure);
                }
            }
        }
        return found;
    }

    Map<String, Double> leaky() {
        Map<String, Double> found = new TreeMap<>();
        for (Placed placed : applied().keySet()) {
            double below =
                    state.pressure(roles.line()) - state.pressure(placed.nodes().get(0));
            if (below > Judgement.LEAKY) {
                found.put(placed.name(), below);
            }
        }
        return found;
    }
}
