/**
 * The circuit drawn: boxes with symbols after ISO 1219-1, joined at named nets, on a sheet of paper. It gets plain values and knows
 * neither parts nor laws; the only package that sees the layout library.
 *
 * <p>A {@link hotidle.plots.scheme.Scheme} says what is there; {@link hotidle.plots.scheme.Sheet} is where everything stands, in
 * millimetres on the paper; it is painted as SVG, PNG or PDF.
 */
package hotidle.plots.scheme;
