package hotidle.answer.phrase;

import java.util.List;

/** The words of line pressure, pump chambers and the regulator. */
final class LineTerms {

    private LineTerms() {}

    static final List<TermPhrase.Term> ALL = List.of(
            TermPhrase.term(
                    "holds from",
                    "the engine speed from which on the line alone stands at its set pressure",
                    "compare, sweep",
                    "onset_rpm",
                    "onset of regulation",
                    "onset",
                    "line holds from",
                    "from rpm"),
            TermPhrase.term(
                    "rise over set",
                    "line pressure less what is commanded: what spring and flow add at the regulator",
                    "compare --full",
                    "override_pa",
                    "override"),
            TermPhrase.term(
                    "set pressure",
                    "what a unit is set to: the line commanded forward at full engine torque",
                    "spring, window, torque, --set",
                    TermPhrase.NONE,
                    "set pressure, forward",
                    "set to",
                    "set"),
            TermPhrase.term(
                    "commanded",
                    "the line asked for at one driving condition: less at part throttle, more in reverse",
                    "compare, spring, torque",
                    "set_pressure_pa",
                    "commanded here",
                    "commanded there",
                    "asked for",
                    "asked"),
            TermPhrase.term(
                    "line pressure",
                    "the pressure behind the pump that presses clutches and feeds all else",
                    "compare, sweep",
                    "pressures_pa",
                    "line pressure there",
                    "line",
                    "gauge reads",
                    "gauge"),
            TermPhrase.term(
                    "LINE LOW",
                    "line pressure below what is commanded: the pump does not give the oil for it",
                    "compare, sweep",
                    TermPhrase.NONE,
                    "low",
                    "not held"),
            TermPhrase.term(
                    "LINE HIGH",
                    "line pressure far above what is commanded: the regulator cannot let enough oil by",
                    "compare, sweep",
                    TermPhrase.NONE,
                    "high",
                    "far above its set pressure"),
            TermPhrase.term(
                    "ok", "this figure is as it should be, as far as it is asked here", "compare", TermPhrase.NONE),
            TermPhrase.term(
                    "regulator",
                    "what the regulator valve does at this speed",
                    "sweep, compare --full",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "not commanded",
                    "a bench, or a file without a command: no set pressure, nothing to hold",
                    "sweep",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "on its seat",
                    "the regulator's spring holds it shut: all oil goes into the line, and it is not enough",
                    "sweep",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "regulating",
                    "the regulator stands between its stops and holds the line",
                    "sweep",
                    TermPhrase.NONE,
                    "held"),
            TermPhrase.term(
                    "off its seat but low",
                    "the regulator lets oil by although the line is below what is commanded",
                    "sweep",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "stuck",
                    "the regulator does not move: the line stands where its openings leave it",
                    "sweep, compare --full",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "relief open",
                    "the relief valve holds the line, not the regulator",
                    "sweep, compare",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "secondary", "what the second chamber of a double pump does", "sweep, compare --full", "secondary"),
            TermPhrase.term(
                    "both chambers feeding",
                    "both chambers of a double pump deliver into the line",
                    "compare --full, sweep",
                    "secondary: joined",
                    "joined",
                    "feeding",
                    "both feeding"),
            TermPhrase.term(
                    "unloading",
                    "the second chamber begins to give its oil back and still carries pressure",
                    "compare --full, sweep",
                    "secondary: unloading",
                    "secondary unloads from",
                    "secondary_unloads_from_rpm"),
            TermPhrase.term(
                    "unloaded",
                    "the second chamber gives all its oil back and balances no side load any more",
                    "compare --full, sweep",
                    "secondary: unloaded",
                    "secondary unloaded from"),
            TermPhrase.term(
                    "engine without load",
                    "wheels off the ground or in neutral: the engine drives nothing; no stall",
                    "gauge",
                    TermPhrase.NONE,
                    "without load",
                    "no load"),
            TermPhrase.term(
                    "primary bypasses from",
                    "the speed from which oil of the line goes back; a second chamber is unloaded",
                    "sweep",
                    "primary_bypasses_from_rpm",
                    "bypassing"),
            TermPhrase.term(
                    "one change alone",
                    "a change of the regulator that gives the set pressure, nothing else being changed",
                    "spring",
                    "changes",
                    "difference"),
            TermPhrase.term(
                    "preload",
                    "force of the regulator's spring on its seat; another spring of the same rate gives more",
                    "spring",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "shim",
                    "a washer under the spring: it presses the spring together by its thickness",
                    "spring",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "spring rate",
                    "force that a spring gains per length that it is pressed",
                    "spring",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "boost",
                    "a land of the regulator on which a signal presses with the spring",
                    "spring",
                    TermPhrase.NONE,
                    "boost diameter",
                    "boost on boost"),
            TermPhrase.term(
                    "coils at the stop",
                    "whether the coils touch before the regulator comes to its stop",
                    "spring",
                    TermPhrase.NONE),
            TermPhrase.term("what it moves", "what other pressures become with each change", "spring", TermPhrase.NONE),
            TermPhrase.term(
                    "reverse at most",
                    "highest line commanded in reverse; of a throttle valve, at the condition named",
                    "spring",
                    TermPhrase.NONE));
}
