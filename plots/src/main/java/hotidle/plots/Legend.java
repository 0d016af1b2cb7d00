package hotidle.plots;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * A legend in rows, each as long as fits; texts that are too long for a row are broken between words.
 *
 * @param entries in reading order
 */
record Legend(List<KeySample> entries) {
    private static final double SAMPLE = 30;
    private static final double GAP = 8;
    private static final double BETWEEN = 12;
    private static final double LINE = 17;
    private static final double PAD = 6;

    /**
     * One line of a legend.
     *
     * @param text   what it means
     * @param sample draws the look into a small rectangle
     */
    record KeySample(String text, BiConsumer<Graphics2D, Rectangle2D> sample) {}

    /**
     * An entry with its text broken to lines.
     *
     * @param entry what is explained
     * @param lines of its text
     * @param width with the sample [px]
     */
    private record WrappedSample(KeySample entry, List<String> lines, double width) {}

    /** Whether it tells all of these, by their texts. */
    boolean tells(List<KeySample> others) {
        return entries.stream()
                .map(KeySample::text)
                .toList()
                .containsAll(others.stream().map(KeySample::text).toList());
    }

    /** The same with those of others that it does not tell yet. */
    Legend with(List<KeySample> others) {
        List<KeySample> all = new ArrayList<>(entries);
        others.stream().filter(other -> !tells(List.of(other))).forEach(all::add);
        return new Legend(all);
    }

    /** Height that it takes in this width [px]. */
    double height(Graphics2D g, double width) {
        return entries.isEmpty()
                ? 0
                : rows(g, width).stream().mapToDouble(Legend::height).sum() + 2 * PAD;
    }

    /** Draws it from the top left of the area. */
    void paint(Graphics2D g, Rectangle2D area) {
        double y = area.getMinY() + PAD;
        for (List<WrappedSample> row : rows(g, area.getWidth())) {
            double x = area.getMinX();
            for (WrappedSample item : row) {
                paint(g, item.entry(), item.lines(), x, y);
                x += item.width() + BETWEEN;
            }
            y += height(row);
        }
    }

    private static void paint(Graphics2D g, KeySample entry, List<String> lines, double x, double y) {
        entry.sample().accept(g, new Rectangle2D.Double(x, y + 2, SAMPLE, LINE - 4));
        g.setFont(Style.SMALL);
        g.setPaint(Color.BLACK);
        FontMetrics font = g.getFontMetrics();
        double base = y + (LINE + font.getAscent() - font.getDescent()) / 2;
        for (int i = 0; i < lines.size(); i++) {
            g.drawString(lines.get(i), (float) (x + SAMPLE + GAP), (float) (base + i * LINE));
        }
    }

    /** Words joined to lines no wider than the width; a word that is wider stands alone. */
    static List<String> broken(String text, FontMetrics font, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (line.length() > 0 && font.stringWidth(line + " " + word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static double height(List<WrappedSample> row) {
        return LINE * row.stream().mapToInt(item -> item.lines().size()).max().orElse(0);
    }

    private List<List<WrappedSample>> rows(Graphics2D g, double width) {
        FontMetrics font = g.getFontMetrics(Style.SMALL);
        List<List<WrappedSample>> rows = new ArrayList<>();
        double used = Double.POSITIVE_INFINITY;
        for (KeySample entry : entries) {
            List<String> lines = broken(entry.text(), font, width - SAMPLE - GAP);
            double own = SAMPLE
                    + GAP
                    + lines.stream().mapToInt(font::stringWidth).max().orElse(0);
            if (used + BETWEEN + own > width) {
                rows.add(new ArrayList<>());
                used = -BETWEEN;
            }
            rows.get(rows.size() - 1).add(new WrappedSample(entry, lines, own));
            used += BETWEEN + own;
        }
        return rows;
    }
}
