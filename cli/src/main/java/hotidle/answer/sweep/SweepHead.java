package hotidle.answer.sweep;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.OnsetPhrase;
import hotidle.answer.phrase.SweepPhrase;
import hotidle.assess.Roles;
import hotidle.study.SpeedSweep;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What stands over the table of a sweep: what was swept, and the speeds at which the regulator begins to do something. */
record SweepHead(Quantity.UnitSystem units) {

    String of(SpeedSweep sweep) {
        String what = new SweepPhrase(units)
                .heading(
                        sweep.unit().circuit(),
                        sweep.unit().build(),
                        sweep.duty().name(),
                        sweep.duty().speed(),
                        sweep.duty().range(),
                        sump(sweep));
        return Wrap.lines(what, "", "  ") + Wrap.lines(crossings(sweep), "", "  ");
    }

    private String crossings(SpeedSweep sweep) {
        if (sweep.unit().commanded().isEmpty()) {
            return SweepPhrase.UNCOMMANDED;
        }
        Roles roles = sweep.roles();
        List<String> others = new ArrayList<>();
        if (roles.secondary().isPresent()) {
            others.add(SweepPhrase.unloads(from(sweep, sweep.unloading())));
        }
        if (roles.bypass().isPresent()) {
            String from = from(sweep, sweep.bypassing());
            others.add(roles.secondary().isPresent() ? SweepPhrase.unloaded(from) : SweepPhrase.bypasses(from));
        }
        return SweepPhrase.crossings(from(sweep, sweep.onset()), others);
    }

    private String from(SpeedSweep sweep, OptionalDouble speed) {
        return new OnsetPhrase(units)
                .from(speed, sweep.rising().get(0).conditions().speed());
    }

    static double sump(SpeedSweep sweep) {
        return sweep.duty().temperatures().get("sump");
    }
}
