package hotidle.study.gauge;

import hotidle.network.Conditions;
import hotidle.part.Setting;
import hotidle.transmission.Command;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What is set while gauges are read. All else is taken from the duty point of the range with the slowest engine and the lockup off:
 * other regions keep their distance from the sump's temperature there, solenoids their commands.
 *
 * @param speed       engine speed [rev/s]
 * @param temperature of the sump [K]
 * @param range       engaged
 * @param commanded   line pressure commanded [Pa]; empty where it is not known
 * @param torque      engine torque [N·m] for which it is commanded; empty for that of the duty point
 */
public record TestPoint(
        double speed, double temperature, String range, OptionalDouble commanded, OptionalDouble torque) {

    /** A region whose temperature a thermometer shows. */
    static final String SUMP = "sump";

    /** The same at another engine speed [rev/s]. */
    public TestPoint atSpeed(double other) {
        return new TestPoint(other, temperature, range, commanded, torque);
    }

    /** The same with the sump at another temperature [K]. */
    public TestPoint atTemperature(double other) {
        return new TestPoint(speed, other, range, commanded, torque);
    }

    /** The duty point from which is taken what is not set. */
    public DutyPoint like(Transmission unit) {
        Comparator<DutyPoint> best = Comparator.comparing(
                        (DutyPoint duty) -> !duty.range().equals(range))
                .thenComparing(duty -> duty.lockup() != Setting.Lockup.OFF)
                .thenComparing(duty -> duty.lubeNeed() == 0)
                .thenComparingDouble(DutyPoint::speed);
        return unit.duties().stream().min(best).orElseThrow().inRange(range);
    }

    /** The conditions under which a unit is solved for it. */
    public Conditions conditions(Transmission unit) {
        DutyPoint duty = like(unit);
        double shift = temperature - duty.temperatures().getOrDefault(SUMP, temperature);
        Map<String, Double> temperatures = new HashMap<>();
        duty.temperatures().forEach((region, own) -> temperatures.put(region, own + shift));
        Map<String, Double> commands = new HashMap<>(duty.commands());
        unit.commanded()
                .flatMap(Command::pilot)
                .ifPresent(pilot -> commands.put(
                        pilot.solenoid(),
                        commanded.isPresent()
                                ? pilot.pilotByLine().at(commanded.getAsDouble())
                                : pilot.at(torque.orElse(duty.engineTorque()))));
        return new Conditions(
                speed, range, duty.lockup(), unit.oil(), unit.ambient(), temperatures, commands, duty.sensed());
    }
}
