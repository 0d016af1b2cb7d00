package hotidle.cli;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;

/**
 * In which units numbers are shown: as asked for, else as the user has set it for himself, else as the circuit's file says, else as
 * a shop reads them. What a program reads, CSV, goes by what was asked for alone.
 */
final class UnitsOption {

    /** The user's own setting, of his environment. */
    static final String SETTING = "HOTIDLE_UNITS";

    /** The same for one run of the program. */
    static final String PROPERTY = "hotidle.units";

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            description = "shop (psi, gpm, in, degF, lbf.ft, hp), metric (bar, L/min, mm, degC, N.m, kW) or si."
                    + " Default: the setting " + SETTING + ", else what the circuit says, else shop; csv: shop")
    private UnitSystem asked;

    private Optional<String> ofFile = Optional.empty();

    /** Takes what the circuit's file says of units. */
    void ofFile(Optional<String> word) {
        ofFile = word;
    }

    /** On a screen. */
    UnitSystem shown() {
        return asked != null
                ? asked
                : setting().or(() -> ofFile.flatMap(UnitsOption::word)).orElse(UnitSystem.SHOP);
    }

    /** Where a program reads them. */
    UnitSystem read() {
        return asked != null ? asked : UnitSystem.SHOP;
    }

    private static Optional<UnitSystem> setting() {
        String set = System.getProperty(PROPERTY, System.getenv(SETTING));
        if (set == null || set.isBlank()) {
            return Optional.empty();
        }
        return Optional.of(word(set.strip())
                .orElseThrow(() -> new WrongInputException("hotidle: the setting " + SETTING + " is " + set
                        + ", which is no system of units\nmend: set it to shop, metric or si, or leave it out")));
    }

    private static Optional<UnitSystem> word(String text) {
        return Arrays.stream(UnitSystem.values())
                .filter(one -> one.name().equals(text.toUpperCase(Locale.ROOT)))
                .findFirst();
    }
}
