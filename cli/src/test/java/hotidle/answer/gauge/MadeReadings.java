package hotidle.answer.gauge;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import hotidle.study.gauge.Cause;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.GaugeFindings.Agreement;
import hotidle.study.gauge.GaugeFindings.ExpectedReading;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.Meter;
import hotidle.study.gauge.NextReading;
import hotidle.study.gauge.TestPoint;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Readings and what they say, made by hand: nothing is solved. */
final class MadeReadings {

    static final Meter LINE = new Meter("line-tap", "line", Meter.Reads.PRESSURE);
    static final Meter COOLER = new Meter("cooler", "cooler-in", Meter.Reads.FLOW);

    /** 600 rpm in drive at 100 degC, nothing said of the command. */
    static final TestPoint IDLE = new TestPoint(10, 373.15, "drive", OptionalDouble.empty(), OptionalDouble.empty());

    private MadeReadings() {}

    static GaugeReading reads(Meter meter, GaugeReading.Sense sense, double value) {
        return new GaugeReading(meter, IDLE, sense, value, value / 100);
    }

    /** A fault whose size is a share, as a weak spring. */
    static UnitFault share(FaultKind kind, String part) {
        return new UnitFault(kind, part, List.of(), 0.01, 0.5, (unit, size) -> unit);
    }

    /** A bore of 14 mm that is worn half of the 40 um from new to its limit. */
    static UnitFault bore(String part) {
        WearSize bore = new WearSize(
                part,
                "bore",
                WearSize.SizeKind.LENGTH,
                14.02e-3,
                14e-3,
                OptionalDouble.of(14.04e-3),
                OptionalDouble.empty());
        return new UnitFault(FaultKind.BORE_WORN, part, List.of(bore), 0, 3, (unit, size) -> unit);
    }

    static Cause cause(UnitFault fault, double size, double share, double hidden, boolean visible) {
        return new Cause(fault, size, size / 2, size * 2, 3.2, share, hidden, visible);
    }

    static GaugeFindings.Group group(double share, Cause... causes) {
        return new GaugeFindings.Group(share, List.of(causes));
    }

    /** One reading of 60 psi where a sound unit reads 100 psi, with a deviation of 4 psi. */
    static GaugeFindings findings(
            boolean agrees, List<GaugeFindings.Group> groups, double none, List<GaugeFindings.Pair> pairs) {
        List<Cause> causes =
                groups.stream().flatMap(group -> group.causes().stream()).toList();
        return new GaugeFindings(
                List.of(reads(LINE, GaugeReading.Sense.EXACT, 60 * PSI)),
                List.of(new ExpectedReading(100 * PSI, 4 * PSI, -10)),
                new Agreement(100, 1, agrees ? 0.5 : 1e-9, agrees),
                0,
                groups,
                none,
                pairs,
                causes,
                List.of());
    }

    static GaugeAnswer answer(GaugeFindings findings, List<NextReading> next) {
        return answer(UnitSystem.SHOP, findings, next, true, OptionalDouble.of(383.15), List.of());
    }

    static GaugeAnswer answer(
            UnitSystem units,
            GaugeFindings findings,
            List<NextReading> next,
            boolean commanded,
            OptionalDouble hottest,
            List<String> low) {
        return new GaugeAnswer(
                units,
                "rig",
                "",
                "worn",
                "day.csv",
                findings,
                next,
                new GaugeAnswer.Hardest(9, hottest, commanded ? OptionalDouble.of(200 * PSI) : OptionalDouble.empty()),
                commanded,
                low,
                Optional.empty());
    }

    static final double PSI = 6894.757293168;
}
