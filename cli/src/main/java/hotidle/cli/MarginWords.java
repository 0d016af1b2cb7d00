package hotidle.cli;

import hotidle.answer.MarginQuantity;
import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.ClutchPhrase;
import hotidle.answer.phrase.HeadroomPhrase;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.MarginNotePhrase;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.part.Clutch;
import hotidle.part.Converter;
import hotidle.study.Judgement;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says of a margin, in plain words, what decides it. */
record MarginWords(Quantity.UnitSystem units) {

    /** What the two margins of a clutch are called that are one and the same. */
    static final String APPLY_BOTH = LimitPhrase.APPLY_BOTH;

    /** What a margin is called. */
    static String label(Margin margin) {
        return label(margin.kind());
    }

    /** What a kind of margin is called. */
    static String label(Margin.Kind kind) {
        return LimitPhrase.label(kind);
    }

    static Quantity quantity(Margin margin) {
        return MarginQuantity.of(margin);
    }

    String value(Margin margin) {
        return Double.isNaN(margin.value()) ? "not known" : with(margin, margin.value());
    }

    String needed(Margin margin) {
        return with(margin, margin.needed());
    }

    private String with(Margin margin, double value) {
        return quantity(margin).with(units, value) + absolute(margin);
    }

    /** What follows the unit of a pressure that is not counted from ambient. */
    static String absolute(Margin margin) {
        boolean inlet = margin.kind() == Margin.Kind.PUMP_INLET && margin.scale() == Margin.Scale.PRESSURE;
        return inlet ? " abs" : "";
    }

    String headroom(Margin margin) {
        return HeadroomPhrase.of(margin.headroom());
    }

    static String verdict(Margin margin) {
        return HeadroomPhrase.verdict(margin.verdict());
    }

    /** One margin in a few words, for example "lubrication (lube-rear) at hot-idle: 0.01 gpm, needs 0.11 gpm". */
    String brief(Judgement judged, Margin margin) {
        return label(margin) + " (" + margin.part() + ") at " + judged.duty().name() + ": " + value(margin)
                + (margin.kind().upper() ? ", allowed " : ", needs ") + needed(margin);
    }

    /** What a build comes to in one line. */
    String summary(String build, List<Judgement> all) {
        Optional<Judgement> unknown = all.stream()
                .filter(judged -> judged.outcome().state().isEmpty())
                .findFirst();
        Optional<Judgement> worst = all.stream()
                .filter(judged -> judged.least().isPresent())
                .min(Comparator.comparingDouble(
                        judged -> judged.least().orElseThrow().rank()));
        String open = unknown.map(judged -> " Not known at " + judged.duty().name() + ": no steady state was found.")
                .orElse("");
        if (worst.isEmpty()) {
            return build
                    + (open.isEmpty()
                            ? ": nothing to judge; the circuit has no pump, clutch, lubrication or hub."
                            : ": NOT KNOWN." + open);
        }
        Margin first = worst.get().first().orElseThrow();
        String words =
                switch (first.verdict()) {
                    case FAILS -> "FAILS. First limit: ";
                    case CLOSE -> "CLOSE. First limit: ";
                    case HOLDS -> "HOLDS. Least headroom: ";
                };
        boolean pump = first.kind() == Margin.Kind.REGULATION && first.verdict() == Margin.Verdict.FAILS;
        String said = pump
                ? notHeld(worst.get(), first)
                : brief(worst.get(), first) + " (" + headroom(first) + ")" + speed(first) + ".";
        Optional<String> on =
                all.stream().flatMap(judged -> dragging(judged).stream()).findFirst();
        return build + ": "
                + on.map(clutch -> "FAILS. " + clutch + " Apart from that: ").orElse("") + words + said + open;
    }

    /** Clutches that press at a duty although its range does not apply them, a sentence each. */
    List<String> dragging(Judgement judged) {
        return dragging(judged.unit(), judged.duty(), judged.dragging());
    }

    /** The same of any duty, with the pressures of such clutches. */
    List<String> dragging(Transmission unit, DutyPoint duty, Map<String, Double> found) {
        return found.entrySet().stream()
                .map(one -> {
                    Clutch clutch = (Clutch)
                            unit.network().part(one.getKey()).orElseThrow().part();
                    return new ClutchPhrase(units)
                            .drags(one.getKey(), one.getValue(), duty.name(), duty.range(), clutch.yields());
                })
                .toList();
    }

    private String notHeld(Judgement judged, Margin regulation) {
        Optional<Figures> figures = judged.outcome().state().map(state -> Figures.of(judged.unit(), state));
        String line = figures.map(f -> f.regulated()
                        ? "the pump has too little oil for all that hangs on the line"
                        : "line pressure is not held, " + Quantity.PRESSURE.with(units, f.line()) + " of the "
                                + Quantity.PRESSURE.with(units, f.set().orElseThrow()) + " commanded")
                .orElse("line pressure is not held");
        String set = figures.map(f -> Quantity.PRESSURE.with(units, f.set().orElseThrow()))
                .orElse("its set pressure");
        String hangs = judged.margins().stream()
                .filter(judged::followsFromPump)
                .map(MarginWords::label)
                .distinct()
                .collect(Collectors.joining(", "));
        return label(regulation) + " (" + regulation.part() + ") at "
                + judged.duty().name() + ": " + line + "; with the line held at " + set + " " + delivers(regulation)
                + " where "
                + needed(regulation) + " is needed (" + headroom(regulation) + ")."
                + (hangs.isEmpty() ? "" : " Short because of that: " + hangs + ".");
    }

