package hotidle.plots;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** One chart of a picture. */
public interface Chart {

    /** What it shows, in a sentence. */
    String title();

    /** How many things its legend explains, about: the more, the higher it must be. */
    default int explained() {
        return 1;
    }

    /** The scale that this chart would take alone. */
    Axes scale();

    /**
     * Draws the chart.
     *
     * @param graphics what to draw on
     * @param area     where to [px]
     * @param scale    shared with the other charts of the picture
     */
    void paint(Graphics2D graphics, Rectangle2D area, Axes scale);
}
