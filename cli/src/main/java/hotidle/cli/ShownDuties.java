package hotidle.cli;

import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import picocli.CommandLine.Option;

/** Which driving conditions are shown. All are solved and judged whatever is shown: a verdict on a build rests on all of them. */
final class ShownDuties {

    @Option(
            names = "--duty",
            paramLabel = "NAME",
            description = "a driving condition to show; give it again for each. Default: all")
    private List<String> duties = List.of();

    /**
     * Names of those asked for, in the circuit's order; all of them where none was named.
     *
     * @throws WrongInputException where one is not in the circuit
     */
    List<String> of(Transmission unit) {
        duties.forEach(name -> OptionValues.duty(unit, name));
        return unit.duties().stream()
                .map(DutyPoint::name)
                .filter(name -> duties.isEmpty() || duties.contains(name))
                .toList();
    }
}
