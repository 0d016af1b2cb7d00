package hotidle.answer.phrase;

import java.util.List;

/** The words of shifts, and of lands tested on a stand. */
final class ShiftTerms {

    private ShiftTerms() {}

    static final List<TermPhrase.Term> ALL = List.of(
            TermPhrase.term(
                    "shift heat",
                    "what a closing clutch turns into heat over its rubbing area",
                    "shift",
                    "heat_over_area_j_m2",
                    "J/mm2"),
            TermPhrase.term(
                    "steel",
                    "how much warmer the steel plates get when none of the heat leaves them",
                    "shift",
                    "steel_rise_k"),
            TermPhrase.term(
                    "clutch slip",
                    "how much faster one side of a clutch turns than the other",
                    "shift",
                    "slip_rpm",
                    "slip rpm"),
            TermPhrase.term(
                    "free air",
                    "the air that passes a land under test, counted at the room's pressure",
                    "air",
                    "free_air_m3_s"),
            TermPhrase.term(
                    "bore to write",
                    "the bore at which a part leaks what its air test says; a measurement for the sheet",
                    "air",
                    "bore_m"),
            TermPhrase.term(
                    "shift",
                    "a change up from one range to the next, and the clutch that closes in it",
                    "shift",
                    TermPhrase.NONE,
                    "closes",
                    "carries",
                    "carries lbf.ft"),
            TermPhrase.term("seconds slipping", "how long the closing clutch slips", "shift", TermPhrase.NONE, "s"),
            TermPhrase.term(
                    "heat of a shift",
                    "what slipping makes of work in the closing clutch or lockup",
                    "shift",
                    TermPhrase.NONE,
                    "kJ",
                    "applied kJ",
                    "W/mm2"),
            TermPhrase.term("reading", "what the gauge of a vacuum or air test shows", "air", TermPhrase.NONE),
            TermPhrase.term(
                    "gap as tested",
                    "the oil that the tested gap leaks, as it was at the test",
                    "air",
                    TermPhrase.NONE,
                    "oil leak, gap as tested",
                    "oil leak"),
            TermPhrase.term(
                    "gap hot",
                    "the same with bore and valve as warm as the oil",
                    "air",
                    TermPhrase.NONE,
                    "oil leak, gap hot"),
            TermPhrase.term(
                    "clearance",
                    "diameter of the bore less that of its valve: centred, or as far off as in the file",
                    "air",
                    TermPhrase.NONE,
                    "clearance, centred",
                    "centred",
                    "as in the file"));
}
