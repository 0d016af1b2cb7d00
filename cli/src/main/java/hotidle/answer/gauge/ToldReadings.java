package hotidle.answer.gauge;

import java.util.List;

/**
 * What is told of gauge readings, in the words of the screen.
 *
 * @param agrees      whether they agree with a sound build
 * @param verdict     that in a sentence, with the statistic it rests on
 * @param standsOut   which of them
 * @param onRegulator that they tell nothing of leaks; empty where they do
 * @param over        what stands over the causes; empty where there are none
 * @param causes      each with its share, the most likely first
 * @param next        readings to take, the one that tells most first
 * @param nothingNext that no reading tells more; empty where one does, or none is needed
 * @param faultsHead  heads of the table of faults
 * @param faults      every fault, its share, best size and what size of it these readings may hide
 * @param assumed     what is allowed for
 * @param noStall     that no stall test is run; empty where it may be
 */
public record ToldReadings(
        boolean agrees,
        String verdict,
        String standsOut,
        String onRegulator,
        String over,
        List<String> causes,
        List<String> next,
        String nothingNext,
        List<String> faultsHead,
        List<List<String>> faults,
        String assumed,
        String noStall) {

    public ToldReadings {
        causes = List.copyOf(causes);
        next = List.copyOf(next);
        faultsHead = List.copyOf(faultsHead);
        faults = List.copyOf(faults);
    }
}
