/**
 * Charts from plain numbers: line pressure against speed, and where the oil goes. The only package that sees JFreeChart.
 *
 * <p>A chart is an immutable record ({@link hotidle.plots.SpeedChart}, {@link hotidle.plots.OilChart}); a
 * {@link hotidle.plots.Picture} lays up to six of them out on one page, as PNG or SVG. Numbers arrive in the unit that
 * is shown; nothing is converted here. A number that is not known is NaN: it leaves a gap and is named in the legend.
 */
package hotidle.plots;
