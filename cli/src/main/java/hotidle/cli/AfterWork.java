package hotidle.cli;

import hotidle.transmission.SetPressure;
import picocli.CommandLine.Mixin;

/** All that can be done to the builds that are asked for: jobs, another set pressure, faults. */
final class AfterWork {

    @Mixin
    private JobsAndFaults others;

    @Mixin
    private AskedPressure pressure;

    /**
     * What is asked for.
     *
     * @throws WrongInputException where the set pressure is none
     */
    BuildWork asked() {
        return others.asked(pressure.pressure());
    }

    /** Whether another set pressure is asked for. */
    boolean setAsked() {
        return pressure.given();
    }

    /** Whether it is set after jobs: a build that is only set otherwise says so by its name. */
    boolean setAfterJobs() {
        return setAsked() && !asked().jobs().isEmpty();
    }

    /** What another set pressure changes. */
    SetPressure.By by() {
        return pressure.by();
    }
}
