package hotidle.answer.phrase;

import hotidle.assess.Figures;

/** What the regulator does, in a few words. */
public final class RegulatorPhrase {

    /** Behind what is said of a line whose regulator is stuck. */
    public static final String STUCK = "Its regulator is stuck: it does not regulate.";

    private RegulatorPhrase() {}

    /**
     * What it does; a starved inlet is said beside it.
     *
     * @param inletStarved whether the pump fills in part only
     */
    public static String of(Figures.Regulator regulator, boolean inletStarved) {
        String does =
                switch (regulator) {
                    case NOT_COMMANDED -> "not commanded";
                    case ON_ITS_SEAT -> "on its seat";
                    case OFF_ITS_SEAT_BUT_LOW -> "off its seat but low";
                    case REGULATING -> "regulating";
                    case STUCK -> "stuck";
                    case FAR_ABOVE -> "far above its set pressure";
                    case RELIEF_OPEN -> "relief open";
                };
        return inletStarved ? does + ", inlet starved" : does;
    }
}
