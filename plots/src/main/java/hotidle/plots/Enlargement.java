package hotidle.plots;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/**
 * The low speeds of another chart of the same picture, on a scale of their own: there the flows are small and the story is. Curves are
 * explained where they are shown whole.
 */
public final class Enlargement implements Chart {

    private final Chart part;

    private Enlargement(Chart part) {
        this.part = part;
    }

    /**
     * Of pressures.
     *
     * @param speed highest that is shown [rpm]; two states of each curve at least lie below
     * @param title its heading
     */
    public static Enlargement of(SpeedChart whole, double speed, String title) {
        return new Enlargement(whole.upTo(speed, title));
    }

    /** Of flows. */
    public static Enlargement of(OilChart whole, double speed, String title) {
        return new Enlargement(whole.upTo(speed, title));
    }

    @Override
    public String title() {
        return part.title();
    }

    @Override
    public Axes scale() {
        return part.scale();
    }

    @Override
    public void paint(Graphics2D graphics, Rectangle2D area, Axes scale) {
        Axes own = part.scale();
        Axes enlarged = new Axes(own.low(), own.high(), own.tops(), scale.bands(), scale.key());
        if (part instanceof SpeedChart pressures) {
            new SpeedDrawing(pressures, enlarged).enlarged(area.getWidth()).draw(graphics, area);
        } else {
            part.paint(graphics, area, enlarged);
        }
    }
}
