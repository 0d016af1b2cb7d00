package hotidle.cli;

import hotidle.answer.phrase.NamePhrase;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import hotidle.fault.FaultKind;
import hotidle.transmission.Range;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What a name of the ready circuits stands for: no word of the program, but on its screens all the same. */
final class NamedThing {

    private NamedThing() {}

    /** What is said of a name, in two lines; empty where no ready circuit has it and it is neither a fault nor a unit. */
    static Optional<String> said(String name) {
        String asked = name.strip().toLowerCase(Locale.ROOT).replaceAll("(?<=\\.[a-z-]{1,40})[, ].*", "");
        Optional<FaultKind> fault = Arrays.stream(FaultKind.values())
                .filter(kind -> kind.word().equals(asked.replaceAll("@.*", "")))
                .findFirst();
        if (fault.isPresent()) {
            return Optional.of(NamePhrase.fault(asked, fault.get()));
        }
        Optional<Dimension> unit = Arrays.stream(Dimension.values())
                .filter(dimension -> Units.of(dimension).stream()
                        .anyMatch(one -> one.toLowerCase(Locale.ROOT).equals(asked)))
                .findFirst();
        if (unit.isPresent()) {
            return Optional.of(NamePhrase.unit(name.strip(), unit.get().words()));
        }
        Map<String, String> found = new LinkedHashMap<>();
        for (String library : Library.names()) {
            CircuitReader.read(Library.text(library).orElseThrow(), library)
                    .circuit()
                    .flatMap(circuit -> in(circuit, asked))
                    .ifPresent(what -> found.put(library, what));
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(NamePhrase.said(asked, found));
    }

    private static Optional<String> in(DescribedCircuit circuit, String name) {
        Optional<String> build = circuit.builds().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .map(one -> NamePhrase.build(one.about()));
        if (build.isPresent()) {
            return build;
        }
        if (circuit.unit().duty(name).isPresent()) {
            return Optional.of(NamePhrase.DUTY);
        }
        if (circuit.unit().ranges().stream().map(Range::name).anyMatch(name::equals)) {
            return Optional.of(NamePhrase.RANGE);
        }
        if (circuit.unit().taps().stream().anyMatch(tap -> tap.name().equals(name))) {
            return Optional.of(NamePhrase.PORT);
        }
        return part(circuit, name).or(() -> size(circuit, name));
    }

    private static Optional<String> part(DescribedCircuit circuit, String name) {
        return circuit.parts().stream()
                .filter(part -> part.name().equals(name))
                .findFirst()
                .map(part -> NamePhrase.part(part.kind(), part.about()));
    }

    private static Optional<String> size(DescribedCircuit circuit, String name) {
        List<String> words = List.of(name.split("\\.", 2));
        return words.size() < 2
                ? Optional.empty()
                : circuit.parts().stream()
                        .filter(part -> part.name().equals(words.get(0)))
                        .findFirst()
                        .map(part -> NamePhrase.size(words.get(1), part.name(), part.kind()));
    }
}
