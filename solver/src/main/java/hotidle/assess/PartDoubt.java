package hotidle.assess;

import hotidle.law.Channel;
import hotidle.network.Placed;
import hotidle.oil.OilAt;
import hotidle.part.Bushing;
import hotidle.part.Form;
import hotidle.part.OwnState;
import hotidle.part.PumpInlet;
import hotidle.part.Solenoid;
import hotidle.result.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What to be careful about in the state of one part on its own.
 *
 * @param why   what it is
 * @param where fit, path or own state; empty where the part has one of it only
 * @param value Reynolds number, where it is one [-]
 * @param limit that it should keep [-], where there is one
 */
public record PartDoubt(Concern why, String where, OptionalDouble value, OptionalDouble limit) {

    /** One of a Reynolds number against its limit [-]. */
    public PartDoubt(Concern why, String where, double value, double limit) {
        this(why, where, OptionalDouble.of(value), OptionalDouble.of(limit));
    }

    /** One without a number. */
    public PartDoubt(Concern why, String where) {
        this(why, where, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** What there is to be careful about. */
    public enum Concern {
        /** No clearance is left in a fit at this temperature. */
        PIECES_BIND,
        /** Reynolds number in a gap and the highest of laminar flow: {@link Channel.Geometry}. */
        GAP_NOT_LAMINAR,
        /** What should regulate rests at its lower stop. */
        AT_LOWER_STOP,
        /** It rests at its upper stop. */
        AT_UPPER_STOP,
        /** The pressure at an inlet is below that at which air is released. */
        STARVED,
        /** The film does not carry the load. */
        METAL_CONTACT,
        /** The film is thinner at its edge than the roughness of its walls permits. */
        FILM_TOO_THIN,
        /** The unit load is above that of the bushing's material. */
        LOAD_TOO_HIGH,
        /** Reynolds number of a film and that of Taylor's vortices: {@link Channel#vortices}. */
        FILM_NOT_LAMINAR
    }

    /** Own states of pieces that regulate while they are between their stops. */
    private static final Set<OwnState> REGULATING = Set.of(OwnState.POSITION, Solenoid.OPENING);

    /** Fits that have no clearance left, whether there is a state or not. */
    public static List<PartDoubt> fits(Placed placed, double temperature) {
        List<PartDoubt> doubts = new ArrayList<>();
        placed.part().fits().forEach((name, fit) -> {
            if (fit.gap(temperature) <= 0) {
                doubts.add(new PartDoubt(Concern.PIECES_BIND, name));
            }
        });
        return doubts;
    }

    /**
     * All doubts about a state but those of its fits.
     *
     * @param flow through it
     * @param oil  at its temperature
     * @param held own states that are held from outside, so that they rest where they are put
     */
    public static List<PartDoubt> of(Placed placed, PartFlow flow, OilAt oil, Set<String> held, Solution state) {
        List<PartDoubt> doubts = new ArrayList<>();
        gaps(placed, flow, doubts);
        stops(placed, held, state, doubts);
        if (placed.part() instanceof Bushing bushing) {
            film(placed.name(), bushing, oil, state, doubts);
        }
        return doubts;
    }

    private static void gaps(Placed placed, PartFlow flow, List<PartDoubt> doubts) {
        for (PartFlow.PathFlow path : flow.paths()) {
            Channel channel = placed.part().channels().get(path.name());
            if (channel != null && channel.form() == Channel.Geometry.SLOT) {
                double reynolds = path.reynolds().orElseThrow();
                double laminar = channel.form().laminar();
                if (reynolds > laminar) {
                    doubts.add(new PartDoubt(Concern.GAP_NOT_LAMINAR, path.name(), reynolds, laminar));
                }
            }
        }
    }

    private static void stops(Placed placed, Set<String> held, Solution state, List<PartDoubt> doubts) {
        for (Form.Unknown unknown : placed.part().form().states()) {
            String name = unknown.name();
            double at = state.own(placed.name(), unknown.state());
            boolean moves =
                    unknown.high() > unknown.low() && !held.contains(name) && REGULATING.contains(unknown.state());
            if (moves && at <= unknown.low()) {
                doubts.add(new PartDoubt(Concern.AT_LOWER_STOP, name));
            } else if (moves && at >= unknown.high()) {
                doubts.add(new PartDoubt(Concern.AT_UPPER_STOP, name));
            }
            if (unknown.state().equals(PumpInlet.FILLING) && at < 1) {
                doubts.add(new PartDoubt(Concern.STARVED, ""));
            }
        }
    }

    private static void film(String name, Bushing bushing, OilAt oil, Solution state, List<PartDoubt> doubts) {
        if (state.measure(name, Bushing.METAL_CONTACT).orElse(0) > 0) {
            doubts.add(new PartDoubt(Concern.METAL_CONTACT, ""));
        }
        OptionalDouble film = state.measure(name, Bushing.EDGE_FILM);
        if (film.isPresent()
                && film.getAsDouble()
                        < state.measure(name, Bushing.PERMISSIBLE_FILM).orElse(0)) {
            doubts.add(new PartDoubt(Concern.FILM_TOO_THIN, ""));
        }
        if (state.measure(name, Bushing.UNIT_LOAD).orElseThrow()
                > state.measure(name, Bushing.PERMISSIBLE_LOAD).orElse(Double.POSITIVE_INFINITY)) {
            doubts.add(new PartDoubt(Concern.LOAD_TOO_HIGH, ""));
        }
        double clearance = state.measure(name, Bushing.RADIAL_CLEARANCE).orElseThrow();
        double radius = bushing.fit().inner() / 2;
        double surface = 2 * Math.PI * radius * state.conditions().speed();
        double reynolds = oil.liquidDensity() * surface * clearance / oil.viscosity();
        if (reynolds > Channel.vortices(radius, clearance)) {
            doubts.add(new PartDoubt(Concern.FILM_NOT_LAMINAR, "", reynolds, Channel.vortices(radius, clearance)));
        }
    }
}
