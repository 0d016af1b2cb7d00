package hotidle.answer;

import hotidle.assess.Figures;
import java.util.stream.Stream;

/** Whether the regulator gives oil back to the pump, which changes what counts as a leak. */
public final class GivenBack {

    private GivenBack() {}

    /** Whether some of these states give oil back to the pump and others do not. */
    public static boolean some(Stream<Figures> figures) {
        return figures.map(one -> one.recirculated() > 0).distinct().count() > 1;
    }
}
