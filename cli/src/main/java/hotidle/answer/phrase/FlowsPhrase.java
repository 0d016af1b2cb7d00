package hotidle.answer.phrase;

/** What a reader of flows must know. */
public final class FlowsPhrase {

    /** Why one stream shows several flows. */
    public static final String VOLUMES =
            "Flows are volumes as they pass, at the pressure and temperature there. One and the same stream shows a few per cent"
                    + " more behind each restriction, since its air expands as pressure falls, and less behind a cooler: that is no"
                    + " leak. 'hotidle leaks' counts all oil as the pump takes it in, so that it adds up.";

    /** The same, and what else stands in the lines of a circuit in which nothing is commanded. */
    public static final String UNCOMMANDED =
            "A pump delivers what it sweeps (displacement x speed x filling) and what its tips drag along, less all slip,"
                    + " counted as it is at the inlet. A flow left blank: that passage is shut at this driving condition. "
                    + VOLUMES;

    /** Said where leaks fall although nothing was repaired. */
    public static final String SHUT_LANDS =
            "What shut lands of the regulator let by counts as a leak only while it gives no oil back to the pump: once it does,"
                    + " that oil is to spare. So the leaks fall where the regulator begins to unload or to bypass, with no fit any"
                    + " tighter.";

    private FlowsPhrase() {}
}
