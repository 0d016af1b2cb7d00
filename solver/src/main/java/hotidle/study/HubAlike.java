package hotidle.study;

import hotidle.newton.SolvedState;

/**
 * What is known of the hub at one speed when a unit alike is asked.
 *
 * @param state there in the unit before: solved, or led to by what moved beside it
 * @param open  whether the pump's oil went back to its inlet there
 * @param film  by what its film is to be multiplied where it was not solved
 * @param load  by what its unit load is
 */
record HubAlike(SolvedState state, boolean open, Moved film, Moved load) {

    /** A state that was solved. */
    static HubAlike of(SolvedState state, boolean open) {
        return new HubAlike(state, open, Moved.NOT, Moved.NOT);
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

        Moved times(double factor) {
            return new Moved(least * factor, most * factor);
        }

        double middle() {
            return (least + most) / 2;
        }

        /** What is left of a factor when this has been part of it. */
        Moved upTo(double whole) {
            return new Moved(whole / most, whole / least);
        }

        /** Between this and another, and by as much as they are apart to either side. */
        Moved around(Moved other) {
            double low = Math.min(least, other.least);
            double high = Math.max(most, other.most);
            return new Moved(low - (high - low), high + (high - low));
        }
    }
}
