package hotidle.cli;

import hotidle.heat.SettledUnit;
import hotidle.study.HeatStudy;
import hotidle.transmission.Transmission;
import picocli.CommandLine.Option;

/** Option that says at which temperatures units are judged. */
final class OwnHeat {

    private static final String BALANCE = "balance";

    @Option(
            names = "--temperature",
            paramLabel = BALANCE,
            description = "balance: judge at the temperatures that each build's own heat brings it to, where a driving"
                    + " condition says so; nothing is judged where there are none. Default: those of the file")
    private String temperature;

    /**
     * Whether temperatures follow from heat.
     *
     * @param unit of the circuit
     * @throws WrongInputException where something else is asked for, or the circuit says nothing of heat
     */
    boolean asked(Transmission unit) {
        if (temperature == null) {
            return false;
        }
        if (!temperature.equals(BALANCE)) {
            throw new WrongInputException("hotidle: --temperature " + temperature + ": is not " + BALANCE
                    + "\nwhy:  here a temperature follows from heat or stands in the file, a driving condition its own"
                    + "\nmend: write " + BALANCE + ", or ask hotidle sweep, which takes a temperature");
        }
        require(unit);
        return true;
    }

    /** Whether it is asked for at all. */
    boolean given() {
        return temperature != null;
    }

    /** A unit at the temperatures asked for. */
    SettledUnit at(Transmission unit) {
        return asked(unit) ? SettledUnit.of(unit) : SettledUnit.asGiven(unit);
    }

    /** Refuses a circuit of which no temperature follows from heat. */
    static void require(Transmission unit) {
        if (unit.heat().isEmpty() || HeatStudy.warming(unit).isEmpty()) {
            throw new WrongInputException("hotidle: no driving condition of " + unit.circuit()
                    + " has temperatures that follow from heat\nmend: add heat: to the circuit, and 'balance: yes' or 'after:' to a duty"
                    + " point; circuits/REFERENCE.md says how");
        }
    }
}
