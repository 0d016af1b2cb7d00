package hotidle.cli;

import hotidle.answer.Settling;
import hotidle.heat.SettledUnit;
import hotidle.study.Comparison;
import hotidle.study.HeatStudy;
import hotidle.transmission.Transmission;
import java.util.List;
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

    /** Builds at the temperatures asked for, and what is to be said of these. */
    Settled at(List<Transmission> units) {
        if (!asked(units.get(0))) {
            return new Settled(units, Settling.AS_GIVEN);
        }
        List<SettledUnit> settled = units.parallelStream().map(SettledUnit::of).toList();
        List<Transmission> warm = settled.stream().map(SettledUnit::unit).toList();
        List<Settling.NeverSettled> none = settled.stream()
                .flatMap(one -> one.none().stream()
                        .map(warmed -> new Settling.NeverSettled(one.unit().build(), warmed)))
                .toList();
        if (Comparison.judged(warm).isEmpty()) {
            throw new WrongInputException(
                    "hotidle: --temperature " + BALANCE + ": no driving condition is left to judge"
                            + "\nwhy:  by its own heat each comes to no steady temperature in some build"
                            + "\nmend: ask hotidle heat " + units.get(0).circuit()
                            + " why, or judge at the temperatures of the file");
        }
        return new Settled(warm, new Settling(true, none));
    }

    /** Builds as they are judged. */
    record Settled(List<Transmission> units, Settling settling) {}

    /** Refuses a circuit of which no temperature follows from heat. */
    static void require(Transmission unit) {
        if (unit.heat().isEmpty() || HeatStudy.warming(unit).isEmpty()) {
            throw new WrongInputException("hotidle: no driving condition of " + unit.circuit()
                    + " has temperatures that follow from heat\nmend: add heat: to the circuit, and 'balance: yes' or 'after:' to a duty"
                    + " point; circuits/REFERENCE.md says how");
        }
    }
}
