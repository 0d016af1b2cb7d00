package hotidle.part;

import hotidle.law.Poppet;

/**
 * A relief valve: it holds its port to a ceiling; a circuit without one has none; law and source in
 * {@link Poppet}.
 */
public record ReliefValve(Poppet poppet) implements Part {

    public ReliefValve {
        Check.positive("seat diameter", poppet.seat());
        Check.positive("spring rate", poppet.springRate());
        Check.notNegative("spring preload", poppet.preload());
        Check.positive("largest lift", poppet.stop());
        Check.within("discharge coefficient", poppet.dischargeCoefficient(), 0.3, 1);
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        return CheckValve.poppetLaw(poppet, setting);
    }
}
