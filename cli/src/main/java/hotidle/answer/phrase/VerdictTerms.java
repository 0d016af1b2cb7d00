package hotidle.answer.phrase;

import java.util.List;

/** The phrases in which screens give their verdicts, in capitals or at their head. */
final class VerdictTerms {

    private VerdictTerms() {}

    static final List<TermPhrase.Term> ALL = List.of(
            TermPhrase.term(
                    "IDLE PRESSURE IS LOW",
                    "the line is not held at idle; a stall test may burn clutches",
                    "everywhere, under the answer",
                    TermPhrase.NONE,
                    "idle pressure low",
                    "low at idle",
                    "stall test",
                    "no stall test"),
            TermPhrase.term(
                    "NO SET PRESSURE",
                    "at every set pressure tried some limit fails; what fails at all of them is named",
                    "window, torque --stages",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "NONE LEFT",
                    "a limit fails as the build is, so no fit may wear any further",
                    "wear, torque --stages",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "NONE HOLDS",
                    "no limit that is judged holds, so there is no wear to count",
                    "wear, torque --stages",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "DO",
                    "the jobs that keep every limit, of all such sets the one that costs least",
                    "leaks --by job",
                    "chosen",
                    "do these jobs"),
            TermPhrase.term("NO JOB IS NEEDED", "every limit holds as the build is", "leaks --by job", TermPhrase.NONE),
            TermPhrase.term(
                    "NO SET",
                    "whatever jobs are done, some limit fails; a lower set pressure may do it",
                    "leaks --by job",
                    TermPhrase.NONE,
                    "no set of the jobs"),
            TermPhrase.term(
                    "NO SPRING DOES IT",
                    "the pump has not the oil for that pressure, however strong the spring",
                    "spring",
                    TermPhrase.NONE),
            TermPhrase.term("NO POINT", "nowhere on the map tried does every limit hold", "map", TermPhrase.NONE),
            TermPhrase.term(
                    "FITS POORLY",
                    "a cause that leaves a misfit as large as fewer than 1 in 50 sound units leave",
                    "gauge",
                    "chi_square_left",
                    "nothing tried fits them well"),
            TermPhrase.term(
                    "THEY DO NOT AGREE",
                    "readings lie further from a sound build's than gauges and tolerances explain",
                    "gauge, report --readings",
                    TermPhrase.NONE,
                    "do not agree",
                    "they agree",
                    "agree"),
            TermPhrase.term(
                    "reads sound",
                    "a tap of which no reading lies further off than its gauge and a sound build explain",
                    "gauge",
                    TermPhrase.NONE,
                    "read sound"),
            TermPhrase.term(
                    "read next",
                    "the reading that would best tell the causes left apart, and what each makes of it",
                    "gauge",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "measure first",
                    "assumed sizes that move the tightest limit most, to be measured before all others",
                    "new",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "as far as is known",
                    "nothing that is known fails; some limits are not known, which is no failure",
                    "margins, new",
                    TermPhrase.NONE,
                    "narrow as far as is known",
                    "holds as far as is known"),
            TermPhrase.term(
                    "more pressure, more loss",
                    "a higher line loses more oil past the same gaps; no fit is worse",
                    "compare, leaks --by job",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "does NOT hold",
                    "a clutch or a rated part gives below the engine torque asked for",
                    "torque --for, compare --for",
                    TermPhrase.NONE,
                    "not",
                    "no"),
            TermPhrase.term(
                    "TOO HOT",
                    "the oil comes above the highest temperature that the file allows",
                    "heat, compare",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "WARNING",
                    "it works, yet lies outside what is usual or what a law was made for",
                    "part, check",
                    TermPhrase.NONE));
}
