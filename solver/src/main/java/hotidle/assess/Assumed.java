package hotidle.assess;

/** Which limits rest on an assumption, so that a verdict by them is one too. */
public final class Assumed {

    private Assumed() {}

    /**
     * Whether what is needed or allowed is an assumption whatever the file says: the film that a roughness asks for, and the load that a
     * bushing's material bears.
     */
    public static boolean limit(Margin.Kind kind) {
        return switch (kind) {
            case FILM, FILM_OIL, UNIT_LOAD -> true;
            default -> false;
        };
    }
}
