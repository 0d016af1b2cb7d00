package hotidle.heat;

import hotidle.assess.Figures;
import hotidle.assess.Roles;
import hotidle.geartrain.Drive;
import hotidle.law.OpenPackDrag;
import hotidle.network.Placed;
import hotidle.oil.OilAt;
import hotidle.part.Bushing;
import hotidle.part.Clutch;
import hotidle.part.Converter;
import hotidle.part.Cooler;
import hotidle.part.FaceGap;
import hotidle.part.Lining;
import hotidle.part.PumpChamber;
import hotidle.part.Setting;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.HeatInputs;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Heat in one state of a unit, its temperatures being given. Past 300 lines, since every source and sink stands beside the sum that
 * they must close to.
 *
 * <pre>
 * Oil        keeps its enthalpy where it is throttled and mixes at nodes; a chamber's shaft power goes into what it displaces
 * Converter  T·ω·(1 − torque ratio·speed ratio), its oil well mixed
 * Pan        well mixed; what films, faces beside a chamber's own, packs, meshes and churning make falls into it
 * Sum        of all items = what is stored, to rounding: oil goes round, so that no path is counted twice
 * </pre>
 *
 * @param items          sources and sinks, in the order of {@link HeatItem.Kind}
 * @param sumpRate       heat that stays in the sump [W]; 0 at rest
 * @param converterRate  heat that stays in the converter [W]; 0 without one
 * @param temperatures   of the oil at each node [K]
 * @param coolerOut      of the oil that leaves the cooler [K]; empty without oil through it
 * @param inlet          of the oil at the pump's inlet [K]; empty without one
 */
