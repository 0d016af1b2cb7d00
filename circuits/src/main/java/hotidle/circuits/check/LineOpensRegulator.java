package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;

/** Line pressure opens the regulator in every range. */
final class LineOpensRegulator implements Rule.OfCommand {

    @Override
    public void check(Attributes file, Attributes command, Parts parts) {
        Attributes regulator = parts.all().get(command.word("regulator")).given();
        for (Attributes range : file.groups("ranges").values()) {
            double net = net(regulator, command.word("line"), range.name());
            if (!(net > 0)) {
                command.error(
                        ProblemCode.LINE_OPENS_NO_REGULATOR,
                        "regulator",
                        "has a regulator on which '" + command.word("line") + "' does not act in range " + range.name(),
                        "line pressure must open it: areas that act open less those that act close",
                        "add an area with node: " + command.word("line") + ", acts: open");
                return;
            }
        }
    }

    private static double net(Attributes regulator, String line, String range) {
        return regulator.groups("areas").values().stream()
                .filter(area -> area.text("node").equals(line)
                        && (area.words("ranges").isEmpty()
                                || area.words("ranges").contains(range)))
                .mapToDouble(area ->
                        area.numberIf("area").orElse(1) * (area.text("acts").equals("close") ? -1 : 1))
                .sum();
    }
}
