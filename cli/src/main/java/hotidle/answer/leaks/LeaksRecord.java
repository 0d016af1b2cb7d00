package hotidle.answer.leaks;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.StateRecord;
import hotidle.assess.OilBudget;
import hotidle.study.LeakStudy;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Oil budget and repairs as JSON; a build without a state has neither.
 *
 * @param before   as the build is
 * @param allAsNew with every fit as new, where any is worn
 * @param repairs  each on its own, the best first
 * @param order    each on top of those before it
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record LeaksRecord(
        String circuit,
        List<BuildStates> builds,
        Optional<BudgetRecord> oilBudget,
        Optional<AfterRecord> before,
        Optional<AfterRecord> allAsNew,
        Optional<List<RepairRecord>> repairs,
        Optional<List<RepairRecord>> order) {

    /** A build with its one state. */
    record BuildStates(String build, List<StateRecord> states) {}

    /**
     * Where the oil goes.
     *
     * @param unexplainedShare what its sum leaves open, as a share of the oil displaced [-]
     */
    record BudgetRecord(
            @JsonProperty("displaced_m3_s") double displaced, double unexplainedShare, List<PathRecord> paths) {

        static BudgetRecord of(OilBudget budget) {
            return new BudgetRecord(
                    budget.displaced(),
                    budget.unexplained(),
                    budget.paths().stream()
                            .map(path -> PathRecord.of(path, budget.displaced()))
                            .toList());
        }
    }

    /** One end of the oil. */
    record PathRecord(
            String path,
            String group,
            String fate,
            @JsonProperty("flow_m3_s") double flow,
            double share) {

        static PathRecord of(OilBudget.Path path, double displaced) {
            return new PathRecord(
                    path.key(),
                    path.group().label(),
                    path.fate().name().toLowerCase(Locale.ROOT),
                    path.flow(),
                    path.flow() / displaced);
        }
    }

    static LeaksRecord of(LeaksAnswer answer) {
        Optional<LeakStudy.Found> found = answer.found();
        return new LeaksRecord(
                answer.unit().circuit(),
                List.of(new BuildStates(
                        answer.unit().build(),
                        List.of(StateRecord.of(answer.unit(), answer.duty(), answer.outcome(), answer.assessed())))),
                found.map(known -> BudgetRecord.of(known.budget())),
                found.map(known -> AfterRecord.of(known.repairs().before())),
                found.flatMap(known -> known.repairs().all()).map(AfterRecord::of),
                found.map(known -> RepairRecord.all(known.repairs().alone())),
                found.map(known -> RepairRecord.all(known.repairs().order())));
    }
}
