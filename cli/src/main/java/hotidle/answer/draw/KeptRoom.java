package hotidle.answer.draw;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.DrawPhrase;
import hotidle.plots.scheme.Widest;
import java.util.ArrayList;
import java.util.List;

/** Room for what builds and states write into a drawing, so that all of them are laid out alike: numbers as long as a transmission's get. */
record KeptRoom(Quantity.UnitSystem units) {

    /** 48.00 bar, 696 psi: as long as a pressure gets [Pa]. */
    private static final double PRESSURE = 48e5;

    /** 180.0 L/min, 47.55 gpm: as long as a flow gets [m³/s]. */
    private static final double FLOW = 180.0 / 60_000;

    /** 36.0 L/min, 9.51 gpm: more does not leak at one place [m³/s]. */
    private static final double LEAK = 36.0 / 60_000;

    /** Of a part: its flow, or what it leaks, and where its spool stands. */
    Widest part(boolean valve) {
        List<String> below =
                new ArrayList<>(List.of(valve ? DrawPhrase.shut(units, LEAK) : DrawPhrase.flow(units, FLOW)));
        if (valve) {
            below.add(DrawPhrase.stands(1));
        }
        return new Widest("", below);
    }

    /**
     * Of a node: its pressure, what it was in another build, and the leaks at it.
     *
     * @param leaks names of those that have a line of their own, or of all that share one
     */
    Widest node(List<List<String>> leaks, boolean named) {
        List<String> below = new ArrayList<>();
        below.add(DrawPhrase.was(units, PRESSURE));
        leaks.forEach(line -> below.add(DrawPhrase.leaks(units, line, LEAK, named)));
        return new Widest(Quantity.PRESSURE.with(units, PRESSURE), below);
    }
}
