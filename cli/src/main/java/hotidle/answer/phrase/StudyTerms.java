package hotidle.answer.phrase;

import java.util.List;

/** The words of wear, of what a change moves, of torque and heat. */
final class StudyTerms {

    private StudyTerms() {}

    static final List<TermPhrase.Term> ALL = List.of(
            TermPhrase.term(
                    "size",
                    "a length or an area of a part, as regulator.bore: part and key of the file",
                    "sensitivity, map",
                    "size",
                    "fit"),
            TermPhrase.term(
                    "new",
                    "a size as its maker gives it; wear counts from there",
                    "wear --full, check",
                    "new",
                    "as new"),
            TermPhrase.term(
                    "as it is",
                    "a size, or a unit, as the build has it, with nothing done",
                    "wear, leaks --by job",
                    TermPhrase.NONE,
                    "as is",
                    "now",
                    "measured"),
            TermPhrase.term(
                    "tightest",
                    "fits that may wear least before a limit is gone, each alone",
                    "wear",
                    TermPhrase.NONE,
                    "tightest, each alone"),
            TermPhrase.term(
                    "left",
                    "how much a fit may still wear before a limit is gone",
                    "wear",
                    TermPhrase.NONE,
                    "wear left",
                    "left in"),
            TermPhrase.term(
                    "all together",
                    "each fit where the first limit goes, all worn alike on the way to their limits",
                    "wear",
                    "share_of_written_limits"),
            TermPhrase.term("gone at", "the size at which the first limit is gone", "wear", "gone_at"),
            TermPhrase.term(
                    "limit in file",
                    "the wear limit written in the file; too loose where a limit is gone before it",
                    "wear",
                    "shop_limit",
                    "written limit",
                    "wear limit"),
            TermPhrase.term(
                    "points",
                    "hundredths of headroom that a size moves, larger by the step in the heading",
                    "sensitivity",
                    "change",
                    "points there"),
            TermPhrase.term(
                    "moves most", "the limit that a size moves more than any other", "sensitivity", TermPhrase.NONE),
            TermPhrase.term(
                    "every limit holds",
                    "the set pressures between which no limit fails",
                    "window, map",
                    "all_hold",
                    "from",
                    "to"),
            TermPhrase.term(
                    "else fails at",
                    "the driving condition at which a limit fails below or above its pressures",
                    "window",
                    "low_by",
                    "high_by"),
            TermPhrase.term(
                    "fails below",
                    "the limit that fails first with less set pressure, and in brackets the one tried",
                    "map",
                    TermPhrase.NONE,
                    "below, fails first"),
            TermPhrase.term(
                    "fails above",
                    "the limit that fails first with more set pressure, and in brackets the one tried",
                    "map",
                    TermPhrase.NONE,
                    "above, fails first"),
            TermPhrase.term(
                    "range",
                    "a position of the gear train: the clutches that it applies and the oil that it feeds",
                    "torque, sweep",
                    "range"),
            TermPhrase.term(
                    "ratio",
                    "turbine speed over output speed of a range, where the file gives gearsets",
                    "torque",
                    "ratio"),
            TermPhrase.term(
                    "gives first",
                    "the part that first fails to hold as engine torque is raised; then the next",
                    "torque",
                    TermPhrase.NONE,
                    "first",
                    "second",
                    "factor",
                    "engine",
                    "engine torque"),
            TermPhrase.term(
                    "lasts", "how long a driving condition lasts, and after which one", "heat", TermPhrase.NONE),
            TermPhrase.term("sump", "the oil in the pan; its temperature is the unit's", "heat", TermPhrase.NONE),
            TermPhrase.term(
                    "oil from the converter",
                    "the hottest oil of the unit, on its way to the cooler",
                    "heat",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "oil on its way",
                    "heat of oil that is throttled on its way through passages, valves and leaks",
                    "heat",
                    "throttling_w",
                    "pump, oil on its way, film"),
            TermPhrase.term(
                    "misfit",
                    "how far readings stand from what is expected, counted in what gauges and fits may be off",
                    "gauge; about as many as there are readings is usual",
                    "chi_square",
                    "chi-square",
                    "misfit left"),
            TermPhrase.term(
                    "gauge full scale",
                    "the last mark of a gauge's dial; it may be off by its accuracy, 2 % say, of that",
                    "sheet --readings, gauge",
                    TermPhrase.NONE,
                    "full scale",
                    "gauge accuracy",
                    "accuracy"),
            TermPhrase.term(
                    "eccentricity",
                    "how far a valve lies to one side of its bore: 0 in the middle, 1 touching: leaks most",
                    "air, part",
                    TermPhrase.NONE),
            TermPhrase.term(
                    "Reynolds number",
                    "low, oil flows laminar and thick oil less; high, turbulent, thick or thin alike",
                    "part",
                    TermPhrase.NONE,
                    "regime",
                    "laminar",
                    "turbulent"),
            TermPhrase.term(
                    "units drawn",
                    "units made up by chance, within how fits may lie; the same seed draws the same ones",
                    "spread",
                    TermPhrase.NONE,
                    "seed"),
            TermPhrase.term(
                    "sound build",
                    "a unit as its file has it, worn or not, with no fault put in",
                    "gauge, report --readings",
                    "sound_mean",
                    "sound"),
            TermPhrase.term(
                    "stands out",
                    "a reading further off than a sound build's, its gauge allowed for",
                    "gauge, report --readings",
                    "stands_out"),
            TermPhrase.term(
                    "reads alike",
                    "a cause that these readings cannot tell from the one above it",
                    "gauge --plot",
                    "groups",
                    "cannot tell them apart"),
            TermPhrase.term(
                    "gauge port",
                    "a place at which a gauge can be fitted, as the file's taps: name it",
                    "sweep --plot-taps, report --lesson",
                    "tap",
                    "taps",
                    "port"),
            TermPhrase.term(
                    "sampling error",
                    "how far a share may be off because only some units were drawn",
                    "spread",
                    TermPhrase.NONE,
                    "95 % interval"),
            TermPhrase.term(
                    "cannot show",
                    "a fault of any size that these readings cannot tell from none",
                    "gauge",
                    "can_show"),
            TermPhrase.term(
                    "all fits together",
                    "sizes that explain readings best, were there only wear; measured ones are held",
                    "gauge --full",
                    "fits_together",
                    "most likely",
                    "held by"),
            TermPhrase.term(
                    "taper and ovality",
                    "a bore not straight or not round; its readings become one that leaks as much",
                    "check --sheet",
                    TermPhrase.NONE,
                    "taper",
                    "ovality",
                    "readings"),
            TermPhrase.term(
                    "most worth measuring",
                    "the fit that settles most of the doubt whether limits hold, once it is known",
                    "spread",
                    "most_worth_measuring",
                    "worth measuring",
                    "settles",
                    "settles of the doubt"),
            TermPhrase.term(
                    "driven by",
                    "shares of a headroom's variance that a size brings, alone and with others",
                    "spread",
                    "drivers",
                    "alone",
                    "with others"),
            TermPhrase.term(
                    "drawn as",
                    "how a size that nobody measured may lie: sound, worn, or about an assumed area",
                    "spread",
                    "drawn_as",
                    "drawn",
                    "unmeasured",
                    "5 of 100 below",
                    "95 of 100 below"),
            TermPhrase.term(
                    "useful pressure",
                    "the set pressure above which a shaft or another rated link gives first",
                    "torque, window",
                    "first_from_pa",
                    "crossing",
                    "more set pressure"),
            TermPhrase.term(
                    "beyond the jobs",
                    "what makes a stage and is no job: spring, command, shaft; in no hours, no price",
                    "torque --stages",
                    "other_set"),
            TermPhrase.term(
                    "line needed",
                    "the line pressure at which all clutches of a range carry an engine torque",
                    "torque --full",
                    "needed_pa",
                    "needs"),
            TermPhrase.term(
                    "wastes",
                    "a line more than a quarter above what the clutches need (chosen)",
                    "torque --full",
                    "verdict: wastes"),
            TermPhrase.term(
                    "wear reserve",
                    "how far all fits may wear together, from new to their limits, before a limit is gone",
                    "torque --stages, wear",
                    "wear_share",
                    "fits may wear"));
}
