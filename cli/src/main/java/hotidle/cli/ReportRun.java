package hotidle.cli;

import hotidle.answer.Settling;
import hotidle.answer.check.CheckAnswer;
import hotidle.answer.compare.CompareAnswer;
import hotidle.answer.format.Quantity;
import hotidle.answer.heat.HeatAnswer;
import hotidle.answer.jobs.JobsAnswer;
import hotidle.answer.leaks.LeaksAnswer;
import hotidle.answer.margins.MarginsAnswer;
import hotidle.answer.report.Findings;
import hotidle.answer.sweep.SweepAnswer;
import hotidle.answer.torque.TorqueAnswer;
import hotidle.answer.wear.BuildWear;
import hotidle.answer.wear.WearAnswer;
import hotidle.answer.window.WindowAnswer;
import hotidle.assess.Assessment;
import hotidle.assess.NotCommanded;
import hotidle.assess.Roles;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.check.NotJudged;
import hotidle.circuits.text.Dimension;
import hotidle.study.Comparison;
import hotidle.study.FrictionBands;
import hotidle.study.HeatStudy;
import hotidle.study.JobPlace;
import hotidle.study.JobStudy;
import hotidle.study.JudgedBuild;
import hotidle.study.LeakStudy;
import hotidle.study.LowAtIdle;
import hotidle.study.SameSpeedFilms;
import hotidle.study.SpeedSweep;
import hotidle.study.TorqueConditions;
import hotidle.study.Wear;
import hotidle.study.Window;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;

/**
 * Solves what a report is put together from, each as the command of that name does without options; only set pressures are tried in
 * steps twice as wide, since their ends are narrowed down all the same.
 *
 * @param readings of the first build's gauges
 * @param progress gets a step for each study
 */
