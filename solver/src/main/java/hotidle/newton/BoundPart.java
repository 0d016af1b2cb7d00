package hotidle.newton;

import hotidle.network.Placed;
import hotidle.network.Signal;
import hotidle.part.Form;
import hotidle.part.Part;
import hotidle.part.Reading;
import hotidle.part.Stamp;
import java.util.Map;

/** A part bound to its rows and columns; a row or column at a held node is -1, and what is read there stays. */
final class BoundPart {

    final Reading reading;
    final Form form;
    final int[] rows;
    final int[] columns;
    Placed placed;
    Stamp stamp;
    Part.Law law;

    /** What the part says alone, apart from all others; once it was asked for. */
    private Stamp alone;

    /** @param held what each column reads [Pa] as long as it is at a held node */
    BoundPart(Placed placed, int[] rows, int[] columns, double[] held) {
        this.placed = placed;
        form = placed.part().form();
        reading = Reading.of(form, held);
        this.rows = rows;
        this.columns = columns;
    }

    /** The name of what a signal reads: a node, or a part's own state. */
    static String key(Signal signal) {
        return signal.state().isEmpty() ? signal.owner() : signal.owner() + "." + signal.state();
    }

    /** What a law says alone at what was read last; good until the next one. */
    Stamp alone(Part.Law one) {
        alone = alone == null ? new Stamp(form) : alone;
        alone.clear();
        one.evaluate(reading, alone);
        return alone;
    }

    /** Where its law writes: where held nodes are concerned, flows and slopes go to a last place that nobody reads. */
    void place(Pattern pattern, double[] value, double[] slope) {
        int[] places = new int[rows.length * columns.length];
        int[] rowOf = new int[rows.length];
        for (int r = 0; r < rows.length; r++) {
            rowOf[r] = rows[r] >= 0 ? rows[r] : value.length - 1;
            for (int c = 0; c < columns.length; c++) {
                boolean inside = rows[r] >= 0 && columns[c] >= 0;
                places[r * columns.length + c] = inside ? pattern.place(rows[r], columns[c]) : slope.length - 1;
            }
        }
        stamp = new Stamp(form, value, rowOf, slope, places);
    }

    /** Takes the pressures of held nodes. */
    void hold(Map<String, Double> heldAt) {
        for (int c = 0; c < columns.length; c++) {
            if (columns[c] < 0) {
                reading.set(c, heldAt.getOrDefault(source(c), 0.0));
            }
        }
    }

    /** Node or signal that a column reads. */
    private String source(int column) {
        int ports = form.ports().size();
        return column < ports
                ? placed.nodes().get(column)
                : key(placed.signals().get(column - ports - form.states().size()));
    }

    void read(double[] unknowns) {
        for (int c = 0; c < columns.length; c++) {
            if (columns[c] >= 0) {
                reading.set(c, unknowns[columns[c]]);
            }
        }
    }
}
