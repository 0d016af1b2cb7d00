package hotidle.cli;

import hotidle.answer.check.CheckAnswer;
import hotidle.answer.compare.CompareAnswer;
import hotidle.answer.format.Quantity;
import hotidle.answer.heat.HeatAnswer;
import hotidle.answer.jobs.JobsAnswer;
import hotidle.answer.margins.MarginsAnswer;
import hotidle.answer.phrase.CustomerPhrase;
import hotidle.answer.report.Findings;
import hotidle.answer.sweep.SweepAnswer;
import hotidle.answer.torque.TorqueAnswer;
import hotidle.answer.wear.BuildWear;
import hotidle.answer.wear.WearAnswer;
import hotidle.answer.window.WindowAnswer;
import hotidle.assess.NotCommanded;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.check.NotJudged;
import hotidle.circuits.text.Dimension;
import hotidle.study.Comparison;
import hotidle.study.FrictionBands;
import hotidle.study.HeatStudy;
import hotidle.study.HeldRanges;
import hotidle.study.JobStudy;
import hotidle.study.JudgedBuild;
import hotidle.study.LowAtIdle;
import hotidle.study.SameSpeedFilms;
import hotidle.study.SpeedSweep;
import hotidle.study.TorqueConditions;
import hotidle.study.TorqueHeld;
import hotidle.study.Wear;
import hotidle.study.Window;
import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * Solves what a report is put together from, each as the command of that name does without options; only set pressures are tried in
 * steps twice as wide, since their ends are narrowed down all the same.
 *
 * @param told     whose leaks and jobs are told
 * @param repaired whether to find what the first build may be set to with the jobs done that it needs, after all else
 * @param readings of the first build's gauges
 * @param progress gets a step for each study
 */
