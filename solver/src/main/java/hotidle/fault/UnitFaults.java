package hotidle.fault;

import hotidle.law.Hole;
import hotidle.law.Poppet;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.part.CheckValve;
import hotidle.part.Clutch;
import hotidle.part.Cooler;
import hotidle.part.FaceGap;
import hotidle.part.Filter;
import hotidle.part.FlatGap;
import hotidle.part.Orifice;
import hotidle.part.Part;
import hotidle.part.PumpChamber;
import hotidle.part.ReliefValve;
import hotidle.part.SealingRing;
import hotidle.part.Solenoid;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All faults that a unit can have, in the order of its parts. */
public final class UnitFaults {

    /** A fit worn by so many wear allowances is torn, not worn (chosen) [-]. */
    private static final double MOST_WEAR = 5;

    /** A spring never loses all of its rate: a broken one still stands on its pieces (assumed) [-]. */
    private static final double MOST_WEAK = 0.95;

    /** More air than this is foam, which no pump draws (the oil's own bound) [-]. */
    private static final double MOST_AIR = 0.3;

    /** A wrong hole is at most so many times as wide, or as narrow (chosen). */
    private static final double WRONG_HOLE = 2.5;

    private UnitFaults() {}

    /** The faults of a build. */
    public static List<UnitFault> of(Adjustable build) {
        List<UnitFault> faults = new ArrayList<>();
        for (Placed placed : build.unit().network().parts()) {
            wear(build, placed).ifPresent(faults::add);
            faults.addAll(others(placed));
        }
        double air = build.unit().oil().airFraction();
        if (air < MOST_AIR) {
            faults.add(new UnitFault(
                    FaultKind.OIL_AERATED,
                    "",
                    List.of(),
                    air,
                    MOST_AIR,
                    (unit, size) -> unit.filledWith(unit.oil().withAir(size))));
        }
        return faults;
    }

    /** The fault of wear that a part can have; empty where none of its sizes wears. */
    private static Optional<UnitFault> wear(Adjustable build, Placed placed) {
        List<WearSize> wears = build.dimensions().stream()
                .filter(size -> size.part().equals(placed.name()) && size.allowance() != 0)
                .toList();
        return wears.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new UnitFault(worn(placed.part()), placed.name(), wears, 0, MOST_WEAR, (unit, size) -> unit));
    }

    private static FaultKind worn(Part part) {
        if (part instanceof FlatGap) {
            return FaultKind.PLATE_WARPED;
        }
        if (part instanceof Bushing) {
            return FaultKind.HUB_WORN;
        }
        if (part instanceof FaceGap) {
            return FaultKind.FACE_WORN;
        }
        if (part instanceof SealingRing) {
            return FaultKind.RINGS_WORN;
        }
        if (part instanceof Clutch) {
            return FaultKind.SEAL_LEAKING;
        }
        return part instanceof PumpChamber ? FaultKind.PUMP_SLIPPING : FaultKind.BORE_WORN;
    }

    private static List<UnitFault> others(Placed placed) {
        Part part = placed.part();
        String name = placed.name();
        List<UnitFault> faults = new ArrayList<>();
        if (part instanceof SpoolValve valve) {
            SpoolSpring spring = valve.spring();
            faults.add(
                    of(FaultKind.VALVE_STUCK, name, spring.low(), spring.end(), SpoolValve.class, SpoolValve::stuckAt));
            faults.add(of(FaultKind.SPRING_WEAK, name, 0, MOST_WEAK, SpoolValve.class, UnitFaults::weak));
        } else if (part instanceof ReliefValve) {
            faults.add(of(FaultKind.SPRING_WEAK, name, 0, MOST_WEAK, ReliefValve.class, UnitFaults::weak));
        } else if (part instanceof CheckValve) {
            faults.add(of(FaultKind.CHECK_BALL_MISSING, name, 1, 1, CheckValve.class, (ball, size) -> gone(ball)));
        } else if (part instanceof Filter) {
            faults.add(of(
                    FaultKind.FILTER_BLOCKED,
                    name,
                    0,
                    0.999,
                    Filter.class,
                    (filter, size) -> new Filter(filter.rated(), size, filter.rise())));
        } else if (part instanceof Cooler) {
            faults.add(of(FaultKind.COOLER_BLOCKED, name, 0, 0.999, Cooler.class, Cooler::blockedBy));
        } else if (part instanceof Orifice hole) {
            double d = hole.diameter();
            faults.add(of(
                    FaultKind.ORIFICE_WRONG, name, d / WRONG_HOLE, d * WRONG_HOLE, Orifice.class, UnitFaults::bored));
        } else if (part instanceof Solenoid) {
            faults.add(of(FaultKind.SOLENOID_STUCK, name, 0, 1, Solenoid.class, Solenoid::stuckAt));
        }
        return faults;
    }

    /** What a fault makes of the part that it is in. */
    private interface PartChange<P> {
        Part of(P part, double size);
    }

    private static <P extends Part> UnitFault of(
            FaultKind kind, String name, double least, double most, Class<P> type, PartChange<P> change) {
        return new UnitFault(kind, name, List.of(), least, most, (unit, size) -> {
            Network network = unit.network();
            Placed placed = network.part(name).orElseThrow();
            Part other = change.of(type.cast(placed.part()), size);
            return unit.with(network.with(placed.with(other)), unit.assumed());
        });
    }

    private static Part weak(SpoolValve valve, double share) {
        SpoolSpring spring = valve.spring();
        return valve.with(spring.with(spring.rate() * (1 - share), spring.preload() * (1 - share)));
    }

    private static Part weak(ReliefValve valve, double share) {
        Poppet poppet = valve.poppet();
        return new ReliefValve(new Poppet(
                poppet.seat(),
                poppet.springRate() * (1 - share),
                poppet.preload() * (1 - share),
                poppet.stop(),
                poppet.dischargeCoefficient(),
                poppet.leak()));
    }

    /** The seat stands open both ways. */
    private static Part gone(CheckValve valve) {
        Poppet poppet = valve.poppet();
        return new CheckValve(new Poppet(
                poppet.seat(),
                poppet.springRate(),
                poppet.preload(),
                poppet.stop(),
                poppet.dischargeCoefficient(),
                Hole.loss(poppet.seat(), 0, poppet.dischargeCoefficient())));
    }

    private static Part bored(Orifice hole, double diameter) {
        return new Orifice(diameter, hole.length(), hole.dischargeCoefficient(), hole.count(), hole.upstream());
    }
}
