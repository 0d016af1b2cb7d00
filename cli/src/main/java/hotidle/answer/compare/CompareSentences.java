package hotidle.answer.compare;

import hotidle.answer.format.MarginQuantity;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.ClutchPhrase;
import hotidle.answer.phrase.FaultPhrase;
import hotidle.answer.phrase.HeldLinePhrase;
import hotidle.answer.phrase.HubFilmPhrase;
import hotidle.answer.phrase.OnsetPhrase;
import hotidle.answer.phrase.PumpPowerPhrase;
import hotidle.answer.phrase.RegulatorPhrase;
import hotidle.answer.phrase.ShortOfOilPhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.assess.StateFault;
import hotidle.circuits.DescribedCircuit;
import hotidle.part.Clutch;
import hotidle.study.Comparison;
import hotidle.study.SpeedSweep;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Which sentences a comparison is told in, each from its own numbers, at the circuit's first duty point. */
record CompareSentences(DescribedCircuit described, Comparison comparison, Quantity.UnitSystem units) {

    List<String> all() {
        List<Transmission> builds = comparison.units();
        ChangeSentences changes = new ChangeSentences(units);
        List<String> lines = new ArrayList<>();
        List<String> names = builds.stream().map(Transmission::build).toList();
        for (Transmission unit : builds) {
            lines.addAll(build(unit));
            described
                    .standsOn(unit.build(), names)
                    .ifPresent(on -> changes.between(comparison.cell(on, duty().name()), cell(unit))
                            .forEach(line -> lines.add("  " + line)));
        }
        power().ifPresent(lines::add);
        return lines;
    }

    private DutyPoint duty() {
        return comparison.duties().get(0);
    }

    private Comparison.BuildAtDuty cell(Transmission unit) {
        return comparison.cell(unit.build(), duty().name());
    }

    private Stream<Comparison.BuildAtDuty> cells(Transmission unit) {
        return comparison.cells().stream().filter(cell -> cell.unit().build().equals(unit.build()));
    }

    private List<String> build(Transmission unit) {
        Comparison.BuildAtDuty cell = cell(unit);
        Optional<Figures> figures = cell.figures();
        if (figures.isEmpty()) {
            return List.of(UnsolvedPhrase.nothingKnown(unit.build(), duty().name()));
        }
        if (!figures.get().commanded()) {
            return List.of(new HeldLinePhrase(units)
                    .uncommanded(unit.build(), duty().name(), figures.get().line()));
        }
        List<String> below = new ArrayList<>();
        farAbove(unit).ifPresent(below::add);
        below.addAll(clutches(unit));
        below.addAll(overRating(unit));
        below.add(joined(onset(cell.sweep()), film(comparison.worstFilm(unit.build()), cell)));
        below.addAll(shortages(unit));
        List<String> lines = new ArrayList<>(List.of(line(cell, figures.get())));
        below.forEach(line -> lines.add("  " + line));
        return lines;
    }

    private static String joined(String... sentences) {
        return String.join(
                " ", Stream.of(sentences).filter(one -> !one.isEmpty()).toList());
    }

    private String line(Comparison.BuildAtDuty cell, Figures f) {
        HeldLinePhrase phrase = new HeldLinePhrase(units);
        String build = cell.unit().build();
        OptionalDouble lube = cell.roles().lube().isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(f.lube());
        String shortOf = String.join(", ", shortOfOil(cell));
        double set = f.set().orElseThrow();
        boolean reached = f.regulated() || (f.stuck() && !f.low());
        return joined(
                reached
                        ? phrase.held(build, f.farAboveSet(), set, duty().name(), f.line(), lube, shortOf)
                        : phrase.notHeld(
                                build, set, duty().name(), f.line(), !f.offSeat(), f.reliefOpen(), lube, shortOf),
                f.stuck() ? RegulatorPhrase.STUCK : "");
    }

    /** Duty points at which the line stands far above what is commanded. */
    private Optional<String> farAbove(Transmission unit) {
        List<String> found = new ArrayList<>();
        cells(unit)
                .forEach(cell -> cell.figures()
                        .filter(Figures::farAboveSet)
                        .ifPresent(f -> found.add(HeldLinePhrase.at(
                                cell.duty().name(),
                                new HeldLinePhrase(units)
                                        .farAbove(f.line(), f.set().orElseThrow(), f.reliefOpen())))));
        return found.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", found));
    }

