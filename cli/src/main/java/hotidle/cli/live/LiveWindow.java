package hotidle.cli.live;

import hotidle.answer.format.Quantity;
import hotidle.answer.live.LiveWindowRecord;
import hotidle.answer.window.WindowAnswer;
import hotidle.study.Window;
import hotidle.transmission.Transmission;
import java.util.Optional;

/**
 * Up to which pressure a state of a page may be set, as {@code window} finds it: the line alone is no answer to that, since a clutch, the
 * lubrication or a film can give first. It takes longer than a verdict and is asked for apart.
 */
final class LiveWindow {

    private final LiveUnit unit;
    private final OtherCommands commands;

    /** Windows of the last states that differ in more than the set pressure, which a window does not depend on (chosen). */
    private final Recent<AskedState, Window> found = new Recent<>(16);

    LiveWindow(LiveUnit unit, OtherCommands commands) {
        this.unit = unit;
        this.commands = commands;
    }

    /** What may be set; {@code step} is run while it is searched and throws once nobody waits. */
    LiveWindowRecord of(AskedState asked, Quantity.UnitSystem units, Runnable step) {
        Transmission made = unit.unit(asked);
        if (made.commanded().isEmpty()) {
            return LiveWindowRecord.NOTHING_COMMANDED;
        }
        AskedState key = asked.setAsWritten();
        Window window;
        try {
            window = found.of(key, () -> commands.window(made, searched(key, step), step));
        } catch (IllegalArgumentException impossible) {
            throw new WrongStateException(impossible.getMessage());
        }
        return LiveWindowRecord.of(units, new WindowAnswer.BuildWindow(made, window, Optional.empty()));
    }

    /** Between two limits many pressures are tried: nobody who turns a slider is to wait for that. */
    private Window.Raised searched(AskedState asked, Runnable step) {
        Window.Raised raised = unit.raised(asked);
        return (pressure, duties) -> {
            step.run();
            return raised.to(pressure, duties);
        };
    }
}
