package hotidle.circuits;

import hotidle.transmission.SetPressure;
import hotidle.transmission.WearSize;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A build as a file that stands on the circuit that it is of: what differs, each with its reason. */
public final class WrittenBuild {

    /** Name of the build in the file. */
    public static final String NAME = "changed";

    /** Digits of a size: far more than any gauge shows, so that what is read back is what was set. */
    private static final MathContext DIGITS = new MathContext(14);

    private static final BigDecimal MILLI = new BigDecimal(1000);

    private WrittenBuild() {}

    /**
     * The text of the file.
     *
     * @param circuit  name of the circuit
     * @param base     file or ready circuit that it is based on
     * @param on       build that it stands on; empty where it stands on the file as written
     * @param sizes    that differ from those of that build, or from new
     * @param pressure set pressure asked for [Pa]; empty where that of the build stays
     * @param reason   of every change
     * @param notes    what the file does not say, in a comment
     */
    public static String yaml(
            String circuit,
            String base,
            Optional<String> on,
            List<WearSize> sizes,
            OptionalDouble pressure,
            String reason,
            List<String> notes) {
        StringBuilder text = new StringBuilder();
        notes.forEach(note -> text.append("# ").append(note).append('\n'));
        text.append("circuit: ").append(circuit).append("-changed\n");
        text.append("based-on: ").append(quoted(base)).append('\n');
        text.append("builds:\n  ").append(NAME).append(":\n");
        text.append("    about: ").append(quoted(reason)).append('\n');
        on.ifPresent(name -> text.append("    on: ").append(name).append('\n'));
        pressure.ifPresent(pascal -> text.append("    set-pressure: ")
                .append(plain(new BigDecimal(pascal / SetPressure.PSI)))
                .append(" psi\n    because: ")
                .append(reason)
                .append('\n'));
        if (!sizes.isEmpty()) {
            text.append("    changes:\n");
        }
        for (WearSize size : sizes) {
            text.append("      \"").append(size.name()).append("\": {to: ").append(value(size));
            text.append(", because: ").append(reason).append("}\n");
        }
        return text.toString();
    }

    private static String value(WearSize size) {
        BigDecimal si = new BigDecimal(size.value());
        return size.kind() == WearSize.SizeKind.AREA
                ? plain(si.multiply(MILLI).multiply(MILLI)) + " mm2"
                : plain(si.multiply(MILLI)) + " mm";
    }

    private static String plain(BigDecimal number) {
        return number.round(DIGITS).stripTrailingZeros().toPlainString();
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
