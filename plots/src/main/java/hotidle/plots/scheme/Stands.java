package hotidle.plots.scheme;

/** The bar that shows where a spool stands between its stops [mm]. */
final class Stands {
    static final double WIDTH = 16;
    static final double HEIGHT = 3.2;

    private Stands() {}
}
