package hotidle.study;

import hotidle.geartrain.Drive;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.Clutch;
import hotidle.part.Lining;
import hotidle.part.Setting;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The ten nodes with two clutches on the line and ratios without losses: 2.5 in first, which the low clutch holds alone, 1.5 in second,
 * in which the direct clutch carries half of the turbine's torque, and 1 in third, with the low clutch as in second.
 */
final class TenNodesByRatio {

    static final double FIRST = 2.5;
    static final double SECOND = 1.5;
    static final double SHARE = 0.5;
    static final Lining LINING = new Lining(6, 0.050, 0.070, 0.12, 0.10, true);
    static final Clutch CLUTCH = new Clutch(
            Clutch.Piston.plain(0.004, 500), LINING, 1.2, new Clutch.Seal(0.08, 2e-6, 1e-3, 0), Optional.empty());

    private TenNodesByRatio() {}

    /** With the clutches' wear gaps as new, and the rest multiplied. */
    static Transmission worn(double wear) {
        Transmission unit = TenNodes.worn(wear);
        List<Placed> parts = new ArrayList<>(unit.network().parts());
        parts.add(Placed.of("low", CLUTCH, "sump", Group.RINGS, "line", "sump"));
        parts.add(Placed.of("direct", CLUTCH, "sump", Group.RINGS, "line", "sump"));
        Map<String, Range.Applied> both =
                Map.of("low", new Range.Applied(0.5, 1), "direct", new Range.Applied(SHARE, 1));
        // without losses, what the clutch's slip takes is what the turbine's fall gives: slip·share = 1 - ratio
        // after/ratio before
        double slip = (1 - SECOND / FIRST) / SHARE;
        List<Range> ranges = List.of(
                new Range("third", true, both, Map.of(), driven(1)),
                new Range("second", true, both, Map.of(), driven(SECOND)),
                new Range(
                        "first", true, Map.of("low", new Range.Applied(1, 1)), Map.of("direct", slip), driven(FIRST)));
        DutyPoint idle = unit.duties().get(0);
        DutyPoint cruise = new DutyPoint(
                "cruise",
                "",
                2000 / 60.0,
                "second",
                Setting.Lockup.OFF,
                60,
                1.1,
                OptionalDouble.of(0.9),
                1,
                idle.temperatures(),
                Map.of());
        return new Transmission(
                "geared-ten",
                unit.build(),
                new Network(unit.network().nodes(), parts),
                unit.oil(),
                unit.ambient(),
                ranges,
                unit.commanded(),
                List.of(idle, cruise),
                List.of());
    }

    private static Optional<Drive.Driven> driven(double ratio) {
        return Optional.of(new Drive.Driven(ratio, ratio, Map.of(), Map.of(), Map.of(), Map.of(), ratio - 1, 0));
    }
}
