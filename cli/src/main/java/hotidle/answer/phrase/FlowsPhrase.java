package hotidle.answer.phrase;

/** What a reader of flows must know. */
public final class FlowsPhrase {

    /** Why one stream shows several flows. */
    public static final String VOLUMES =
            "Flows through parts are volumes as they pass, at the pressure and temperature there. One and the same stream shows a few"
                    + " per cent more behind each restriction, since its air expands as pressure falls, and less behind a cooler:"
                    + " that is no leak. What the pump displaces, what is lost of it and what comes back to its inlet are counted"
                    + " as the pump takes oil in, as by 'hotidle leaks', so that they add up.";

    /** The same, and what else stands in the lines of a circuit in which nothing is commanded. */
    public static final String UNCOMMANDED =
            "A pump delivers what it sweeps (displacement x speed x filling) and what its tips drag along, less all slip,"
                    + " counted as it is at the inlet. A flow left blank: that passage is shut at this driving condition. "
                    + VOLUMES;

    private FlowsPhrase() {}
}
