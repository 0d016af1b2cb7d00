package hotidle.answer.phrase;

import java.util.List;

/** The words of limits, and of what is judged. */
final class LimitTerms {

    private LimitTerms() {}

    static final List<TermPhrase.Term> ALL = List.of(
            TermPhrase.term(
                    "narrow",
                    "a limit that holds with up to 10 % to spare (assumed)",
                    "margins, compare, leaks --by job",
                    "verdict: close",
                    "close",
                    "none, narrow"),
            TermPhrase.term(
                    "fails",
                    "a limit that is not kept, or of which no state was found",
                    "margins, window",
                    "verdict: fails",
                    "fails at",
                    "limits failing",
                    "limits failing anywhere",
                    "failing"),
            TermPhrase.term("holds", "a limit that is kept with more than 10 % to spare", "margins", "verdict: holds"),
            TermPhrase.term(
                    "not known",
                    "a limit that neither fails nor is sure to hold (no failure), or a state not found",
                    "everywhere",
                    "null",
                    "unsolved",
                    "?"),
            TermPhrase.term(
                    "verdict", "what is said of a limit: fails, narrow, holds or not known", "margins", "verdict"),
            TermPhrase.term(
                    "headroom",
                    "what is to spare, as a share of what is needed",
                    "margins, map",
                    "headroom",
                    "margin",
                    "most",
                    "least headroom"),
            TermPhrase.term(
                    "ample",
                    "so much to spare that the number says nothing: ten times what is needed and more",
                    "margins, wear",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "limit",
                    "what must hold: regulation, apply, lubrication, hub film and others",
                    "margins, window",
                    "limit",
                    "what binds",
                    "first limit gone",
                    "first limit",
                    "binds",
                    "then fails"),
            TermPhrase.term(
                    "needed or allowed",
                    "what a figure is held against: at least, or for an upper limit at most",
                    "margins",
                    "needed",
                    "is, of needed or allowed",
                    "is"),
            TermPhrase.term(
                    "driving condition",
                    "speed, range, torque and temperatures at which a unit is judged",
                    "everywhere",
                    "duty",
                    "duty point",
                    "at"),
            TermPhrase.term(
                    "build",
                    "one state of a unit: fresh, worn, restored; a list of changes on another build",
                    "everywhere",
                    "build"),
            TermPhrase.term(
                    "assumed",
                    "a number that nobody measured; it stands with ~ in a file, and a verdict on it says so",
                    "everywhere",
                    TermPhrase.NONE,
                    "~"),
            TermPhrase.term(
                    "regulation",
                    "whether the pump holds the set pressure with all else served",
                    "margins",
                    "margin: regulation"),
            TermPhrase.term(
                    "apply",
                    "whether a clutch's pressure carries its torque times its capacity factor, holding",
                    "margins",
                    "margin: apply",
                    "apply, holding",
                    "clutch slips"),
            TermPhrase.term(
                    "weakest torque link",
                    "the clutch, lockup or rated part with least to spare; not of oil, line or hub",
                    "compare",
                    TermPhrase.NONE,
                    "weakest torque link, anywhere"),
            TermPhrase.term(
                    "apply-sliding",
                    "the same while it slips, with the friction of a slipping clutch",
                    "margins",
                    "margin: apply-sliding",
                    "apply, slipping",
                    "apply, holding and slipping"),
            TermPhrase.term(
                    "clutch drags",
                    "a clutch is pressed although the range does not apply it",
                    "margins, compare",
                    TermPhrase.NONE,
                    "drags"),
            TermPhrase.term(
                    "lockup",
                    "whether apply less release pressure carries the engine's torque through the lockup clutch",
                    "margins, compare",
                    "margin: lockup"),
            TermPhrase.term(
                    "hub film",
                    "the least oil film in the pump's hub bushing over engine speed, with one condition's oil",
                    "margins, compare",
                    "least_film_m",
                    "film",
                    "thinnest hub film",
                    "film thin",
                    "too thin",
                    "thin"),
            TermPhrase.term(
                    "Trumpler's rule",
                    "0.2 thou and 0.04 thou more per inch of journal: so thick, a film is known to hold",
                    "margins, sweep --plot-film",
                    TermPhrase.NONE,
                    "Trumpler",
                    "Trumplers rule"),
            TermPhrase.term(
                    "hub film oil",
                    "whether the film's two ends get the oil that it loses",
                    "margins",
                    "margin: film-oil",
                    "film-oil"),
            TermPhrase.term(
                    "metal contact",
                    "the hub runs in its bushing without a film; how thick one would be is not known",
                    "sweep, compare",
                    "metal_contact",
                    "contact",
                    "hub contact"),
            TermPhrase.term(
                    "hub unit load",
                    "load over the hub bushing's length and width, against what it bears",
                    "margins",
                    "margin: unit-load",
                    "unit-load",
                    "hub overload"),
            TermPhrase.term(
                    "hub load",
                    "the force with which the pump presses the hub into its bushing",
                    "sweep --full",
                    "load_n"),
            TermPhrase.term(
                    "pump inlet",
                    "the pressure at the pump's inlet against that at which air comes out of the oil",
                    "margins",
                    "margin: pump-inlet",
                    "pump-inlet",
                    "inlet starved"),
            TermPhrase.term(
                    "relief valve",
                    "whether the relief valve stays shut while the regulator holds the line",
                    "margins",
                    "margin: relief-valve",
                    "relief-valve",
                    "relief"),
            TermPhrase.term(
                    "oil temperature",
                    "the sump's temperature against the highest that the file allows",
                    "margins",
                    "margin: oil-temperature",
                    "oil-temperature"),
            TermPhrase.term(
                    "converter temperature",
                    "the same of the oil that leaves the converter",
                    "margins",
                    "margin: converter-temperature",
                    "converter-temperature"),
            TermPhrase.term(
                    "rated torque",
                    "a shaft, one-way clutch or case against its rating, written or made of its sizes",
                    "margins, compare, torque",
                    "margin: rated-torque",
                    "rated-torque",
                    "over torque"),
            TermPhrase.term(
                    "rated pressure",
                    "the pressure on a housing or a piston, against the rating that the file gives",
                    "margins, compare, window",
                    "margin: rated-pressure",
                    "rated-pressure",
                    "over pressure"));
}
