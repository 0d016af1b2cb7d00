package hotidle.transmission;

/** Asked for what only a unit with a pressure command has, of one without: a bench that nothing regulates. */
public final class NotCommandedException extends IllegalStateException {

    NotCommandedException(String circuit) {
        super(circuit + " is not commanded: it has no command section, so it has no set pressure and no regulator");
    }
}
