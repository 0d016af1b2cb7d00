package hotidle.cli.live;

import hotidle.answer.format.Quantity;
import hotidle.answer.live.SliderEnds;
import hotidle.answer.phrase.LivePhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.UnknownBuildException;
import hotidle.circuits.WrittenFault;
import hotidle.fault.LaidFaults;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.oil.Oil;
import hotidle.study.JobPlace;
import hotidle.study.Window;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Job;
import hotidle.transmission.NotCommandedException;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import hotidle.transmission.Workshop;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The circuit that a page is about, and its unit as a page asks for it.
 *
 * @param circuit as it was read
 * @param source  file or ready circuit that it was read from, as it was typed
 * @param units   in which a page begins
 * @param first   build with which it begins
 */
public record LiveUnit(DescribedCircuit circuit, String source, Quantity.UnitSystem units, String first) {

    /** Bounds of the sliders, those of the options of {@code sweep}: engine speed [rpm], sump temperature [°C]. */
    private static final double FASTEST = 20_000;

    private static final double COLDEST = -60;
    private static final double HOTTEST = 250;

    /**
     * The unit asked for, with the sizes of it that can be changed: jobs first, then sizes, then the set pressure, then faults.
     *
     * @throws WrongStateException where there is none
     */
    Adjustable adjustable(AskedState asked) {
        SliderEnds ends = SliderEnds.setPressure(written(asked).unit());
        asked.setPressurePa()
                .ifPresent(pressure -> require(ends.hold(pressure), LivePhrase.setPressures(ends.low(), ends.high())));
        try {
            Adjustable sized = worked(asked).resized(asked.sizes());
            Adjustable set = asked.setPressurePa().isEmpty()
                    ? sized
                    : sized.setTo(asked.setPressurePa().getAsDouble(), SetPressure.By.COMMAND_AND_SPRING);
            return asked.faults().isEmpty() ? set : faulty(set, asked.faults());
        } catch (NotCommandedException e) {
            throw new WrongStateException(LivePhrase.NOT_COMMANDED);
        } catch (IllegalArgumentException impossible) {
            throw new WrongStateException(impossible.getMessage());
        }
    }

    /**
     * The build asked for as the file has it.
     *
     * @throws WrongStateException where there is none
     */
    Adjustable written(AskedState asked) {
        try {
            return circuit.adjustable(build(asked));
        } catch (UnknownBuildException e) {
            throw new WrongStateException(e.problem().text());
        }
    }

    /** The jobs that can be done to a build: those that the file names, else those that its worn fits offer. */
    Workshop workshop(String build) {
        return circuit.workshop(build).orElseGet(() -> JobPlace.workshop(circuit.adjustable(build)));
    }

    /** The jobs that can be done to a build, each with the sizes that it changes. */
    Map<Job, List<String>> jobs(String build) {
        Workshop shop = workshop(build);
        Adjustable before = circuit.adjustable(build);
        Map<Job, List<String>> jobs = new LinkedHashMap<>();
        shop.jobs().forEach(job -> jobs.put(job, changed(before, shop, job)));
        return jobs;
    }

    private static List<String> changed(Adjustable before, Workshop shop, Job job) {
        try {
            return shop.rework().after(List.of(job)).dimensions().stream()
                    .filter(size -> before.dimension(size.name())
                            .filter(same -> same.value() == size.value())
                            .isEmpty())
                    .map(WearSize::name)
                    .toList();
        } catch (IllegalArgumentException impossible) {
            return List.of(); // not alone; the page says so once it is asked for
        }
    }

    /** The build after the jobs asked for. */
    Adjustable worked(AskedState asked) {
        Adjustable build = written(asked);
        if (asked.jobs().isEmpty()) {
            return build;
        }
        Workshop shop = workshop(build.unit().build());
        asked.jobs()
                .forEach(name -> require(
                        shop.jobs().stream().anyMatch(job -> job.name().equals(name)),
                        LivePhrase.noJob(shop.unit().build(), name)));
        return shop.rework().after(shop.jobs(asked.jobs()));
    }

    private static Adjustable faulty(Adjustable sound, List<String> written) {
        List<UnitFault> possible = UnitFaults.of(sound);
        List<UnitFault.Sized> faults =
                written.stream().map(text -> WrittenFault.read(possible, text)).toList();
        try {
            return new LaidFaults(faults).over(sound);
        } catch (IllegalArgumentException impossible) {
            throw new IllegalArgumentException(LivePhrase.IMPOSSIBLE, impossible);
        }
    }

    /**
     * The unit asked for, its driving condition as the page has it.
     *
     * @throws WrongStateException where there is none
     */
    Transmission unit(AskedState asked) {
        Transmission unit = adjustable(asked).unit();
        boolean own = asked.sizes().isEmpty()
                && asked.jobs().isEmpty()
                && asked.faults().isEmpty()
                && asked.setPressurePa().isEmpty();
        return driven(own ? unit : unit.named(LivePhrase.changed(unit.build())), asked);
    }

    private static Transmission driven(Transmission unit, AskedState asked) {
        DutyPoint changed = duty(unit, asked);
        return unit.at(unit.duties().stream()
                .map(duty -> duty.name().equals(changed.name()) ? changed : duty)
                .toList());
    }

    /** The unit asked for at other set pressures, its driving condition as the page has it. */
    Window.Raised raised(AskedState asked) {
        Adjustable build = adjustable(asked);
        return (pressure, duties) ->
                driven(build.setTo(pressure, SetPressure.By.COMMAND_AND_SPRING).unit(), asked);
    }

    /** The driving condition looked at, as the page has it, of a unit whose conditions are as written. */
    static DutyPoint duty(Transmission unit, AskedState asked) {
        DutyPoint duty = asked.duty() == null
                ? unit.duties().get(0)
                : unit.duty(asked.duty())
                        .orElseThrow(() -> new WrongStateException(LivePhrase.noDuty(unit.circuit(), asked.duty())));
        DutyPoint warm = duty;
        if (asked.sumpTemperatureC().isPresent()) {
            double celsius = asked.sumpTemperatureC().getAsDouble();
            checkTemperature(celsius);
            warm = duty.withSump(celsius + Oil.ZERO_CELSIUS);
        }
        if (asked.engineSpeedRpm().isEmpty()) {
            return warm;
        }
        double rpm = asked.engineSpeedRpm().getAsDouble();
        checkSpeed(rpm);
        return warm.atSpeed(rpm / 60);
    }

    /** Refuses what no sump is [°C]. */
    static void checkTemperature(double celsius) {
        require(celsius >= COLDEST && celsius <= HOTTEST, LivePhrase.TEMPERATURES);
    }

    /** Refuses what no engine does [rpm]. */
    static void checkSpeed(double rpm) {
        require(rpm >= 0 && rpm <= FASTEST, LivePhrase.SPEEDS);
    }

    /**
     * The driving condition looked at, of a unit that was made as asked.
     *
     * @throws WrongStateException where there is none
     */
    DutyPoint looked(Transmission made, AskedState asked) {
        return made.duty(duty(made, asked).name()).orElseThrow();
    }

    /** Name of the build asked for. */
    String build(AskedState asked) {
        return asked.build() == null ? first : asked.build();
    }

    private static void require(boolean rule, String message) {
        if (!rule) {
            throw new WrongStateException(message);
        }
    }
}
