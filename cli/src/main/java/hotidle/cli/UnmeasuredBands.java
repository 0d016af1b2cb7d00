package hotidle.cli;

import hotidle.answer.compare.BuildBand;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.spread.FirstOrderBand;
import hotidle.study.spread.SizePrior;
import hotidle.study.spread.SpreadQuestion;
import hotidle.study.spread.Unmeasured;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;

/** How far the leading answers of builds may lie that have served and of which fits were not measured, as in a sheet half filled in. */
final class UnmeasuredBands {

    private UnmeasuredBands() {}

    /**
     * The bands at a duty.
     *
     * @param units  as they are shown; a build after work, with faults or at other temperatures is none of the file and has no band
     * @param speeds at which is looked for where the line holds [rev/s]
     */
    @SuppressWarnings("ReferenceEquality") // the very unit that the file makes, not one with other sizes
    static List<BuildBand> of(DescribedCircuit described, List<Transmission> units, String duty, List<Double> speeds) {
        List<BuildBand> bands = new ArrayList<>();
        for (Transmission unit : units) {
            Adjustable build = described.adjustables().get(unit.build());
            if (build == null || build.unit() != unit) {
                continue;
            }
            List<SizePrior> sizes = Unmeasured.of(build);
            if (sizes.stream().anyMatch(size -> size.basis() == SizePrior.Basis.WORN)) {
                FirstOrderBand.of(new SpreadQuestion(build, sizes, List.of(duty), 1, 0, 1), duty, speeds)
                        .ifPresent(band -> bands.add(new BuildBand(unit.build(), notMeasured(described, build), band)));
            }
        }
        return bands;
    }

    /** As many as are said to be left where the sheet is read. */
    private static long notMeasured(DescribedCircuit described, Adjustable build) {
        String name = build.unit().build();
        return described.sheet().filter(name::equals).isPresent()
                ? described.sizes().size() - described.measured(name)
                : build.dimensions().stream()
                        .filter(size -> size.origin() != WearSize.Origin.MEASURED)
                        .count();
    }
}
