package hotidle.part;

import hotidle.law.Flow;
import hotidle.law.Restriction;
import hotidle.law.SeriesLoss;
import hotidle.oil.OilAt;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What a part answers: mass flow at each port, balance of each state, and their slopes. Work space of the solver, into whose arrays
 * it adds straight away.
 */
public final class Stamp {

    private final int ports;
    private final int columns;
    private final double[] value;
    private final int[] rowOf;
    private final double[] slope;
    private final int[] placeOf;
    private final Flow flow = new Flow();

    /** A stamp of its own, for one part alone. */
    public Stamp(Form form) {
        this(
                form,
                new double[rows(form)],
                count(rows(form)),
                new double[rows(form) * columns(form)],
                count(rows(form) * columns(form)));
    }

    /**
     * A stamp that adds into arrays of the caller.
     *
     * @param value   values of all equations
     * @param rowOf   place in {@code value} of each row of the part
     * @param slope   slopes of all equations
     * @param placeOf place in {@code slope} of each row and column of the part, row by row
     */
    public Stamp(Form form, double[] value, int[] rowOf, double[] slope, int[] placeOf) {
        ports = form.ports().size();
        columns = columns(form);
        this.value = value;
        this.rowOf = rowOf;
        this.slope = slope;
        this.placeOf = placeOf;
    }

    private static int rows(Form form) {
        return form.ports().size() + form.states().size();
    }

    private static int columns(Form form) {
        return rows(form) + form.signals().size();
    }

    private static int[] count(int length) {
        return IntStream.range(0, length).toArray();
    }

    /** Forgets everything. */
    public void clear() {
        Arrays.fill(value, 0);
        Arrays.fill(slope, 0);
    }

    /** Number of rows: ports, then states. */
    public int rows() {
        return rowOf.length;
    }

    /** Number of columns: ports, states, signals. */
    public int columns() {
        return columns;
    }

    /** Value of a row. */
    public double value(int row) {
        return value[rowOf[row]];
    }

    /** Slope of a row by a column. */
    public double slope(int row, int column) {
        return slope[placeOf[row * columns + column]];
    }

    /** Adds a mass flow from one port to another [kg/s]. */
    public void move(int from, int to, double flow) {
        value[rowOf[from]] += flow;
        value[rowOf[to]] -= flow;
    }

    /** Adds the slope of a flow from one port to another. */
    public void moveSlope(int from, int to, int column, double by) {
        slope[placeOf[from * columns + column]] += by;
        slope[placeOf[to * columns + column]] -= by;
    }

    /** Adds to the balance of a state. */
    public void balance(int state, double force) {
        value[rowOf[ports + state]] += force;
    }

    /** Adds to the slope of a state's balance. */
    public void balanceSlope(int state, int column, double by) {
        slope[placeOf[(ports + state) * columns + column]] += by;
    }

    /**
     * Oil through a restriction from one port to another, with the oil's density and viscosity at the mean of both pressures.
     *
     * @return the flow, for slopes by the opening; good until the next one
     */
    public Flow pass(Reading in, int from, int to, SeriesLoss loss, OilAt oil) {
        return pass(in, from, to, loss.viscous(), loss.kinetic(), oil);
    }

    /** The same for a loss given by its coefficients. */
    Flow pass(Reading in, int from, int to, double viscous, double kinetic, OilAt oil) {
        double mean = (in.pressure(from) + in.pressure(to)) / 2;
        double drop = in.pressure(from) - in.pressure(to);
        double density = oil.density(mean);
        double viscosity = oil.viscosity(mean);
        SeriesLoss.flow(viscous, kinetic, drop, density, viscosity, flow);
        return carry(in, from, to, oil, mean, density, viscosity);
    }

    /** The same with a head [Pa] that the oil has to climb from one port to the other. */
    void pass(Reading in, int from, int to, Restriction loss, OilAt oil, double head) {
        double mean = (in.pressure(from) + in.pressure(to)) / 2;
        double density = oil.density(mean);
        double viscosity = oil.viscosity(mean);
        loss.flow(in.pressure(from) - in.pressure(to) - head, density, viscosity, flow);
        carry(in, from, to, oil, mean, density, viscosity);
    }

    /** Adds the mass of the flow found last, of oil with these at the mean pressure. */
    private Flow carry(Reading in, int from, int to, OilAt oil, double mean, double density, double viscosity) {
        double densitySlope = oil.densitySlope(mean, density);
        double byMean = densitySlope * flow.q()
                + density
                        * (flow.byDensity() * densitySlope + flow.byViscosity() * oil.viscositySlope(mean, viscosity));
        move(from, to, density * flow.q());
        moveSlope(from, to, in.port(from), density * flow.byDrop() + byMean / 2);
        moveSlope(from, to, in.port(to), -density * flow.byDrop() + byMean / 2);
        return flow;
    }
}
