package hotidle.heat;

/**
 * The two temperatures that store heat.
 *
 * @param sump      of the pan [K]
 * @param converter of the oil that leaves the converter [K]; the sump's in a unit without one
 */
public record Temperatures(double sump, double converter) {

    Temperatures moved(double bySump, double byConverter) {
        return new Temperatures(sump + bySump, converter + byConverter);
    }
}
