package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;

/** The film in the hub bushing over engine speed. */
public record HubFilmPhrase(Quantity.UnitSystem units) {

    /** In the cell of a table: the film is gone, and how thick it would be nobody knows. */
    public static final String CONTACT = "metal contact";

    /** The same in a narrow column headed as the film. */
    public static final String CONTACT_SHORT = "contact";

    /** Metal touches at these speeds [rev/s], with the oil of a duty. */
    public String contact(String duty, List<Double> speeds) {
        return "At the temperatures of " + duty + " the hub loses its film "
                + (speeds.size() == 1 ? "at " : "from ") + cell(speeds) + " "
                + Quantity.SPEED.in(units).unit() + ": metal contact, film not known.";
    }

    /**
     * The thinnest film.
     *
     * @param speed      where it is thinnest [rev/s]
     * @param film       [m]
     * @param allowed    the least one allowed [m]
     * @param tooThin    whether it is thinner
     * @param unbalanced whether the secondary is unloaded there, so that the side load of the primary stands alone
     * @param otherwise  the same with the oil that tables and charts have, as {@link #inOil} says it; empty where it is that
     */
    public String thinnest(
            double speed,
            String duty,
            double film,
            double allowed,
            boolean tooThin,
            boolean unbalanced,
            String otherwise) {
        return "Hub film thinnest with " + inOil(duty, film, speed)
                + (otherwise.isEmpty() ? "" : " (with " + otherwise + ")") + (tooThin ? ": TOO THIN, " : "; ")
                + Quantity.FILM.number(units, allowed) + " is the least allowed (assumed)"
                + (unbalanced ? "; there the secondary stops balancing the primary's side load" : "") + ".";
    }

    /** A film [m] and its speed [rev/s] in the oil of a driving condition, which is as hot as there. */
    public String inOil(String duty, double film, double speed) {
        return duty + " oil: " + Quantity.FILM.with(units, film) + " at " + Quantity.SPEED.with(units, speed);
    }

    /**
     * Beside the thinnest film of a build in a picture.
     *
     * @param film  [m]
     * @param speed [rev/s]
     * @param known whether it is known to hold or to fail
     */
    public String mark(String build, double film, double speed, boolean known) {
        return build + ": thinnest " + Quantity.FILM.with(units, film) + " at " + Quantity.SPEED.with(units, speed)
                + (known ? "" : ", NOT KNOWN whether it holds");
    }

    /** The speeds [rev/s] of metal contact in the cell of a table. */
    public String cell(List<Double> speeds) {
        String first = Quantity.SPEED.number(units, speeds.get(0));
        return speeds.size() == 1
                ? first
                : first + " to " + Quantity.SPEED.number(units, speeds.get(speeds.size() - 1));
    }
}
