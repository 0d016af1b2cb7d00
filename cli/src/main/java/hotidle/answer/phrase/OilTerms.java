package hotidle.answer.phrase;

import java.util.List;

/** The words of oil that is lost, used or spared, and of repairs. */
final class OilTerms {

    private OilTerms() {}

    static final List<TermPhrase.Term> ALL = List.of(
            TermPhrase.term(
                    "pump slip",
                    "oil that slips back inside the pump past faces, tips and mesh; clutches slip too",
                    "compare, leaks",
                    "pump_slip_m3_s",
                    "slip in the pump",
                    "slip"),
            TermPhrase.term("leaks", "oil lost past worn fits outside the pump", "compare, leaks", "leak_m3_s", "leak"),
            TermPhrase.term(
                    "pump slip and leaks",
                    "both together, so counted that builds of unlike regulators are like for like",
                    "compare",
                    TermPhrase.NONE,
                    "lost"),
            TermPhrase.term(
                    "back",
                    "oil that the regulator sends back to the pump's inlet: what the pump has to spare",
                    "sweep --full",
                    "recirculated_m3_s",
                    "comes back",
                    "sent back"),
            TermPhrase.term(
                    "lubrication",
                    "whether each lube branch gets the oil that it needs",
                    "margins, compare",
                    "margin: lubrication",
                    "lube flow",
                    "lube",
                    "short",
                    "short of oil"),
            TermPhrase.term("cooler", "whether the cooler gets the oil that it needs", "margins", "margin: cooler"),
            TermPhrase.term(
                    "converter charge",
                    "the pressure that keeps the converter from cavitating",
                    "margins",
                    "margin: converter-charge",
                    "converter-charge",
                    "charge",
                    "converter feed"),
            TermPhrase.term(
                    "loses most",
                    "paths by which most oil is lost, then the rest: they sum up to what the pump displaces",
                    "leaks",
                    "paths",
                    "used or sent back"),
            TermPhrase.term("share", "of what the pump displaces", "leaks", "share"),
            TermPhrase.term(
                    "repairs in the best order",
                    "the repair that wins most first, each with those above it done",
                    "leaks",
                    "order",
                    "repair",
                    "to new"),
            TermPhrase.term(
                    "job",
                    "what a shop restores in one go, as the pump or the valve body's bores",
                    "leaks --by job",
                    "job",
                    "each alone",
                    "hours",
                    "price",
                    "limits failing, each alone"),
            TermPhrase.term(
                    "pump power",
                    "what all chambers and the hub's film take from the engine; all of it ends as heat",
                    "compare, sweep",
                    "power_w",
                    "power",
                    "most pump power",
                    "most pump power, anywhere"));
}
