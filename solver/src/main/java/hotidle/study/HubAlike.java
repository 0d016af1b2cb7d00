package hotidle.study;

import hotidle.newton.SolvedState;

/**
 * What is known of the hub at one speed when a unit alike is asked: the state solved there last, and by how much film and unit load
 * have moved since, where units after it were not solved there.
 *
 * @param state solved
 * @param film  by what its film was multiplied since
 * @param load  by what its unit load was multiplied since
 */
record HubAlike(SolvedState state, Moved film, Moved load) {

    /** A state of this very unit. */
    static HubAlike of(SolvedState state) {
        return new HubAlike(state, Moved.NOT, Moved.NOT);
    }

    /** The same seen from a unit further on. */
    HubAlike onwards(Moved film, Moved load) {
        return new HubAlike(state, this.film.then(film), this.load.then(load));
    }

    /**
     * Between what a figure was multiplied.
     *
     * @param least [-]
     * @param most  [-]
     */
    record Moved(double least, double most) {

        static final Moved NOT = new Moved(1, 1);

        Moved then(Moved next) {
            return new Moved(least * next.least, most * next.most);
        }
    }
}
