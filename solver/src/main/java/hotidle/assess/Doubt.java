package hotidle.assess;

import hotidle.law.Channel;
import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import hotidle.part.Bushing;
import hotidle.part.Cooler;
import hotidle.result.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * A place in a solved state that lies outside what a law was made for. The state is still the solution of the equations.
 *
 * @param why   what is doubtful
 * @param where region, part, or part and path
 * @param value in SI
 * @param limit that it should keep, in SI
 */
public record Doubt(Why why, String where, double value, double limit) {

    /** The one of two doubts of a sort that is further past its limit. */
    public static Doubt worse(Doubt one, Doubt other) {
        return Math.abs(other.value - other.limit) > Math.abs(one.value - one.limit) ? other : one;
    }

    /** What makes a state doubtful. */
    public enum Why {
        /** Temperature of a region and the nearest one at which the oil's viscosity was measured [K]. */
        OIL_EXTRAPOLATED,
        /** Kinematic viscosity of the oil in a region and the least of the Walther line's form [m²/s]. */
        OIL_TOO_THIN,
        /** Reynolds number in a gap and the highest of laminar flow: {@link Channel.Geometry}. */
        GAP_NOT_LAMINAR,
        /** A clearance at temperature and the least that lets the pieces move [m]. */
        PIECES_BIND,
        /** How much hotter the middle of a film is than its walls, and what still counts as one temperature [K]. */
        FILM_NOT_EVEN,
        /** Reynolds number of a film and that of Taylor's vortices: {@link Channel#vortices}. */
        FILM_NOT_LAMINAR,
        /** Temperature at which a cooler's oil leaves, and the one that the duty gives it [K]. */
        OUTLET_NOT_AS_GIVEN
    }

    /** A film counts as even where its core is no hotter than this over its walls: the viscosity changes by some 10 % (ours) [K]. */
    private static final double EVEN = 5;

    /** A cooler's outlet counts as given within this: the viscosity behind it changes by some 20 % (ours) [K]. */
    private static final double AS_GIVEN = 10;

    /** All doubts about a state. */
    public static List<Doubt> of(Network network, Solution state) {
        List<Doubt> doubts = new ArrayList<>(oil(network, state.conditions()));
        for (Placed placed : network.parts()) {
            OilAt oil = state.conditions().setting(placed).oil();
            gaps(placed, state, oil, doubts);
            placed.part().fits().forEach((name, fit) -> {
                if (fit.gap(oil.temperature()) <= 0) {
                    doubts.add(new Doubt(Why.PIECES_BIND, placed.name(), fit.gap(oil.temperature()), 0));
                }
            });
            if (placed.part() instanceof Bushing bushing) {
                film(placed.name(), bushing, state, oil, doubts);
            } else if (placed.part() instanceof Cooler) {
                outlet(placed.name(), state, doubts);
            }
        }
        return doubts;
    }

    private static List<Doubt> oil(Network network, Conditions conditions) {
        List<Doubt> doubts = new ArrayList<>();
        Oil oil = conditions.oil();
        for (String region :
                new TreeSet<>(network.parts().stream().map(Placed::region).toList())) {
            double temperature = conditions.temperatures().get(region);
            if (oil.extrapolatedAt(temperature)) {
                double nearest = Math.min(
                        Math.max(temperature, oil.line().coldest()), oil.line().hottest());
                doubts.add(new Doubt(Why.OIL_EXTRAPOLATED, region, temperature, nearest));
            }
            if (oil.tooThinAt(temperature)) {
                doubts.add(new Doubt(Why.OIL_TOO_THIN, region, oil.kinematicViscosity(temperature), Oil.THINNEST));
            }
        }
        return doubts;
    }

    private static void gaps(Placed placed, Solution state, OilAt oil, List<Doubt> doubts) {
        Map<String, Channel> channels = placed.part().channels();
        for (Solution.PartStream stream : state.streams()) {
            Channel channel = stream.part().equals(placed.name()) ? channels.get(stream.name()) : null;
            if (channel != null && channel.form() == Channel.Geometry.SLOT) {
                double mean = (state.pressure(stream.from()) + state.pressure(stream.to())) / 2;
                double re = channel.reynolds(stream.mass(), oil.viscosity(mean));
                if (re > channel.form().laminar()) {
                    doubts.add(new Doubt(
                            Why.GAP_NOT_LAMINAR,
                            stream.key(),
                            re,
                            channel.form().laminar()));
                }
            }
        }
    }

    private static void film(String name, Bushing bushing, Solution state, OilAt oil, List<Doubt> doubts) {
        state.measure(name, Bushing.FILM_CORE_RISE).stream()
                .filter(core -> core > EVEN)
                .forEach(core -> doubts.add(new Doubt(Why.FILM_NOT_EVEN, name, core, EVEN)));
        double rise = bushing.heated() ? state.own(name, Bushing.FILM_HEATING) : 0;
        OilAt film = oil.warmer(rise);
        double radius = bushing.fit().inner() / 2;
        double clearance = state.measure(name, Bushing.RADIAL_CLEARANCE).orElseThrow();
        double surface = 2 * Math.PI * radius * state.conditions().speed();
        double re = film.liquidDensity() * surface * clearance / film.viscosity();
        if (re > Channel.vortices(radius, clearance)) {
            doubts.add(new Doubt(Why.FILM_NOT_LAMINAR, name, re, Channel.vortices(radius, clearance)));
        }
    }

    private static void outlet(String name, Solution state, List<Doubt> doubts) {
        state.measure(name, Cooler.OUTLET_TEMPERATURE).ifPresent(outlet -> {
            double given = state.measure(name, Cooler.OUTLET_TEMPERATURE_GIVEN).orElseThrow();
            if (Math.abs(outlet - given) > AS_GIVEN) {
                doubts.add(new Doubt(Why.OUTLET_NOT_AS_GIVEN, name, outlet, given));
            }
        });
    }
}
