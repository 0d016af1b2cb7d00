package hotidle.study.gauge;

import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.AnnularGap;
import hotidle.part.Clutch;
import hotidle.part.FaceGap;
import hotidle.part.FlatGap;
import hotidle.part.SealingRing;
import java.util.stream.Collectors;

/**
 * Which faults no gauge can ever tell apart: leaks between the same two places. Whether the oil leaves past a bore or under a plate is
 * the same to every other part of the circuit.
 */
public final class Galleries {

    private Galleries() {}

    /** A name that faults share which no gauge tells apart: the two nodes of a leak, the fault's own name for all others. */
    public static String of(Network network, UnitFault fault) {
        if (fault.kind().sizeOf() != FaultKind.SizeOf.WEAR) {
            return fault.name();
        }
        Placed placed = network.part(fault.part()).orElseThrow();
        boolean leak = placed.part() instanceof AnnularGap
                || placed.part() instanceof FlatGap
                || placed.part() instanceof FaceGap
                || placed.part() instanceof SealingRing
                || placed.part() instanceof Clutch;
        return leak ? placed.nodes().stream().sorted().collect(Collectors.joining(" to ")) : fault.name();
    }
}
