package hotidle.circuits.create;

import hotidle.transmission.DutyPoint;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The speed at which the engine idles: that of the driving conditions that have the ready unit's slowest.
 *
 * @param draft of the new unit
 * @param ready that it is like
 */
record IdleSpeed(Draft draft, ReadyUnit ready) {

    /** The slowest speed of a unit [rev/s]; empty where it has no driving condition. */
    static OptionalDouble of(ReadyUnit ready) {
        return ready.unit().duties().stream().mapToDouble(DutyPoint::speed).min();
    }

    /**
     * Sets it.
     *
     * @param asked [rev/s]
     * @throws UnitAnswers.WrongAnswerException where another driving condition would be slower
     */
    void set(double asked) {
        double slowest = of(ready).orElseThrow();
        OptionalDouble next = ready.unit().duties().stream()
                .mapToDouble(DutyPoint::speed)
                .filter(speed -> speed > slowest)
                .min();
        if (next.isPresent() && asked >= next.getAsDouble()) {
            throw new UnitAnswers.WrongAnswerException(
                    "idle-speed",
                    String.format(
                            Locale.ROOT,
                            "it must be below %.0f rpm, that of the next driving condition of %s",
                            60 * next.getAsDouble(),
                            ready.name()));
        }
        conditions().forEach(keys -> keys.put("speed", Amounts.of(60 * asked, "rpm")));
    }

    /** The driving conditions that idle. */
    List<Map<String, Object>> conditions() {
        double slowest = of(ready).orElseThrow();
        List<String> names = ready.unit().duties().stream()
                .filter(duty -> duty.speed() == slowest)
                .map(DutyPoint::name)
                .toList();
        return draft.section("duty").entrySet().stream()
                .filter(duty -> names.contains(duty.getKey()))
                .map(duty -> Draft.map(duty.getValue()).orElseThrow())
                .toList();
    }
}