record ReportRun(
        Quantity.UnitSystem units,
        DescribedCircuit circuit,
        List<Transmission> builds,
        Transmission told,
        boolean wear,
        boolean repaired,
        Optional<ReadingsOption.TakenReadings> readings,
        Progress progress) {

    /** Studies that it takes, beside those of each build: its pressures where no other differs by the set pressure alone, jobs, wear. */
    private static final int STUDIES = 9;

    static final SetPressure.By BY = SetPressure.By.COMMAND_AND_SPRING;
    private static final String SPEEDS = "400..4000/50rpm";
    private static final String PRESSURES = "60..400/40psi";

    /** The build whose leaks and jobs a shop wants to be told: the first whose line is not held at idle, else the first. */
    static Transmission told(List<Transmission> builds) {
        List<String> low = LowAtIdle.of(builds);
        return builds.stream()
                .filter(build -> low.contains(build.build()))
                .findFirst()
                .orElse(builds.get(0));
    }

    /** What is found of builds, leaks and jobs of the one told; {@code err} gets the progress. */
    static Findings findings(
            Quantity.UnitSystem units,
            DescribedCircuit circuit,
            List<Transmission> builds,
            Transmission told,
            boolean wear,
            boolean repaired,
            Optional<ReadingsOption.TakenReadings> readings,
            PrintWriter err) {
        long windows = builds.stream()
                .map(unit -> circuit.apartFromSetPressure(unit.build()))
                .distinct()
                .count();
        Progress progress = new Progress(
                err,
                "solving for the report",
                STUDIES + (int) windows + builds.size() - 1 + (wear ? builds.size() : 0));
        Findings found = new ReportRun(units, circuit, builds, told, wear, repaired, readings, progress).findings();
        progress.end();
        return found;
    }

    /** Studies run side by side; one that asks for what another finds has it begun before. */
    private Findings findings() {
        ReportedRepairs repairs = new ReportedRepairs(units, circuit, told);
        try (SideBySide studies = new SideBySide(progress)) {
            // what others ask for, then the longest first
            var margins = studies.study(this::margins);
            List<Supplier<BuildWear>> worn = wear
                    ? builds.stream()
                            .map(unit -> studies.study(() -> worn(unit)))
                            .toList()
                    : List.of();
            // builds that differ by their set pressure alone are one build at each that is tried
            Map<String, Supplier<Optional<Window>>> tried = new HashMap<>();
            var windows = builds.stream()
                    .map(unit -> tried.computeIfAbsent(
                            circuit.apartFromSetPressure(unit.build()), any -> studies.study(() -> window(unit))))
                    .toList();
            var comparison = studies.study(() -> Comparison.of(builds, series(SPEEDS)));
            var heat = studies.study(this::heat);
            var jobs = studies.study(repairs::jobs);
            List<Supplier<Optional<JobsAnswer>>> otherJobs = builds.stream()
                    .filter(unit -> !unit.build().equals(told.build()))
                    .map(unit -> studies.study(() -> otherJobs(margins.get(), unit)))
                    .toList();
            var after =
                    studies.study(() -> repaired ? jobs.get().flatMap(this::repaired) : Optional.<WindowAnswer>empty());
            var carries = studies.study(() -> repairedTorque(after.get()));
            var torque = studies.study(this::torque);
            var leaks = studies.study(repairs::leaks);
            var gauge = studies.study(() -> readings.map(taken -> taken.answer(units, circuit, first().build())));
            studies.begin();
            Comparison compared = comparison.get();
            return new Findings(
                    new CompareAnswer(circuit, compared, FrictionBands.of(compared), units),
                    margins.get(),
                    sweeps(compared),
                    torque.get(),
                    windows(windows, torque.get()),
                    after.get(),
                    carries.get(),
                    told.build(),
                    leaks.get(),
                    jobs.get(),
                    otherJobs.stream()
                            .map(Supplier::get)
                            .flatMap(Optional::stream)
                            .toList(),
                    wear ? Optional.of(worn(worn.stream().map(Supplier::get).toList())) : Optional.empty(),
                    heat.get(),
                    gauge.get(),
                    new CheckAnswer(circuit, 0, NotJudged.of(circuit.unit()), units));
        }
    }

    /** Steps within a study are not shown. */
    static void quiet() {}

    static List<Double> series(String speeds) {
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
                units, circuit.name(), circuit.about(), judged, NotCommanded.of(first()), SameSpeedFilms.of(judged));
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
        return commanded() && TorqueConditions.given(first())
                ? Optional.of(new TorqueAnswer(
                        units,
                        circuit.name(),
                        circuit.about(),
                        builds.stream()
                                .map(unit -> TorqueRun.held(
                                        circuit.adjustable(unit.build()),
                                        BY,
                                        SetPressures.of(PRESSURES, builds),
                                        TorqueConditions.USUAL_SPEED))
                                .toList(),
                        false,
                        LowAtIdle.of(builds)))
                : Optional.empty();
    }

    private Optional<Window> window(Transmission unit) {
        return commanded()
                ? Optional.of(Window.study(
                        unit,
                        Window.Raised.by(unit, BY),
                        SetPressures.of(PRESSURES, builds),
                        searched(WindowCommand.STEP),
                        ReportRun::quiet))
                : Optional.empty();
    }

    /** Under a name of its own, since it is none of the builds. */
    private Optional<WindowAnswer> repaired(JobsAnswer jobs) {
        return jobs.study()
                .chosen()
                .map(JobStudy.JobSet::jobs)
                .filter(needed -> !needed.isEmpty())
                .flatMap(needed -> jobs.shop().after(needed))
                .map(unit -> unit.named(CustomerPhrase.repaired(first().build())))
                .flatMap(unit -> window(unit)
                        .map(window -> new WindowAnswer(
                                units,
                                circuit.name(),
                                circuit.about(),
                                "",
                                BY,
                                false,
                                List.of(new WindowAnswer.BuildWindow(unit, window, Optional.empty())),
                                LowAtIdle.of(List.of(unit)))));
    }

    /** What the first build holds with its jobs done [N·m]; empty where it is not repaired or a range is not known. */
    private static OptionalDouble repairedTorque(Optional<WindowAnswer> after) {
        return after.map(window -> window.builds().get(0).unit())
                .filter(TorqueConditions::given)
                .map(unit -> new HeldRanges(TorqueHeld.of(unit, TorqueConditions.USUAL_SPEED)).torque())
                .orElse(OptionalDouble.empty());
    }

    /** Jobs of a build that is not told; of one that does not fail none are looked for. */
    private Optional<JobsAnswer> otherJobs(MarginsAnswer margins, Transmission unit) {
        return Findings.fails(margins, unit.build())
                ? new ReportedRepairs(units, circuit, unit).needed()
                : Optional.empty();
    }

    /** Up to which set pressure more torque is held is found with the torque. */
    private Optional<WindowAnswer> windows(List<Supplier<Optional<Window>>> windows, Optional<TorqueAnswer> torque) {
        List<WindowAnswer.BuildWindow> found = new ArrayList<>();
        for (int i = 0; i < builds.size(); i++) {
            int build = i;
            windows.get(i)
                    .get()
                    .ifPresent(window -> found.add(new WindowAnswer.BuildWindow(
                            builds.get(build),
                            window,
                            torque.map(held -> held.builds().get(build).useful()))));
        }
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(new WindowAnswer(
                        units, circuit.name(), circuit.about(), "", BY, false, found, LowAtIdle.of(builds)));
    }

    private WearAnswer worn(List<BuildWear> found) {
        return new WearAnswer(units, circuit.name(), circuit.about(), "", found);
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
