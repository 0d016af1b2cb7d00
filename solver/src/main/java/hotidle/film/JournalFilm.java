package hotidle.film;

/** Film (being written). */
public final class JournalFilm {
    private final double r;

    private JournalFilm(double r) {
        this.r = r;
    }

    public static JournalFilm of(double lengthOverDiameter) {
        return new JournalFilm(lengthOverDiameter);
    }

    public double load(double e) {
        return r
                * r
                * Math.PI
                * e
                * Math.sqrt(Math.PI * Math.PI * (1 - e * e) + 16 * e * e)
                / ((1 - e * e) * (1 - e * e));
    }

    public double loadSlope(double e) {
        double h = 1e-7;
        return (load(Math.min(e + h, 0.9999)) - load(e - h)) / (2 * h);
    }

    public double attitude(double e) {
        return 0;
    }

    public double friction(double e) {
        return 0;
    }

    public double sideFlow(double e) {
        return 0;
    }
}
