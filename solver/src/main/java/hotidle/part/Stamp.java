package hotidle.part;

import hotidle.law.Flow;
import hotidle.law.Restriction;
import hotidle.oil.OilAt;
import java.util.Arrays;

/** What a part answers: mass flow at each port, balance of each state, and their slopes. Work space of the solver. */
public final class Stamp {

    private final int ports;
    private final int columns;
    private final double[] value;
    private final double[] slope;

    public Stamp(Form form) {
        ports = form.ports().size();
        columns = ports + form.states().size() + form.signals().size();
        int rows = ports + form.states().size();
        value = new double[rows];
        slope = new double[rows * columns];
    }

    /** Forgets everything. */
    public void clear() {
        Arrays.fill(value, 0);
        Arrays.fill(slope, 0);
    }

    /** Number of rows: ports, then states. */
    public int rows() {
        return value.length;
    }

    /** Value of a row. */
    public double value(int row) {
        return value[row];
    }

    /** Slope of a row by a column. */
    public double slope(int row, int column) {
        return slope[row * columns + column];
    }

    /** Adds a mass flow from one port to another [kg/s]. */
    public void move(int from, int to, double flow) {
        value[from] += flow;
        value[to] -= flow;
    }

    /** Adds the slope of a flow from one port to another. */
    public void moveSlope(int from, int to, int column, double by) {
        slope[from * columns + column] += by;
        slope[to * columns + column] -= by;
    }

    /** Adds to the balance of a state. */
    public void balance(int state, double force) {
        value[ports + state] += force;
    }

    /** Adds to the slope of a state's balance. */
    public void balanceSlope(int state, int column, double by) {
        slope[(ports + state) * columns + column] += by;
    }

    /**
     * Oil through a restriction from one port to another, with the oil's density and viscosity at the mean of both pressures.
     *
     * @return the flow, for slopes by the opening
     */
    public Flow pass(Reading in, int from, int to, Restriction loss, OilAt oil) {
        return pass(in, from, to, loss, oil, 0);
    }

    /** The same with a head [Pa] that the oil has to climb from one port to the other. */
    Flow pass(Reading in, int from, int to, Restriction loss, OilAt oil, double head) {
        double mean = (in.pressure(from) + in.pressure(to)) / 2;
        double density = oil.density(mean);
        double densitySlope = oil.densitySlope(mean);
        Flow flow = loss.flow(in.pressure(from) - in.pressure(to) - head, density, oil.viscosity(mean));
        double byMean = densitySlope * flow.q()
                + density * (flow.byDensity() * densitySlope + flow.byViscosity() * oil.viscositySlope(mean));
        move(from, to, density * flow.q());
        moveSlope(from, to, in.port(from), density * flow.byDrop() + byMean / 2);
        moveSlope(from, to, in.port(to), -density * flow.byDrop() + byMean / 2);
        return flow;
    }
}
