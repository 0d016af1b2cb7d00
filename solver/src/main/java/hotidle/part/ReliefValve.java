package hotidle.part;

import hotidle.law.Poppet;

/**
 * A relief valve: it holds its port to a ceiling; a circuit without one has none; law and source in
 * {@link Poppet}.
 */
public record ReliefValve(Poppet poppet) implements Part {

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        return CheckValve.poppetLaw(poppet, setting);
    }
}
