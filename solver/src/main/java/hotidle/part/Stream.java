package hotidle.part;

import hotidle.law.Restriction;
import hotidle.oil.OilAt;

/**
 * One path of oil through a part.
 *
 * @param name empty where the part has one path only
 * @param from port that it leaves from when positive
 * @param to   port that it goes to when positive
 * @param mass mass flow [kg/s]
 * @param volume volume flow at the part's temperature and the mean of both pressures [m³/s]
 */
public record Stream(String name, int from, int to, double mass, double volume) {

    /** The stream through a restriction; the same oil state as in {@link Stamp#pass}. */
    public static Stream through(String name, Reading in, int from, int to, Restriction loss, OilAt oil) {
        return through(name, in, from, to, loss, oil, 0);
    }

    /** The same with a head [Pa] to climb. */
    static Stream through(String name, Reading in, int from, int to, Restriction loss, OilAt oil, double head) {
        double mean = (in.pressure(from) + in.pressure(to)) / 2;
        double density = oil.density(mean);
        double q = loss.flow(in.pressure(from) - in.pressure(to) - head, density, oil.viscosity(mean))
                .q();
        return new Stream(name, from, to, density * q, q);
    }
}