record ReportRun(
        Quantity.UnitSystem units,
        DescribedCircuit circuit,
        List<Transmission> builds,
        boolean wear,
        Optional<ReadingsOption.TakenReadings> readings,
        Progress progress) {

    /** Studies that it takes. */
    private static final int STUDIES = 9;

    private static final SetPressure.By BY = SetPressure.By.COMMAND_AND_SPRING;
    private static final String SPEEDS = "400..4000/50rpm";
    private static final String PRESSURES = "60..400/40psi";
    private static final String TORQUE_SPEED = "2000rpm";
    private static final int STEPS = 12;

    /** What is found of builds; {@code err} gets the progress. */
    static Findings findings(
            Quantity.UnitSystem units,
            DescribedCircuit circuit,
            List<Transmission> builds,
            boolean wear,
            Optional<ReadingsOption.TakenReadings> readings,
            PrintWriter err) {
        Progress progress = new Progress(err, "solving for the report", STUDIES);
        Findings found = new ReportRun(units, circuit, builds, wear, readings, progress).findings();
        progress.end();
        return found;
    }

    private Findings findings() {
        Comparison comparison = step(Comparison.of(builds, series(SPEEDS)));
        return new Findings(
                new CompareAnswer(circuit, comparison, FrictionBands.of(comparison), units),
                step(margins()),
                sweeps(comparison),
                step(torque()),
                step(window()),
                step(leaks()),
                step(jobs()),
                step(wear ? Optional.of(worn()) : Optional.empty()),
                step(heat()),
                step(readings.map(taken -> taken.answer(units, circuit, first().build()))),
                new CheckAnswer(circuit, 0, NotJudged.of(circuit.unit()), units));
    }

    /** Steps within a study are not shown. */
    private static void quiet() {}

    private <T> T step(T answer) {
        progress.step();
        return answer;
    }

    private static List<Double> series(String speeds) {
        return OptionValues.series("--speed", speeds, Dimension.SPEED);
    }

    private Transmission first() {
        return builds.get(0);
    }

    private boolean commanded() {
        return first().commanded().isPresent();
    }

    private List<Double> searched(double step) {
        return OptionValues.searched(null, first(), step);
    }

    private MarginsAnswer margins() {
        List<JudgedBuild> judged = JudgedBuild.study(builds, searched(MarginsCommand.STEP), ReportRun::quiet);
        return new MarginsAnswer(
                units,
                circuit.name(),
                circuit.about(),
                judged,
                NotCommanded.of(first()),
                SameSpeedFilms.of(judged),
                Settling.AS_GIVEN,
                first().duties().stream().map(DutyPoint::name).toList());
    }

    /** The sweeps of the comparison at its first driving condition. */
    private Optional<SweepAnswer> sweeps(Comparison comparison) {
        if (!commanded()) {
            return Optional.empty();
        }
        List<SpeedSweep> sweeps = comparison.cells().stream()
                .filter(cell ->
                        cell.duty().name().equals(comparison.duties().get(0).name()))
                .map(Comparison.BuildAtDuty::sweep)
                .toList();
        return Optional.of(
                new SweepAnswer(circuit, sweeps, FrictionBands.of(sweeps), false, units, LowAtIdle.of(builds)));
    }

    private Optional<TorqueAnswer> torque() {
        boolean judged = commanded()
                && first().ranges().stream().anyMatch(range -> !range.applied().isEmpty())
                && TorqueConditions.hottest(first()).isPresent();
        double speed = OptionValues.quantity("--speed", TORQUE_SPEED, Dimension.SPEED);
        return judged
                ? Optional.of(new TorqueAnswer(
                        units,
                        circuit.name(),
                        circuit.about(),
                        builds.stream()
                                .map(unit -> TorqueRun.held(
                                        circuit.adjustable(unit.build()), BY, SetPressures.of(PRESSURES), speed))
                                .toList(),
                        false,
                        LowAtIdle.of(builds)))
                : Optional.empty();
    }

    private Optional<WindowAnswer> window() {
        if (!commanded()) {
            return Optional.empty();
        }
        List<Double> pressures = SetPressures.of(PRESSURES);
        List<Double> speeds = searched(WindowCommand.STEP);
        return Optional.of(new WindowAnswer(
                units,
                circuit.name(),
                circuit.about(),
                BY,
                false,
                builds.stream()
                        .map(unit -> new WindowAnswer.BuildWindow(
                                unit,
                                Window.study(unit, Window.Raised.by(unit, BY), pressures, speeds, ReportRun::quiet),
                                WindowRun.useful(unit, Window.Raised.by(unit, BY), pressures)))
                        .toList(),
                LowAtIdle.of(builds)));
    }

    private Optional<LeaksAnswer> leaks() {
        Roles roles = Roles.of(first());
        if (roles.chambers().isEmpty()) {
            return Optional.empty();
        }
        DutyPoint duty = first().duties().get(0);
        LeakStudy study = LeakStudy.of(
                circuit.adjustable(first().build()),
                duty,
                series(LeaksCommand.ONSET_SPEEDS),
                STEPS,
                LeaksAnswer.MOST_ALONE,
                ReportRun::quiet);
        return Optional.of(new LeaksAnswer(
                units,
                circuit.about(),
                circuit.abouts(),
                first(),
                roles,
                duty,
                study.outcome(),
                study.outcome().state().map(state -> Assessment.of(first(), duty, roles, state)),
                study.found()));
    }

    private Optional<JobsAnswer> jobs() {
        if (Roles.of(first()).chambers().isEmpty()) {
            return Optional.empty();
        }
        Optional<Workshop> named = circuit.workshop(first().build());
        Adjustable build = circuit.adjustable(first().build());
        Workshop shop = named.orElseGet(() -> JobPlace.workshop(build));
        DutyPoint duty = first().duties().get(0);
        JobStudy study =
                JobStudy.of(shop, BY, duty, series(LeaksCommand.ONSET_SPEEDS), searched(JobRun.STEP), ReportRun::quiet);
        return Optional.of(new JobsAnswer(units, shop, named.isPresent(), false, duty, study));
    }

    private WearAnswer worn() {
        return new WearAnswer(
                units,
                circuit.name(),
                circuit.about(),
                builds.stream().map(this::worn).toList());
    }

    private BuildWear worn(Transmission unit) {
        Adjustable build = circuit.adjustable(unit.build());
        return WearRun.of(build, Wear.fits(build), searched(WearCommand.STEP), ReportRun::quiet);
    }

    private Optional<HeatAnswer> heat() {
        return first().heat().isEmpty() || HeatStudy.warming(first()).isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new HeatAnswer(circuit.name(), circuit.about(), HeatStudy.of(builds, ReportRun::quiet), units));
    }
}