public record HeatFlows(
        List<HeatItem> items,
        double sumpRate,
        double converterRate,
        Map<String, Double> temperatures,
        OptionalDouble coolerOut,
        OptionalDouble inlet) {

    private static final String CONVERTER = "\0converter";

    public HeatFlows {
        items = List.copyOf(items);
        temperatures = Map.copyOf(temperatures);
    }

    /** Heat of one kind [W]. */
    public double watts(HeatItem.Kind kind) {
        return items.stream()
                .filter(item -> item.kind() == kind)
                .mapToDouble(HeatItem::watts)
                .sum();
    }

    /** All that warms the unit [W]. */
    public double generated() {
        return items.stream()
                .filter(item -> !item.sink())
                .mapToDouble(HeatItem::watts)
                .sum();
    }

    /** Sources less sinks less what is stored, over the sources [-]: 0 but for rounding. */
    public double imbalance() {
        double sum = items.stream().mapToDouble(HeatItem::watts).sum();
        return (sum - sumpRate - converterRate) / Math.max(generated(), 1);
    }

    /**
     * The heat of a state.
     *
     * @param unit      whose heat inputs are given
     * @param duty      whose speed ratio is known
     * @param roles     of the unit's parts
     * @param state     solved at these temperatures
     * @param sump      temperature of the pan [K]
     * @param converter temperature of the oil that leaves the converter [K]
     */
    static HeatFlows of(Transmission unit, DutyPoint duty, Roles roles, Solution state, double sump, double converter) {
        return new Reckoning(unit, duty, roles, state, sump, converter).flows();
    }

    /** The work of one state. */
    private static final class Reckoning {
        private final Transmission unit;
        private final HeatInputs inputs;
        private final DutyPoint duty;
        private final Roles roles;
        private final Solution state;
        private final double sump;
        private final double converter;
        private final Enthalpy enthalpy;
        private final Map<String, Placed> placed = new HashMap<>();
        private final List<HeatItem> items = new ArrayList<>();

        Reckoning(Transmission unit, DutyPoint duty, Roles roles, Solution state, double sump, double converter) {
            this.unit = unit;
            inputs = unit.heat().orElseThrow();
            this.duty = duty;
            this.roles = roles;
            this.state = state;
            this.sump = sump;
            this.converter = converter;
            enthalpy = new Enthalpy(unit.oil(), sump);
            unit.network().parts().forEach(one -> placed.put(one.name(), one));
        }

        HeatFlows flows() {
            List<Solution.PartStream> streams = state.streams().stream()
                    .filter(stream -> stream.mass() != 0)
                    .toList();
            Map<String, Double> known = new HashMap<>();
            roles.sumps().forEach(node -> known.put(node, enthalpy.at(sump, state.pressure(node))));
            List<Mixing.Leg> legs = new ArrayList<>();
            streams.stream().filter(stream -> !through(stream, roles.cooler())).forEach(stream -> {
                Mixing.Leg leg = Mixing.leg(stream);
                if (through(stream, roles.converter())) {
                    known.put(CONVERTER, enthalpy.at(converter, state.pressure(leg.to())));
                    legs.add(new Mixing.Leg(CONVERTER, leg.to(), leg.mass(), 0));
                } else {
                    legs.add(new Mixing.Leg(leg.from(), leg.to(), leg.mass(), driven(stream)));
                }
            });
            Optional<Mixing.Leg> cooled = streams.stream()
                    .filter(stream -> through(stream, roles.cooler()))
                    .findFirst()
                    .map(Mixing::leg);
            Map<String, Double> mixed = mixed(legs, cooled, known);
            pumping(streams);
            throttling(streams);
            double falls = films() + faces() + turning();
            double intoConverter = converter(streams, mixed, known);
            double given = cooled.map(leg -> cooler(leg, mixed)).orElse(0.0);
            double caseLoss = inputs.caseLoss() * (sump - inputs.ambient());
            items.add(HeatItem.of(
                    HeatItem.Kind.COOLER, roles.cooler().map(Placed::name).orElse(""), -given));
            items.add(HeatItem.of(HeatItem.Kind.CASE, "", -caseLoss));
            List<Mixing.Leg> all = new ArrayList<>(legs);
            cooled.ifPresent(leg -> all.add(new Mixing.Leg(leg.from(), leg.to(), leg.mass(), -given)));
            double carried = carried(all, mixed, roles.sumps());
            Map<String, Double> temperatures = new HashMap<>();
            unit.network()
                    .nodes()
                    .forEach(node -> temperatures.put(
                            node.name(), enthalpy.temperature(mixed.get(node.name()), state.pressure(node.name()))));
            return new HeatFlows(
                    items,
                    carried + falls - caseLoss,
                    intoConverter,
                    temperatures,
                    cooled.map(leg -> OptionalDouble.of(enthalpy.temperature(
                                    mixed.get(leg.from()) - given / leg.mass(), state.pressure(leg.to()))))
                            .orElse(OptionalDouble.empty()),
                    roles.inlet()
                            .map(one -> OptionalDouble.of(
                                    temperatures.get(one.nodes().get(0))))
                            .orElse(OptionalDouble.empty()));
        }

        private boolean through(Solution.PartStream stream, Optional<Placed> part) {
            return part.filter(one -> one.name().equals(stream.part())).isPresent();
        }

        /** Shaft power that a stream is given [W]. */
        private double driven(Solution.PartStream stream) {
            return pumped(stream) && stream.name().equals("swept")
                    ? state.measure(stream.part(), PumpChamber.POWER).orElseThrow()
                    : 0;
        }

        private boolean pumped(Solution.PartStream stream) {
            return placed.get(stream.part()).part() instanceof PumpChamber;
        }

        /** Mixes twice where the cooler's own outlet comes back to its inlet, until its heat no longer moves. */
        private Map<String, Double> mixed(
                List<Mixing.Leg> legs, Optional<Mixing.Leg> cooled, Map<String, Double> known) {
            List<Mixing.Leg> all = new ArrayList<>(legs);
            cooled.ifPresent(all::add);
            Map<String, Double> mixed = Mixing.of(unit.network().nodes(), all, known, 0);
            double before = 0;
            for (int i = 0; cooled.isPresent() && i < 50; i++) {
                double given = cooler(cooled.get(), mixed);
                if (Math.abs(given - before) <= 1e-13 * Math.abs(given)) {
                    break;
                }
                before = given;
                all.set(
                        all.size() - 1,
                        new Mixing.Leg(
                                cooled.get().from(),
                                cooled.get().to(),
                                cooled.get().mass(),
                                -given));
                mixed = Mixing.of(unit.network().nodes(), all, known, 0);
            }
            return mixed;
        }

        /** Heat that the cooler takes [W]. */
        private double cooler(Mixing.Leg leg, Map<String, Double> mixed) {
            Cooler cooler = (Cooler) roles.cooler().orElseThrow().part();
            double inlet = enthalpy.temperature(mixed.get(leg.from()), state.pressure(leg.from()));
            OilAt oil = unit.oil().at(inlet, unit.ambient());
            return cooler.heat()
                    .map(heat -> cooler.given(
                            leg.mass() * oil.specificHeat(),
                            inlet,
                            state.conditions().temperatures().get(heat.medium())))
                    .orElse(0.0);
        }

        /** What held nodes are given beyond what leaves them [W]. */
        private static double carried(List<Mixing.Leg> legs, Map<String, Double> mixed, Set<String> sumps) {
            double sum = 0;
            for (Mixing.Leg leg : legs) {
                if (sumps.contains(leg.to())) {
                    sum += leg.mass() * mixed.get(leg.from()) + leg.gained();
                }
                if (sumps.contains(leg.from())) {
                    sum -= leg.mass() * mixed.get(leg.from());
                }
            }
            return sum;
        }

        /** Pressure as energy of a stream's oil at a node [J/kg]. */
        private double head(String node) {
            return state.pressure(node) / unit.oil().density(sump);
        }

        private double lost(Solution.PartStream stream) {
            return stream.mass() * (head(stream.from()) - head(stream.to()));
        }

        private void pumping(List<Solution.PartStream> streams) {
            roles.chambers()
                    .forEach(chamber -> items.add(HeatItem.of(
                            HeatItem.Kind.PUMP,
                            chamber.name(),
                            state.measure(chamber.name(), PumpChamber.POWER).orElseThrow()
                                    + streams.stream()
                                            .filter(stream -> stream.part().equals(chamber.name()))
                                            .mapToDouble(this::lost)
                                            .sum())));
        }

        private void throttling(List<Solution.PartStream> streams) {
            unit.network().parts().stream()
                    .filter(one -> !(one.part() instanceof PumpChamber))
                    .forEach(one -> {
                        double watts = streams.stream()
                                .filter(stream -> stream.part().equals(one.name()))
                                .mapToDouble(this::lost)
                                .sum();
                        if (watts != 0) {
                            items.add(new HeatItem(
                                    HeatItem.Kind.THROTTLING, Optional.of(one.group()), one.name(), watts));
                        }
                    });
        }

        private double films() {
            double sum = 0;
            for (Placed one : unit.network().parts()) {
                if (one.part() instanceof Bushing) {
                    double watts = Figures.filmPower(one.name(), state);
                    items.add(HeatItem.of(HeatItem.Kind.FILM, one.name(), watts));
                    sum += watts;
                }
            }
            return sum;
        }

        /** Faces that turn, a chamber's own apart: those are in its power [W]. */
        private double faces() {
            double sum = 0;
            for (Placed one : unit.network().parts()) {
                if (one.part() instanceof FaceGap gap && gap.turns() > 0) {
                    double watts = Figures.facePower(one.name(), state);
                    items.add(HeatItem.of(HeatItem.Kind.PUMP, one.name(), watts));
                    sum += watts;
                }
            }
            return sum;
        }

        /** What the converter's oil is given beyond what leaves with it [W]. */
        private double converter(
                List<Solution.PartStream> streams, Map<String, Double> mixed, Map<String, Double> known) {
            if (roles.converter().isEmpty()) {
                return 0;
            }
            Placed one = roles.converter().get();
            double slip = duty.engineTorque()
                    * 2
                    * Math.PI
                    * (duty.speed() - duty.torqueRatio() * duty.turbineSpeed().orElseThrow());
            boolean locking = duty.lockup() == Setting.Lockup.SLIPPING
                    && ((Converter) one.part()).lockup().isPresent();
            double lost = inputs.housingLoss() * (converter - inputs.ambient());
            items.add(HeatItem.of(locking ? HeatItem.Kind.LOCKUP_SLIP : HeatItem.Kind.CONVERTER, one.name(), slip));
            items.add(HeatItem.of(HeatItem.Kind.HOUSING, one.name(), -lost));
            double carried = streams.stream()
                    .filter(stream -> through(stream, roles.converter()))
                    .map(Mixing::leg)
                    .mapToDouble(leg -> leg.mass() * (mixed.get(leg.from()) - known.get(CONVERTER)))
                    .sum();
            return slip - lost + carried;
        }

        /** Packs, meshes and churning [W]. */
        private double turning() {
            double turbine = duty.turbineSpeed().orElseThrow();
            double power = duty.turbineTorque() * 2 * Math.PI * turbine;
            Range range = unit.range(duty.range()).orElseThrow();
            double meshes = range.driven().map(Drive.Driven::meshLoss).orElse(inputs.meshLoss()) * Math.abs(power);
            double churning = inputs.churning() * Math.abs(turbine) * 2 * Math.PI * Math.abs(turbine);
            double packs = 0;
            Map<String, Double> open = range.open();
            for (Placed one : unit.network().parts()) {
                if (open.containsKey(one.name()) && one.part() instanceof Clutch clutch) {
                    double watts = drag(clutch, open.get(one.name()) * turbine);
                    items.add(HeatItem.of(HeatItem.Kind.OPEN_PACKS, one.name(), watts));
                    packs += watts;
                }
            }
            items.add(HeatItem.of(HeatItem.Kind.MESHES, "", meshes));
            items.add(HeatItem.of(HeatItem.Kind.CHURNING, "", churning));
            return packs + meshes + churning;
        }

        private double drag(Clutch clutch, double slip) {
            if (clutch.pack().isEmpty() || !(clutch.grip() instanceof Lining lining) || slip == 0) {
                return 0;
            }
            Clutch.OpenPack pack = clutch.pack().get();
            OilAt oil = unit.oil().at(sump, unit.ambient());
            double fed = pack.feed()
                    .map(branch -> state.flow(branch) / lining.surfaces())
                    .orElse(Double.POSITIVE_INFINITY);
            double film = OpenPackDrag.filmRadius(
                    oil.viscosity(), oil.liquidDensity(), slip, lining.inner(), lining.outer(), pack.clearance(), fed);
            return 2
                    * Math.PI
                    * Math.abs(slip)
                    * OpenPackDrag.torque(
                            oil.viscosity(), slip, lining.surfaces(), lining.inner(), film, pack.clearance());
        }
    }
}
