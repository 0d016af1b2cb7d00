package hotidle.part;

import java.util.Arrays;

/** What a part reads: pressures at its ports [Pa], its own states, its signals. Work space of the solver. */
public final class Reading {

    private final double[] value;
    private final int ports;
    private final int states;

    public Reading(Form form) {
        ports = form.ports().size();
        states = form.states().size();
        value = new double[ports + states + form.signals().size()];
    }

    /** A reading of given ports, states and signals, in this order. */
    public static Reading of(Form form, double... values) {
        Reading reading = new Reading(form);
        if (values.length != reading.value.length) {
            throw new IllegalArgumentException(
                    "a reading of " + reading.value.length + " values was given " + values.length);
        }
        System.arraycopy(values, 0, reading.value, 0, values.length);
        return reading;
    }

    /** Gauge pressure at a port [Pa]. */
    public double pressure(int port) {
        return value[port];
    }

    /** Own state. */
    public double state(int state) {
        return value[ports + state];
    }

    /** Signal. */
    public double signal(int signal) {
        return value[ports + states + signal];
    }

    /** Column of a port in the slopes. */
    public int port(int port) {
        return port;
    }

    /** Column of a state in the slopes. */
    public int own(int state) {
        return ports + state;
    }

    /** Column of a signal in the slopes. */
    public int read(int signal) {
        return ports + states + signal;
    }

    /** Number of columns. */
    public int size() {
        return value.length;
    }

    /** Value at a column. */
    public double at(int column) {
        return value[column];
    }

    /** Sets the value at a column. */
    public void set(int column, double to) {
        value[column] = to;
    }

    @Override
    public String toString() {
        return Arrays.toString(value);
    }
}
