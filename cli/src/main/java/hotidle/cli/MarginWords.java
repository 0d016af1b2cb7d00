package hotidle.cli;

import hotidle.duty.DutyPoint;
import hotidle.duty.Margin;
import hotidle.duty.Range;
import hotidle.part.Clutch;
import hotidle.part.Converter;
import hotidle.study.Figures;
import hotidle.study.Judgement;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Says of a margin, in plain words, what decides it. */
record MarginWords(Quantity.UnitSystem units) {

    /** Headroom beyond this is not worth a number [-]. */
    private static final double AMPLE = 9.99;

    /** What a margin is called. */
    static String label(Margin margin) {
        return label(margin.kind());
    }

    /** What a kind of margin is called. */
    static String label(Margin.Kind kind) {
        return switch (kind) {
            case REGULATION -> "regulation";
            case APPLY -> "apply, holding";
            case APPLY_SLIDING -> "apply, slipping";
            case LOCKUP -> "lockup";
            case LUBRICATION -> "lubrication";
            case COOLER -> "cooler";
            case CONVERTER_CHARGE -> "converter charge";
            case FILM -> "hub film";
            case UNIT_LOAD -> "hub unit load";
            case PUMP_INLET -> "pump inlet";
        };
    }

    static Quantity quantity(Margin margin) {
        return switch (margin.scale()) {
            case PRESSURE -> Quantity.PRESSURE;
            case FLOW -> Quantity.FLOW;
            case LENGTH -> Quantity.FILM;
            case SHARE -> Quantity.SHARE;
        };
    }

    String value(Margin margin) {
        return Double.isNaN(margin.value()) ? "not known" : quantity(margin).with(units, margin.value());
    }

    String needed(Margin margin) {
        return quantity(margin).with(units, margin.needed());
    }

    String headroom(Margin margin) {
        double headroom = margin.headroom();
        if (Double.isNaN(headroom)) {
            return "-";
        }
        return headroom > AMPLE ? "ample" : String.format(Locale.ROOT, "%+.0f %%", 100 * headroom);
    }

    static String verdict(Margin margin) {
        String word = margin.verdict().word();
        return margin.verdict() == Margin.Verdict.FAILS ? word.toUpperCase(Locale.ROOT) : word;
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
        Margin first = worst.get().least().orElseThrow();
        String words =
                switch (first.verdict()) {
                    case FAILS -> "FAILS. First limit: ";
                    case CLOSE -> "CLOSE. First limit: ";
                    case HOLDS -> "HOLDS. Least headroom: ";
                };
        return build + ": " + words + brief(worst.get(), first) + " (" + headroom(first) + ")" + speed(first) + "."
                + cause(worst.get(), first) + open;
    }

    /** What hangs on the regulator starves where the pump cannot hold the set pressure: then that is the cause. */
    private static String cause(Judgement judged, Margin first) {
        boolean fed =
                switch (first.kind()) {
                    case LUBRICATION, COOLER, CONVERTER_CHARGE -> first.verdict() == Margin.Verdict.FAILS;
                    default -> false;
                };
        boolean starved = judged.margins().stream()
                .anyMatch(
                        margin -> margin.kind() == Margin.Kind.REGULATION && margin.verdict() == Margin.Verdict.FAILS);
        return fed && starved
                ? " The cause is the pump: it cannot hold the set pressure there, and the regulator starves what it feeds."
                : "";
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
                };
        return margin.note().isEmpty() ? said : said + " Note: " + margin.note() + ".";
    }

    private String regulation(Judgement judged, Margin margin) {
        Optional<Figures> figures = judged.outcome().state().map(state -> Figures.of(judged.unit(), state));
        String set =
                figures.map(known -> Quantity.PRESSURE.with(units, known.set())).orElse("its set pressure");
        String said = "With the line at " + set + " the pump delivers " + value(margin)
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
                : "Absolute pressure at the pump's inlet is " + value(margin) + "; below " + needed(margin)
                        + " air comes out of the oil.";
    }
}
