package hotidle.circuits.create;

/**
 * By what the ready circuit is scaled.
 *
 * @param pump     displacement over the ready circuit's [-]
 * @param pressure highest set pressure over the ready circuit's [-]
 * @param torque   engine torque over the ready circuit's [-]
 * @param cooler   cooler flow over the ready circuit's [-]
 * @param lube     lubrication flow over the ready circuit's [-]
 * @param bore     diameter of the valve-body bores over the ready circuit's [-]
 * @param hub      diameter of the pump's hub over the ready circuit's [-]
 */
record ScaleFactors(double pump, double pressure, double torque, double cooler, double lube, double bore, double hub) {

    /** Of answers: a hub that was not asked for grows as the pump does. */
    static ScaleFactors of(UnitAnswers answers, ReadyUnit ready) {
        double pump = answers.ratio("displacement", ready.displacement());
        return new ScaleFactors(
                pump,
                answers.ratio("set-pressure", ready.set()),
                answers.ratio("engine-torque", ready.torque()),
                answers.ratio("cooler-flow", ready.coolerFlow()),
                answers.ratio("lubrication", ready.lubrication()),
                answers.ratio("bore-diameter", ready.boreDiameter()),
                answers.has("hub-diameter") ? answers.ratio("hub-diameter", ready.hubDiameter()) : Math.cbrt(pump));
    }

    /** Lengths of a pump of similar shape. */
    double length() {
        return Math.cbrt(pump);
    }

    /** Piston areas: the same torque share at the same lining and another pressure. */
    double piston() {
        return torque / pressure;
    }
}
