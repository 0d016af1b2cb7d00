package hotidle.answer.heat;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.phrase.HeatPhrase;
import hotidle.heat.HeatFlows;
import hotidle.study.HeatStudy;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Warming;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** How long driving conditions last, by their number, and what is said of those that are soon over. */
record HeldDuties(HeatStudy study, UnitSystem units) {

    DutyPoint duty(int duty) {
        return study.builds().get(0).duties().get(duty).warmed().duty();
    }

    String said(int duty) {
        return duty(duty).warming().orElseThrow() instanceof Warming.After after
                ? HeatPhrase.heldFor(after.seconds(), after.duty())
                : HeatPhrase.UNTIL_SETTLED;
    }

    /**
     * Of what is soon over, that which makes most heat, where that is more than the most of those that last.
     *
     * @param lasting the one that makes most of those that last; none or several where that is not known
     */
    Optional<String> soonOver(List<Integer> lasting) {
        HeatStudy.BuildHeat first = study.builds().get(0);
        if (lasting.size() != 1 || !lasting(lasting.get(0))) {
            return Optional.empty();
        }
        double most = HeatAnswer.flows(first, lasting.get(0)).orElseThrow().generated();
        return IntStream.range(0, first.duties().size())
                .filter(i -> duty(i).warming().orElseThrow() instanceof Warming.After)
                .filter(i ->
                        HeatAnswer.flows(first, i).map(HeatFlows::generated).orElse(0.0) > most)
                .boxed()
                .max(Comparator.comparingDouble(
                        i -> HeatAnswer.flows(first, i).orElseThrow().generated()))
                .map(i -> HeatPhrase.soonOver(
                        units,
                        first.unit().build(),
                        duty(i).name(),
                        HeatAnswer.flows(first, i).orElseThrow().generated(),
                        ((Warming.After) duty(i).warming().orElseThrow()).seconds(),
                        duty(lasting.get(0)).name(),
                        most));
    }

    /** Whether a driving condition lasts: the heat of a few seconds says little. */
    boolean lasting(int duty) {
        return duty(duty).warming().orElseThrow() instanceof Warming.ToBalance;
    }
}
