package hotidle.cli;

import hotidle.answer.draw.DrawAnswer;
import hotidle.answer.draw.DrawnScheme;
import hotidle.answer.draw.DrawnState;
import hotidle.answer.draw.Frames;
import hotidle.circuits.DescribedCircuit;
import hotidle.plots.scheme.Drawing;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The circuit drawn. */
@Command(
        name = "draw",
        mixinStandardHelpOptions = true,
        description =
                "Draws the circuit with symbols after ISO 1219-1; with --duty, each line as dark as its pressure and as wide as"
                        + " its flow, spools where they stand, and leaks with their flow.")
final class DrawCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Mixin
    private OneBuildOption build;

    @Option(
            names = "--duty",
            paramLabel = "CONDITION",
            description = "driving condition whose pressures are shown. Default: none")
    String duty;

    @Option(names = "--against", paramLabel = "BUILD", description = "a build; what differs from it is marked")
    String against;

    @Option(
            names = "--group",
            paramLabel = "NAME",
            description =
                    "only this: pump, valve-body, plate, clutches, converter-and-cooler or lubrication. Default: all")
    String group;

    @Option(
            names = "--plot",
            required = true,
            paramLabel = "FILE",
            description = "the drawing: a name that ends in .svg, .png or .pdf")
    Path file;

    @Mixin
    private AfterWork work;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        PictureFile.check("--plot", file, Drawing.ENDINGS);
        Optional<Frames> only = Optional.ofNullable(group)
                .map(word -> Frames.asked(word)
                        .orElseThrow(() -> new WrongInputException("hotidle: --group " + word
                                + " is not known; known are " + String.join(", ", Frames.words()))));
        DescribedCircuit asWritten = asked.load();
        WorkedBuilds worked = asked.after(work.asked(), asWritten, List.of(build.of(asWritten)));
        DescribedCircuit circuit = worked.circuit();
        Transmission unit = worked.first().unit();
        Optional<Transmission> other = Optional.ofNullable(against)
                .map(name -> Circuits.adjustable(circuit, name).unit());
        Optional<DutyPoint> at = Optional.ofNullable(duty).map(name -> OptionValues.duty(unit, name));
        DrawnState shown = DrawnBuild.at(unit, at, other);
        DrawnScheme drawn = DrawnScheme.of(asked.shared.units(), circuit, shown, only);
        if (drawn.scheme().parts().isEmpty()) {
            throw new WrongInputException("hotidle: --group " + group + ": " + circuit.name() + " has no part in it");
        }
        Drawing drawing = new Drawing(drawn.scheme());
        try {
            drawing.write(file);
        } catch (IOException e) {
            throw new WrongInputException("hotidle: " + file + " cannot be drawn: " + FileReason.of(e));
        }
        return Printed.print(
                spec,
                asked.shared,
                new DrawAnswer(shown, drawn, file.toString(), drawing.paper().name()));
    }
}
