package hotidle.answer.phrase;

import java.util.List;

/** The words of parts, of builds and of what a screen ends with. */
final class PartTerms {

    private PartTerms() {}

    static final List<TermPhrase.Term> ALL = List.of(
            TermPhrase.term(
                    "accumulator",
                    "a spring-loaded piston that softens a shift; worn, it leaks in the clutch's feed",
                    "leaks, wear, gauge",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "input shaft",
                    "the shaft from the converter to the gears; its rating says what it carries",
                    "torque, margins",
                    TermPhrase.NONE,
                    "shaft",
                    "input-shaft"),
            TermPhrase.term(
                    "bore",
                    "the hole that a valve, piston or ring runs in; measured, it tells what leaks past",
                    "sheet, wear, leaks",
                    TermPhrase.NONE,
                    "bores"),
            TermPhrase.term(
                    "worn",
                    "past its new size; a build of that name has the sizes measured of a worn unit",
                    "compare, sheet, check",
                    TermPhrase.NONE,
                    "worn fit",
                    "wears"),
            TermPhrase.term(
                    "plate",
                    "the separator plate between the halves of the valve body; warped, it leaks",
                    "leaks, gauge",
                    TermPhrase.NONE,
                    "separator plate"),
            TermPhrase.term(
                    "primary",
                    "the first chamber of a double pump, which feeds the line at all times",
                    "sweep, draw",
                    TermPhrase.NONE,
                    "primary chamber"),
            TermPhrase.term(
                    "hub",
                    "the converter's hub: it drives the pump and turns in the hub bushing",
                    "margins, compare",
                    TermPhrase.NONE,
                    "bushing",
                    "hub bushing"),
            TermPhrase.term(
                    "displacement",
                    "what a pump chamber moves in a turn, were there no slip",
                    "new, leaks",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "tip slip",
                    "pump slip past the tips of the gear teeth",
                    "leaks",
                    TermPhrase.NONE,
                    "tip-slip",
                    "tips"),
            TermPhrase.term(
                    "face slip",
                    "pump slip past the flat faces of gears or rotor",
                    "leaks",
                    TermPhrase.NONE,
                    "face-slip"),
            TermPhrase.term(
                    "orifice slip",
                    "pump slip past mesh, scores and nicks, as through a sharp hole: hot or cold alike",
                    "leaks",
                    TermPhrase.NONE,
                    "orifice-slip",
                    "orifice-slip-area"),
            TermPhrase.term(
                    "command table",
                    "which line pressure is asked for at which engine torque",
                    "new, check",
                    TermPhrase.NONE,
                    "command"),
            TermPhrase.term(
                    "zero overlap",
                    "a land as long as its port: the port opens as soon as the spool moves",
                    "draw, sheet",
                    TermPhrase.NONE,
                    "overlap"),
            TermPhrase.term("fresh", "the build with all sizes as new", "all commands on builds", TermPhrase.NONE),
            TermPhrase.term(
                    "thou", "a thousandth of an inch, 0.0254 mm", "compare, margins, sheet", TermPhrase.NONE, "mil"),
            TermPhrase.term(
                    "cautions",
                    "what to heed before a test on the vehicle; the whole text with --full",
                    "all commands on builds",
                    TermPhrase.NONE,
                    "caution"));
}
