package hotidle.part;

import hotidle.law.Channel;
import java.util.List;
import java.util.Map;

/**
 * One kind of part, with its dimensions. It knows neither its name nor the nodes it stands between.
 *
 * <p>A part has any number of ports, of own states and of signals read from elsewhere. What changes from one duty to the next
 * but not within a solve (speed, range, temperatures and so clearances) is settled once in {@link #law}; the law that comes
 * back is evaluated in the inner loop.
 */
public sealed interface Part
        permits AnnularGap,
                Bushing,
                CheckValve,
                Clutch,
                Converter,
                Cooler,
                FaceGap,
                Filter,
                FlatGap,
                LubeBranch,
                Orifice,
                Passage,
                PumpChamber,
                PumpInlet,
                ReliefValve,
                SealingRing,
                Selector,
                SignalValve,
                Solenoid,
                SpoolValve {

    /** Ports, own states and signals, in the order in which the law counts them. */
    Form form();

    /**
     * This part at one duty.
     *
     * @param setting what is given for the whole solve
     */
    Law law(Setting setting);

    /** What the oil wets on each path, by the path's name; paths that have no geometry are left out. */
    default Map<String, Channel> channels() {
        return Map.of();
    }

    /** Clearances that grow with temperature, by what they are called. */
    default Map<String, Fit> fits() {
        return Map.of();
    }

    /** What a part of this kind gives beside its flow, in the order of reading; some only in some states. */
    default List<Measure> measures() {
        return List.of();
    }

    /** A law of flow and balance at one duty. */
    interface Law {

        /**
         * Adds flows, balances and slopes at the state read.
         *
         * <p>Flow at a port is a mass flow [kg/s], positive from the node into the part. A state x between its stops has a
         * balance F(x) that rises with x: zero between the stops, zero or more at the lower one, zero or less at the upper.
         */
        void evaluate(Reading in, Stamp out);

        /** The paths that oil takes through the part at the state read; their flows add up to the flow at each port. */
        Iterable<Stream> streams(Reading in);

        /** The same law at another engine speed [rev/s], all else being equal; a part that does not turn is the same at any. */
        default Law atSpeed(double speed) {
            return this;
        }

        /** Flow that the part's equations are judged against [m³/s]: what a pump sweeps at this duty, 0 for all other parts. */
        default double delivery() {
            return 0;
        }

        /** Those of the part's measures that there are at the state read, in their order. */
        default List<Measure.Reported> measures(Reading in) {
            return List.of();
        }
    }
}
