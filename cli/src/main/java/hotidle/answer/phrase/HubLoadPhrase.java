package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;

/** What the hub carries, and on what film. */
public record HubLoadPhrase(Quantity.UnitSystem units) {

    /**
     * Where its film is thinnest.
     *
     * @param speed    of the engine [rev/s]
     * @param load     [N]
     * @param unitLoad [Pa]
     * @param film     in the middle of its length [m]
     * @param edge     at the edge to which it leans [m]
     * @param trumpler film that Trumpler's rule asks for [m]
     */
    public String whereThinnest(double speed, double load, double unitLoad, double film, double edge, double trumpler) {
        return "Hub where its film is thinnest, " + Quantity.SPEED.with(units, speed) + ": load "
                + Quantity.FORCE.with(units, load) + ", unit load " + Quantity.PRESSURE.with(units, unitLoad)
                + ", film " + Quantity.FILM.with(units, film)
                + ", at the edge to which it leans " + Quantity.FILM.with(units, edge)
                + ". Trumpler's rule for ground journals, from which on it is known to hold, asks for "
                + Quantity.FILM.with(units, trumpler) + ".";
    }

    /** Above the films of several builds, each line at one speed. */
    public String sameSpeed() {
        return "Hub film [" + Quantity.FILM.in(units).unit()
                + "] of all builds at the same speed: each line is a speed at which one build is thinnest";
    }

    /** Speeds searched [rev/s] at which no state was found. */
    public String notKnown(int speeds, double first) {
        return "At " + speeds + " of the speeds searched no steady state was found, the first "
                + Quantity.SPEED.with(units, first) + ": film and load are not known there.";
    }
}
