package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.assess.Figures;
import hotidle.assess.IdlePressure;
import hotidle.assess.Margin;
import hotidle.assess.Roles;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.part.Bushing;
import hotidle.part.SpoolValve;
import hotidle.result.Solution;
import hotidle.study.HubOverSpeed;
import hotidle.study.Judgement;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The margins of some builds, for readers. */
record MarginsText(Quantity.UnitSystem units, List<Transmission> builds, List<Judgement> judged) {

    String tables(String about) {
        StringBuilder text = new StringBuilder();
        text.append(Wrap.lines(OptionValues.headed(builds.get(0).circuit(), about), "", "  "));
        for (Transmission unit : builds) {
            List<Judgement> own = of(unit, judged);
            text.append(Wrap.lines(new MarginWords(units).summary(unit.build(), own), "", "  "));
            text.append(Wrap.lines(count(own), "  ", "  "));
        }
        notJudged(builds.get(0)).ifPresent(line -> text.append(Wrap.lines(line, "", "  ")));
        text.append("\n").append(Caution.WHOLE).append("\n");
        text.append(NoStallPhrase.of(judged.stream()
                .filter(one -> low(one))
                .map(one -> one.unit().build())
                .toList()));
        boolean many = builds.size() > 1;
        for (Transmission unit : builds) {
            of(unit, judged)
                    .forEach(one -> text.append("\n")
                            .append(new DutyMargins(units, one).text(many ? unit.build() + ", " : "")));
        }
        return text.append(many ? sameSpeed() : "")
                .append("\n")
                .append(Wrap.lines(LEGEND, "", ""))
                .toString();
    }

    private static boolean low(Judgement one) {
        Optional<Figures> figures = one.outcome().state().map(state -> Figures.of(one.unit(), state));
        return IdlePressure.low(
                one.unit(),
                one.duty(),
                figures.stream().mapToDouble(Figures::line).findFirst(),
                figures.map(Figures::set).orElse(OptionalDouble.empty()));
    }

    /** That regulation is not judged, why, and what to write to have it judged; empty where it is. */
    static Optional<String> notJudged(Transmission unit) {
        if (unit.commanded().isPresent()) {
            return Optional.empty();
        }
        boolean valve = unit.network().parts().stream().anyMatch(placed -> placed.part() instanceof SpoolValve);
        return Optional.of(
                !valve
                        ? "Regulation is not judged: the circuit has no spool-valve, so nothing in it regulates the line."
                        : "Regulation is not judged: the circuit asks for no line pressure that could be held. To have it"
                                + " judged add " + SuggestedCommand.of(unit)
                                + ", then the spring's own set pressure is what must be held; with a solenoid also solenoid,"
                                + " line-pressure and pilot-pressure (circuits/README.md, step 4).");
    }

    private static final String LEGEND =
            "Headroom is what is to spare, as a share of what is needed (of an upper limit: as a share of what is there), from"
                    + " figures with all their digits. FAILS: below 0; close: up to 10 %. Clutch figures carry the capacity factor of the"
                    + " circuit file. What film and unit load the hub is allowed follows from the roughness and the bushing-material in the"
                    + " circuit file (assumed), so that builds with another bushing have other limits.";

    private String count(List<Judgement> own) {
        List<Margin> all = own.stream()
                .flatMap(one -> new DutyMargins(units, one).rows().stream())
                .map(DutyMargins.Row::margin)
                .toList();
        return "Of " + all.size() + " limits at " + own.size() + " duty points: " + count(all, Margin.Verdict.FAILS)
                + " fail, " + count(all, Margin.Verdict.CLOSE) + " close, " + count(all, Margin.Verdict.HOLDS)
                + " hold.";
    }

    private static long count(List<Margin> all, Margin.Verdict verdict) {
        return all.stream().filter(margin -> margin.verdict() == verdict).count();
    }

    /** The films of all builds at the speeds at which one of them is thinnest: thinnest films at different speeds mislead. */
    private String sameSpeed() {
        StringBuilder text =
                new StringBuilder("\nHub film [" + Quantity.FILM.in(units).unit()
                        + "] of all builds at the same speed: each line is a speed at which one build is thinnest\n");
        List<String> head = new ArrayList<>(List.of("duty", "rpm"));
        builds.forEach(unit -> head.add(unit.build()));
        TextTable table = new TextTable(head);
        for (Judgement one : judged) {
            Optional<Solution> thinnest = one.hub().flatMap(HubOverSpeed::thinnest);
            if (thinnest.isPresent()) {
                List<String> row = new ArrayList<>(
                        List.of(one.duty().name(), Quantity.SPEED.number(units, DutyMargins.speedOf(thinnest.get()))));
                builds.forEach(unit -> row.add(filmAt(unit, one.duty(), thinnest.get())));
                table.add(row);
            }
        }
        return text.append(table.aligned()).toString();
    }

    private String filmAt(Transmission unit, DutyPoint duty, Solution like) {
        DutyPoint same = unit.duty(duty.name()).orElseThrow();
        String hub = Roles.of(unit).hub().map(Placed::name).orElse("");
        return new SteadySolver(unit.network())
                .solve(unit.conditions(same).atSpeed(DutyMargins.speedOf(like)), Optional.of(like))
                .state()
                .map(state -> state.measure(hub, Bushing.METAL_CONTACT).orElseThrow() > 0
                        ? "contact"
                        : Quantity.FILM.number(
                                units, state.measure(hub, Bushing.LEAST_FILM).orElseThrow()))
                .orElse("unsolved");
    }

    static List<Judgement> of(Transmission unit, List<Judgement> judged) {
        return judged.stream()
                .filter(one -> one.unit().build().equals(unit.build()))
                .toList();
    }
}
