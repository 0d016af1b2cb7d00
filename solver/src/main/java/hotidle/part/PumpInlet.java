package hotidle.part;

import java.util.List;

/**
 * The pump's inlet: oil leaves it only down to the pressure at which air is released. From there on the chambers fill in part.
 *
 * <p>State filling φ between 0 and 1 with the balance F = p_release − p: full (φ = 1) above the release pressure, part filled at
 * it. Both chambers of a double pump read the same φ.
 */
public record PumpInlet() implements Part {

    /** A change of filling of 1 moves the inlet by something like 1 bar; it is judged against the same [Pa]. */
    private static final double SCALE = 1e5;

    private static final Form FORM =
            new Form(List.of("inlet"), List.of(new Form.Unknown("filling", 0, 1, 1, SCALE, SCALE)), List.of());

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public Law law(Setting setting) {
        double release = setting.oil().release();
        return new Law() {
            @Override
            public void evaluate(Reading in, Stamp out) {
                out.balance(0, release - in.pressure(0));
                out.balanceSlope(0, in.port(0), -1);
            }

            @Override
            public List<Stream> streams(Reading in) {
                return List.of();
            }
        };
    }
}
