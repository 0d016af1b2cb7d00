package hotidle.cli;

import hotidle.answer.air.AirAnswer;
import hotidle.circuits.text.Dimension;
import hotidle.network.Placed;
import hotidle.oil.OilAt;
import hotidle.part.AnnularGap;
import hotidle.study.AirStand;
import hotidle.study.AirTest;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a land leaks by its vacuum or air test. */
@Command(
        name = "air",
        mixinStandardHelpOptions = true,
        description = {
            "Turns the reading of a vacuum or air test of a land into its oil leak, by the stand's own calibration with known holes.",
            "For example:",
            "  hotidle air shuttle-five manual-valve-front --blocked 25inHg --hole 1mm=5inHg --reading 18inHg"
        })
final class AirCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Parameters(index = "1", paramLabel = "LAND", description = "the land that was tested: a part of kind annular-gap")
    String land;

    @Mixin
    StandOptions stand;

    @Mixin
    private OneBuildOption build;

    @Option(
            names = "--duty",
            paramLabel = "NAME",
            description = "driving condition whose oil temperature is taken. Default: the slowest one")
    String duty;

    @Option(
            names = "--drop",
            paramLabel = "PRESSURE",
            defaultValue = "100psi",
            description = "pressure drop under which the oil leaks. Default: ${DEFAULT-VALUE}")
    String drop;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        double under = OptionValues.quantity("--drop", drop, Dimension.PRESSURE);
        if (!(under > 0)) {
            throw new WrongInputException("hotidle: --drop " + drop + ": oil leaks under a drop above zero");
        }
        AirStand calibrated = stand.calibrated();
        Adjustable of = build.of(asked.load());
        Transmission unit = of.unit();
        Placed placed = Lands.named(land, unit);
        AnnularGap gap = (AnnularGap) placed.part();
        DutyPoint hot = duty == null ? OptionValues.slowest(unit) : OptionValues.duty(unit, duty);
        OilAt oil = unit.conditions(hot).oil(placed);
        AirTest.TestedLand tested = new AirTest.TestedLand(gap.fit().inner(), gap.length(), gap.eccentricity());
        return Printed.print(
                spec,
                asked.shared,
                new AirAnswer(
                        asked.shared.units(),
                        unit.circuit(),
                        land,
                        gap.fit().inner(),
                        of.dimension(land + ".bore").map(size -> size.limit()).orElse(OptionalDouble.empty()),
                        under,
                        oil.viscosity(under / 2),
                        gap.fit().gap(oil.temperature()) - gap.fit().gap(calibrated.temperature()),
                        hot.name(),
                        stand.holes(),
                        stand.readings().stream()
                                .map(reading -> new AirAnswer.Tested(
                                        reading, AirTest.of(calibrated, stand.absolute("--reading", reading), tested)))
                                .toList()));
    }
}
