package hotidle.answer.list;

import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.ListPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.transmission.DutyPoint;

/** The builds of a circuit, a line each that says what it is. */
public record BuildListing(DescribedCircuit circuit) {

    /** All of them, in the order of the file, and under what they are looked at. */
    public String text() {
        StringBuilder text =
                new StringBuilder(Wrap.lines(HeadingPhrase.headed(circuit.name(), circuit.about()), "", "  "));
        circuit.builds()
                .forEach(build -> text.append(Wrap.lines(
                        HeadingPhrase.headed(build.name(), ListPhrase.standing(build.about(), build.on())),
                        "  ",
                        "    ")));
        text.append(Wrap.lines(
                ListPhrase.duties(
                        circuit.unit().duties().stream().map(DutyPoint::name).toList()),
                "",
                "  "));
        return text.append(Wrap.lines(ListPhrase.oils(circuit.oils()), "", "  "))
                .toString();
    }
}
