package hotidle.answer.phrase;

import java.util.List;

/** Words of one column or row, which whoever copies one has before his eyes; they are not listed. */
final class ColumnTerms {

    private ColumnTerms() {}

    static final List<TermPhrase.Term> ALL = List.of(
            TermPhrase.term(
                    "net",
                    "oil lost less oil brought back: faces and tips that turn carry some of it along",
                    "leaks",
                    TermPhrase.NONE,
                    "others, net",
                    "brings oil back",
                    "brings back",
                    "that brings oil back"),
            TermPhrase.term(
                    "others",
                    "rows that found no room, added up; all of them: --full",
                    "leaks, sensitivity, wear",
                    TermPhrase.NONE,
                    "others that lose oil",
                    "others that bring oil back",
                    "more",
                    "smaller ones",
                    "smaller one"),
            TermPhrase.term(
                    "used",
                    "oil that goes where it is meant to: lubrication, converter, what clutches and solenoids bleed",
                    "leaks",
                    TermPhrase.NONE,
                    "used (lubrication, converter ...)"),
            TermPhrase.term(
                    "back to the inlet past the regulator",
                    "oil that the pump has to spare and the regulator sends back",
                    "leaks",
                    TermPhrase.NONE,
                    "sent back by the regulator"),
            TermPhrase.term(
                    "pump displaces",
                    "what all chambers would deliver without slip",
                    "leaks, compare",
                    "swept_m3_s",
                    "pump delivery before slip",
                    "delivery before slip"),
            TermPhrase.term(
                    "pump delivers after slip",
                    "what leaves the pump for the line",
                    "compare",
                    TermPhrase.NONE,
                    "after slip",
                    "delivers"),
            TermPhrase.term(
                    "secondary chamber",
                    "whether the second chamber feeds the line or is unloaded",
                    "compare",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "cooler flow", "oil that goes through the cooler", "compare, sweep", TermPhrase.NONE, "flow"),
            TermPhrase.term(
                    "part",
                    "a thing in the circuit by its name in the file: a valve, a clutch, a gap",
                    "every command",
                    "part",
                    "link",
                    "one part"),
            TermPhrase.term(
                    "fault",
                    "something wrong in a unit that gauges may show, laid over a build by --fault",
                    "gauge, list faults",
                    TermPhrase.NONE,
                    "cause"),
            TermPhrase.term(
                    "best size",
                    "the size of a fault at which it explains the readings best",
                    "gauge --full",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "hidden up to",
                    "the size up to which these readings would not show the fault",
                    "gauge --full",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "reads",
                    "what a gauge shows, or is expected to show, beside what a sound unit's would",
                    "gauge, spring",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "off",
                    "how far a reading stands from what is expected, counted in what gauge and fits may be off",
                    "gauge --full",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "file", "what the circuit file says, beside what was tested", "air", TermPhrase.NONE, "the file"),
            TermPhrase.term(
                    "as tested", "at the pressure, temperature and with the air of the test", "air", TermPhrase.NONE),
            TermPhrase.term("write", "what goes into the measurement sheet", "air", TermPhrase.NONE),
            TermPhrase.term(
                    "oil",
                    "oil temperature at which it was read, or the oil's name",
                    "gauge --full",
                    TermPhrase.NONE,
                    "oil temperature read"),
            TermPhrase.term("for", "the clutch or band that needs the most line", "torque --full", TermPhrase.NONE),
            TermPhrase.term(
                    "has",
                    "the line that the build has there: at idle, or at an engine speed",
                    "torque --full",
                    TermPhrase.NONE,
                    "at idle",
                    "has at"),
            TermPhrase.term("says", "what the row comes to", "torque --full, shift", TermPhrase.NONE),
            TermPhrase.term(
                    "first to give",
                    "the part that carries least engine torque, and the range in which it does",
                    "torque --stages",
                    TermPhrase.NONE,
                    "then",
                    "holds in every range"),
            TermPhrase.term(
                    "every known limit",
                    "the set pressures between which no limit fails that could be judged",
                    "torque --stages",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "all of them",
                    "all jobs done at once",
                    "leaks --by job",
                    TermPhrase.NONE,
                    "together",
                    "these together"),
            TermPhrase.term(
                    "work",
                    "jobs of a stage, with their hours and price where the file gives them",
                    "torque --stages",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "to the air",
                    "heat that leaves through case and converter, below zero since it goes",
                    "heat",
                    TermPhrase.NONE,
                    "to the air, case",
                    "to the air, converter"),
            TermPhrase.term(
                    "to the cooler",
                    "heat that the cooler takes away, below zero since it goes",
                    "heat",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "churning",
                    "heat of gears and open packs that turn in oil",
                    "heat",
                    TermPhrase.NONE,
                    "gears, packs, churning",
                    "gears and bearings",
                    "packs"),
            TermPhrase.term("lockup slip", "heat of a lockup clutch that is let slip", "heat", TermPhrase.NONE),
            TermPhrase.term(
                    "pump drag and slip",
                    "heat of the pump's friction and of oil that slips back in it",
                    "heat",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "coils touch first",
                    "the spring would be pressed solid before the regulator opens",
                    "spring",
                    TermPhrase.NONE,
                    "SOLID"),
            TermPhrase.term(
                    "signals alone hold more",
                    "boost or throttle pressure holds a higher line without any spring",
                    "spring",
                    TermPhrase.NONE,
                    "signals"));
}