    private String delivers(Margin regulation) {
        return regulation.value() > 0
                ? "the pump delivers " + value(regulation)
                : "the pump delivers nothing (more would slip back than it displaces)";
    }

    private String speed(Margin margin) {
        return margin.speed().isPresent()
                ? ", at " + Quantity.SPEED.with(units, margin.speed().getAsDouble())
                : "";
    }

    /** Why a margin is what it is. */
    String why(Judgement judged, Margin margin) {
        String said =
                switch (margin.kind()) {
                    case REGULATION -> regulation(judged, margin);
                    case APPLY, APPLY_SLIDING -> clutch(judged, margin);
                    case LOCKUP -> lockup(judged, margin);
                    case LUBRICATION -> oil(margin, "This branch");
                    case COOLER -> oil(margin, "The cooler");
                    case CONVERTER_CHARGE ->
                        "The converter is charged with " + value(margin) + "; it needs " + needed(margin)
                                + " against cavitation.";
                    case FILM -> film(margin);
                    case UNIT_LOAD ->
                        "Side load and weight over the bushing's length and width come to " + value(margin)
                                + speed(margin) + "; its material bears " + needed(margin) + ".";
                    case PUMP_INLET -> inlet(margin);
                    case RELIEF ->
                        "The line stands at " + value(margin) + "; the valve lifts from " + needed(margin)
                                + " on, and then holds the line in place of the regulator.";
                };
        return margin.notes().isEmpty() ? said : said + " Note: " + MarginNotePhrase.of(margin.notes()) + ".";
    }

    private String regulation(Judgement judged, Margin margin) {
        Optional<Figures> figures = judged.outcome().state().map(state -> Figures.of(judged.unit(), state));
        String set = figures.map(
                        known -> Quantity.PRESSURE.with(units, known.set().orElseThrow()))
                .orElse("its set pressure");
        String said = "With the line at " + set + " " + delivers(margin)
                + "; leaks, solenoids, clutches and the least that converter, cooler and lubrication need take "
                + needed(margin) + ".";
        if (margin.verdict() != Margin.Verdict.FAILS || figures.isEmpty()) {
            return said;
        }
        String line = Quantity.PRESSURE.with(units, figures.get().line());
        return said
                + (figures.get().regulated()
                        ? " The regulator holds the line, at " + line + ", by keeping oil from them."
                        : " The line settles at " + line + ".");
    }

    private String clutch(Judgement judged, Margin margin) {
        DutyPoint duty = judged.duty();
        Clutch clutch = (Clutch)
                judged.unit().network().part(margin.part()).orElseThrow().part();
        Range.Applied applied =
                judged.unit().range(duty.range()).orElseThrow().applied().get(margin.part());
        double torque = Math.abs(duty.turbineTorque() * applied.torqueShare());
        boolean slipping = margin.kind() == Margin.Kind.APPLY_SLIDING;
        return "It has " + value(margin) + " at the piston; to "
                + (slipping ? "pull through while slipping, " : "hold ") + Quantity.TORQUE.with(units, torque)
                + " times "
                + Digits.four(clutch.factor()) + (slipping ? " takes " : " it needs ") + needed(margin)
                + ", return spring included.";
    }

    private String lockup(Judgement judged, Margin margin) {
        double factor = ((Converter) judged.unit()
                        .network()
                        .part(margin.part())
                        .orElseThrow()
                        .part())
                .lockup()
                .orElseThrow()
                .factor();
        return "Apply less release pressure is " + value(margin) + "; to carry "
                + Quantity.TORQUE.with(units, Math.abs(judged.duty().engineTorque())) + " times " + Digits.four(factor)
                + " the lockup needs " + needed(margin) + ".";
    }

    private String oil(Margin margin, String what) {
        return what + " gets " + value(margin) + "; it needs " + needed(margin) + ".";
    }

    private String film(Margin margin) {
        if (Double.isNaN(margin.value())) {
            return "Hub and bore touch from "
                    + Quantity.SPEED.with(units, margin.speed().orElseThrow()) + " on; a film is not known there.";
        }
        return "The thinnest film over the speeds searched is " + value(margin) + speed(margin) + "; " + needed(margin)
                + " is the least allowed (assumed from roughness).";
    }

    private String inlet(Margin margin) {
        return margin.scale() == Margin.Scale.SHARE
                ? "The pump fills to " + value(margin) + " only."
                : "The pump's inlet has " + value(margin) + ", absolute; below " + needed(margin)
                        + " air comes out of the oil.";
    }
}
