package hotidle.study.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.part.AnnularGap;
import hotidle.part.Fit;
import hotidle.part.LubeBranch;
import hotidle.part.Setting;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * A bushing's gap between two held pressures whose circumference is the sum of two widths: its slow flow is linear in both, so that
 * mean, variance and shares of the lubrication's headroom are known in closed form.
 */
class LinearCircuitTest {

    private static final double GAP = 20e-6;
    private static final double LENGTH = 0.1;
    private static final double DROP = 1e4;

    private static final List<WearSize> WIDTHS = List.of(
            new WearSize(
                    "lube",
                    "one",
                    WearSize.SizeKind.LENGTH,
                    0.05,
                    0.05,
                    OptionalDouble.of(0.07),
                    OptionalDouble.empty()),
            new WearSize(
                    "lube",
                    "other",
                    WearSize.SizeKind.LENGTH,
                    0.04,
                    0.04,
                    OptionalDouble.of(0.05),
                    OptionalDouble.empty()));

    private static Transmission unit(double width) {
        double diameter = width / Math.PI;
        AnnularGap gap = new AnnularGap(Fit.same(diameter + GAP, diameter - GAP), LENGTH, 0);
        Placed lube = Placed.of("lube", new LubeBranch(gap, 1e-9), "sump", Group.LUBE, "supply", "sump");
        Placed tail = Placed.of("tail", gap, "sump", Group.LUBE, "supply", "tail");
        Oil.Walther walther =
                Oil.Walther.through(new Oil.ViscosityPoint(313.15, 34.0e-6), new Oil.ViscosityPoint(373.15, 7.4e-6));
        Oil oil = new Oil("invented", walther, 850, 0.65, 0, 0, 7e4);
        DutyPoint hot = new DutyPoint(
                "hot",
                "",
                10,
                "first",
                Setting.Lockup.OFF,
                0,
                1,
                OptionalDouble.empty(),
                1,
                Map.of("sump", 373.15),
                Map.of());
        return new Transmission(
                "linear",
                "",
                new Network(
                        List.of(Node.held("sump", 0), Node.held("supply", DROP), Node.free("tail")),
                        List.of(lube, tail)),
                oil,
                101_325,
                List.of(new Range("first", true, Map.of())),
                Optional.empty(),
                List.of(hot),
                List.of());
    }

    private static Adjustable build() {
        return new Adjustable(
                unit(0.09),
                WIDTHS,
                sizes -> unit(sizes.getOrDefault("lube.one", 0.05) + sizes.getOrDefault("lube.other", 0.04)));
    }

    private static double headroom(double width) {
        Transmission unit = unit(width);
        return new hotidle.study.DutyMargins(unit, "hot")
                .of(unit)
                .orElseThrow()
                .values()
                .iterator()
                .next()
                .headroom();
    }

    @Test
    void meanVarianceAndSharesAreThoseOfTheClosedForm() {
        List<SizePrior> priors = Unmeasured.of(build(), Unmeasured.FitState.WORN);
        SpreadTally tally = new SpreadRun(new SpreadQuestion(build(), priors, List.of("hot"), 5000, 2000, 4))
                .run(SpreadRun.RunPart.WHOLE, 2, (number, unit) -> {}, () -> {});
        MarginTally lubrication = tally.margins().get(0);
        assertEquals(Margin.Kind.LUBRICATION, lubrication.key().kind());
        double perWidth = (headroom(0.16) - headroom(0.09)) / 0.07;
        assertEquals(headroom(0.09), perWidth * 0.09 - 1, 1e-3, "linear in the width");
        double mean = perWidth * (priors.get(0).mean() + priors.get(1).mean()) - 1;
        double one = Math.pow(perWidth * priors.get(0).standardDeviation(), 2);
        double other = Math.pow(perWidth * priors.get(1).standardDeviation(), 2);
        // Latin hypercubes see the mean of what is linear far better than plain sampling would
        double plain = Math.sqrt((one + other) / 5000);
        assertEquals(mean, lubrication.headroom().mean(), plain / 4);
        assertEquals(one + other, lubrication.headroom().variance(), 0.05 * (one + other));
        near(one / (one + other), lubrication.drivers().first(0));
        near(other / (one + other), lubrication.drivers().first(1));
        near(one / (one + other), lubrication.drivers().total(0));
        near(other / (one + other), lubrication.drivers().total(1));
    }

    private static void near(double share, SobolSums.VarianceShare found) {
        assertTrue(found.error() < 0.05, "error " + found.error());
        assertEquals(share, found.value(), 4 * found.error());
    }
}
