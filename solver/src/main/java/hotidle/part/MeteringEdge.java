package hotidle.part;

import hotidle.law.Hole;
import hotidle.law.SeriesLoss;

/**
 * The loss of a spool's metering edge at an underlap s, the area that it uncovers, and their slopes by s. Work space of a law; the
 * formulas stand at {@link SpoolValve}.
 */
final class MeteringEdge {
    double area;
    double areaSlope;
    double viscous;
    double viscousSlope;
    double kinetic;
    double kineticSlope;

    /**
     * @param opening the opening
     * @param c       radial clearance [m]
     * @param sealing viscous coefficient of a length of overlap [1/m⁴]
     * @param s       underlap, negative where the land overlaps [m]
     */
    void find(SpoolValve.Opening opening, double c, double sealing, double s) {
        double width = opening.width();
        double root = Math.sqrt(s * s + c * c);
        // each of the two is c²/4 over the other, which keeps the digits of the smaller one
        double larger = (root + Math.abs(s)) / 2;
        double smaller = c * c / (4 * larger);
        double open = s >= 0 ? larger : smaller;
        double openSlope = open / root;
        double rounded = s >= 0 ? smaller : larger;
        double squares = rounded * rounded + c * c;
        double overlap = rounded * rounded * rounded / squares;
        double overlapSlope =
                -rounded / root * (rounded * rounded * (rounded * rounded + 3 * c * c)) / (squares * squares);
        area = opening.uncovered(open);
        areaSlope = opening.chord(open) * openSlope;
        double whole = Math.hypot(area, width * c);
        double wholeSlope = area * areaSlope / whole;

        // the annulus of the overlap, then the creeping limit of a slit of the same area
        double gap = whole / width;
        double slit = SLIT / (width * gap * gap);
        viscous = sealing * overlap + slit;
        viscousSlope = sealing * overlapSlope - 2 * slit * wholeSlope / whole;
        kinetic = Hole.kinetic(whole, opening.discharge());
        kineticSlope = -2 * kinetic * wholeSlope / whole;
    }

    /** Creeping flow through a slit of gap b: q = π·w·b²·Δp/(32·μ), Merritt 1967 §3-3 (from memory). */
    private static final double SLIT = 32 / Math.PI;

    SeriesLoss loss() {
        return new SeriesLoss(viscous, kinetic);
    }
}
