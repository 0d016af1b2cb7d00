package hotidle.cli;

import hotidle.answer.heat.HeatAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.HeatStudy;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Where heat comes from and goes, and the temperature that it settles at. */
@Command(
        name = "heat",
        mixinStandardHelpOptions = true,
        description =
                "Finds the temperatures that each driving condition settles at, or how long until oil or converter reach their limit;"
                        + " where the heat comes from and goes; and what the heat of each build costs against the first.")
final class HeatCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Mixin
    private BuildsOption builds;

    @Mixin
    private AfterWork work;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit asWritten = asked.load();
        OwnHeat.require(asWritten.unit());
        WorkedBuilds worked = asked.after(work.asked(), asWritten, builds.adjustable(asWritten));
        DescribedCircuit described = worked.circuit();
        List<Transmission> units = worked.units();
        Transmission first = units.get(0);
        Progress progress = new Progress(
                spec.commandLine().getErr(),
                "balancing heat",
                units.size() * HeatStudy.warming(first).size());
        HeatStudy study = HeatStudy.of(units, progress::step);
        progress.end();
        return Printed.print(
                spec, asked.shared, new HeatAnswer(described.name(), described.about(), study, asked.shared.units()));
    }
}
