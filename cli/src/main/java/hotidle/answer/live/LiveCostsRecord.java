package hotidle.answer.live;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.phrase.RepairPhrase;
import hotidle.study.RepairFindings;
import hotidle.study.Repairs;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;

/**
 * What each worn fit costs at a driving condition: what the line and the oil lost would be with it new and all else as it is.
 *
 * @param linePa as it is
 * @param lost   slip and leaks as it is
 * @param notAlone that some of them, brought back to new alone, take oil from the lubrication; empty where none does
 */
public record LiveCostsRecord(
        double linePa, @JsonProperty("lost_m3_s") double lost, List<FitCost> fits, String notAlone) {

    /**
     * A fit.
     *
     * @param repair name of the repair, as {@code leaks} has it
     * @param sizes  that it brings back to new
     * @param line   by so much more the line would stand, up to the set pressure
     * @param lost   so much less oil would be lost
     * @param starves whether, done alone, it takes oil from the lubrication
     */
    public record FitCost(
            String repair,
            List<String> sizes,
            @JsonProperty("line_pa") double line,
            @JsonProperty("lost_m3_s") double lost,
            boolean starves) {}

    /**
     * Of repairs that were tried.
     *
     * @param findings what they come to, all of them looked at
     */
    public static LiveCostsRecord of(Repairs found, RepairFindings findings) {
        List<Repairs.Repair> starving = findings.starving();
        List<FitCost> fits = new ArrayList<>();
        for (Repairs.Step step : found.alone()) {
            fits.add(new FitCost(
                    step.repair().name(),
                    step.repair().dimensions().stream().map(WearSize::name).toList(),
                    step.after().held() - found.before().held(),
                    found.before().lost() - step.after().lost(),
                    starving.contains(step.repair())));
        }
        return new LiveCostsRecord(
                found.before().line(),
                found.before().lost(),
                fits,
                starving.isEmpty()
                        ? ""
                        : RepairPhrase.starvingShort(
                                starving.stream().map(Repairs.Repair::name).toList()));
    }
}
