package hotidle.cli;

import hotidle.answer.part.PartConditions;
import hotidle.answer.part.PartState;
import hotidle.assess.PartDoubt;
import hotidle.assess.PartFlow;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.single.LibraryMaterials;
import hotidle.circuits.single.OnePart;
import hotidle.circuits.single.ReadPart;
import hotidle.circuits.text.Problem;
import hotidle.network.Placed;
import hotidle.oil.OilAt;
import hotidle.result.Outcome;
import hotidle.study.SinglePart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Runs one kind of part with one set of oils and materials.
 *
 * @param kind  of the part
 * @param stock oils and materials to choose from
 */
record PartRun(Kind kind, LibraryMaterials stock) {

    /**
     * The part of some keys under some options.
     *
     * @throws WrongInputException where either is wrong
     */
    PartState of(List<String> keys, PartOptions options) {
        ReadPart read = OnePart.read(kind.word(), keys, stock);
        OnePart part = read.part()
                .orElseThrow(() -> new WrongInputException(Circuits.text(read.problems().stream()
                        .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                        .toList())));
        PartOil oil = PartOil.of(options, part.measuredAt(), stock);
        PartConditions asked = new PartConditions(
                oil.oil(),
                oil.byDefault(),
                oil.temperature(),
                oil.temperatureByDefault(),
                PartPressures.of(options, part),
                PartHolds.of(options, part));
        return solved(part, asked, read.problems());
    }

    private static PartState solved(OnePart part, PartConditions asked, List<Problem> problems) {
        Placed placed = part.placed();
        Outcome outcome = SinglePart.run(
                part.network(asked.pressures()),
                part.conditions(asked.oil(), OilAt.STANDARD_ATMOSPHERE, asked.temperature()),
                placed.name(),
                asked.holds());
        Optional<PartFlow> flow = outcome.state().map(state -> PartFlow.of(placed, asked.oilAt(), state));
        List<PartDoubt> doubts = new ArrayList<>(PartDoubt.fits(placed, asked.temperature()));
        outcome.state()
                .ifPresent(state -> doubts.addAll(PartDoubt.of(
                        placed, flow.orElseThrow(), asked.oilAt(), asked.holds().keySet(), state)));
        return new PartState(part, asked, outcome, flow, doubts, problems);
    }
}