    /** Clutches that slip, and those that press where they should be off, at any duty point. */
    private List<String> clutches(Transmission unit) {
        ClutchPhrase phrase = new ClutchPhrase(units);
        List<String> lines = new ArrayList<>();
        cells(unit).forEach(cell -> {
            DutyPoint at = cell.duty();
            cell.slipping().stream()
                    .filter(margin -> margin.kind() != Margin.Kind.APPLY_SLIDING)
                    .forEach(margin ->
                            lines.add(phrase.slips(at.name(), margin.part(), margin.value(), margin.needed())));
            cell.dragging().forEach((name, pressure) -> {
                Clutch clutch = (Clutch) unit.network().part(name).orElseThrow().part();
                lines.add(phrase.drags(name, pressure, at.name(), at.range(), clutch.yields()));
            });
        });
        return lines;
    }

    /** The first to give of what is loaded beyond its rating, at any duty point. */
    private List<String> overRating(Transmission unit) {
        FaultPhrase phrase = new FaultPhrase(units);
        return cells(unit)
                .flatMap(cell -> cell.faults().stream()
                        .filter(fault -> fault.kind() == StateFault.Kind.OVER_TORQUE
                                || fault.kind() == StateFault.Kind.OVER_PRESSURE)
                        .map(fault -> phrase.at(cell.duty().name(), fault)))
                .toList();
    }

    /** What gets less than it needs at the duty's own speed, with both figures; empty where nothing does. */
    private List<String> shortOfOil(Comparison.BuildAtDuty cell) {
        return cell.starved().stream()
                .map(margin -> ShortOfOilPhrase.part(
                        units,
                        MarginQuantity.of(margin),
                        margin.part(),
                        margin.value().orElseThrow(),
                        margin.needed()))
                .toList();
    }

    /** Duty points besides the first at which something gets less oil than it needs. */
    private List<String> shortages(Transmission unit) {
        return cells(unit)
                .filter(cell -> !cell.duty().name().equals(duty().name())
                        && !shortOfOil(cell).isEmpty())
                .map(cell -> ShortOfOilPhrase.at(cell.duty().name(), shortOfOil(cell)))
                .toList();
    }

    private String onset(SpeedSweep sweep) {
        double highest =
                sweep.rising().get(sweep.rising().size() - 1).conditions().speed();
        OptionalDouble onset = sweep.onset();
        String regulates = new OnsetPhrase(units).regulates(onset, CompareRow.lowest(sweep), highest);
        List<Double> shortAt = sweep.assessed().stream()
                .flatMap(Optional::stream)
                .filter(one -> !one.starved().isEmpty())
                .map(one -> one.state().conditions().speed())
                .toList();
        return onset.isEmpty() ? regulates : joined(regulates, ShortOfOilPhrase.speeds(units, shortAt, slowest()));
    }

    private double slowest() {
        return comparison.duties().stream().mapToDouble(DutyPoint::speed).min().orElseThrow();
    }

    /** @param shown the one whose oil tables and charts have */
    private String film(Comparison.BuildAtDuty cell, Comparison.BuildAtDuty shown) {
        HubFilmPhrase phrase = new HubFilmPhrase(units);
        List<Double> contact = cell.sweep().contactSpeeds();
        if (!contact.isEmpty()) {
            return phrase.contact(cell.duty().name(), contact);
        }
        return cell.thinnestFilm()
                .map(thinnest -> phrase.thinnest(
                        thinnest.speed(),
                        cell.duty().name(),
                        thinnest.film(),
                        thinnest.allowed(),
                        thinnest.tooThin(),
                        thinnest.unbalanced(),
                        cell.duty().name().equals(shown.duty().name())
                                ? ""
                                : shown.thinnestFilm()
                                        .map(one -> phrase.inOil(shown.duty().name(), one.film(), one.speed()))
                                        .orElse("")))
                .orElse("");
    }

    /** Where the pump takes most power, for each build. */
    private Optional<String> power() {
        return comparison.mostPower().map(most -> {
            String worst = most.duty().name();
            return PumpPowerPhrase.greatest(
                    worst,
                    comparison.units().stream()
                            .map(unit -> comparison.cell(unit.build(), worst))
                            .map(cell -> PumpPowerPhrase.build(
                                    units,
                                    cell.unit().build(),
                                    cell.figures().stream()
                                            .mapToDouble(Figures::pumpPower)
                                            .findFirst()))
                            .toList());
        });
    }
}
