package hotidle.answer.shift;

import hotidle.answer.Answer;
import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.ShiftPhrase;
import hotidle.assess.ShiftFinding;
import hotidle.plots.Picture;
import hotidle.study.LockupHeat;
import hotidle.study.ShiftHeat;
import java.util.List;
import java.util.Optional;

/**
 * The heat of each shift up of a build, and of its lockup.
 *
 * @param units   of the user
 * @param circuit its name
 * @param build   which
 * @param asked   under what
 * @param shifts  from the lowest range up
 * @param still   applied clutches that close in none of them
 * @param time    over which the lockup is applied [s]
 * @param lockups at duty points
 */
public record ShiftAnswer(
        Quantity.UnitSystem units,
        String circuit,
        String build,
        ShiftHeat.AskedShift asked,
        List<ShiftHeat> shifts,
        List<String> still,
        double time,
        List<LockupHeat> lockups)
        implements Answer {

    public ShiftAnswer {
        shifts = List.copyOf(shifts);
        still = List.copyOf(still);
        lockups = List.copyOf(lockups);
    }

    private ShiftRows rows() {
        return new ShiftRows(units, shifts, lockups);
    }

    @Override
    public String screen() {
        FirstScreen screen = new FirstScreen(ShiftPhrase.ESTIMATE);
        screen.add(heading()).add(body(rows().brief()));
        if (!lockups.isEmpty()) {
            screen.addWhereRoom(lockup());
        }
        screen.addWhereRoom(atRest());
        return screen.text();
    }

    @Override
    public String full() {
        return heading() + body(rows().table()) + "\n" + (lockups.isEmpty() ? "" : lockup() + "\n") + atRest()
                + ShiftPhrase.ESTIMATE + "\n";
    }

    private String heading() {
        String text = new ShiftPhrase(units).heading(circuit, build, asked.speed(), asked.torque(), asked.inertia());
        return Wrap.lines(text, "", "  ");
    }

    private String body(TextTable table) {
        if (shifts.isEmpty()) {
            return Wrap.lines(ShiftPhrase.NO_TRAIN, "", "  ");
        }
        return table.aligned() + Wrap.lines(ShiftPhrase.LIMITS, "", "") + Wrap.lines(ShiftPhrase.NOT_COUNTED, "", "");
    }

    private String lockup() {
        return Wrap.lines(ShiftPhrase.lockup(time), "", "") + rows().lockup().aligned();
    }

    private String atRest() {
        return still.isEmpty() ? "" : Wrap.lines(ShiftPhrase.still(String.join(", ", still)), "", "  ");
    }

    @Override
    public TextTable table() {
        return rows().table();
    }

    @Override
    public Object json() {
        return ShiftRecord.of(this);
    }

    @Override
    public Optional<Picture> picture() {
        return new ShiftPicture(this).picture();
    }

    @Override
    public boolean complete() {
        return shifts.stream().noneMatch(shift -> shift.why() == ShiftFinding.NO_STATE);
    }
}
