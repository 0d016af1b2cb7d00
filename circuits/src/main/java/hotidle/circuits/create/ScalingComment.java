package hotidle.circuits.create;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The comment on top of a scaled file: by which rules it was scaled, and what to measure first.
 *
 * @param name    of the new circuit
 * @param like    name of the ready circuit
 * @param by      what it was scaled by
 * @param lubrication how its branches were sized; empty where they were only scaled
 * @param answers what was asked for
 */
record ScalingComment(
        String name, String like, ScaleFactors by, Optional<LubricationFit> lubrication, UnitAnswers answers) {

    /** Assumed sizes named in the file (chosen). */
    private static final int NAMED = 8;

    /** Characters in a line of the comment (chosen). */
    private static final int WIDTH = 170;

    /** Its lines. */
    List<String> lines(Optional<MeasureFirst> measureFirst) {
        List<String> lines = new ArrayList<>();
        lines.add(name + ": scaled from " + like
                + ", an invented unit. A number with ~ in front is assumed: measure it, write over it");
        lines.add(
                "without the ~ (or fill in a sheet: hotidle sheet), and look again. Rules: geometric similarity, but clearances, gaps and");
        lines.add("edges are kept, for they are made to a fit and not to a scale; nothing else is changed.");
        rule(
                lines,
                answers.has("hub-diameter") ? "pump: lengths" : "pump and hub: lengths",
                by.length(),
                "cube root of the displacements' ratio; areas by its square, filter by its cube");
        rule(lines, "regulator: spring, boost, command; relief valve", by.pressure(), "ratio of set pressures");
        rule(lines, "engine torque at each driving condition", by.torque(), "ratio of engine torques");
        rule(lines, "pistons and return springs", by.piston(), "ratio of torques over that of pressures; linings kept");
        if (answers.has("hub-diameter")) {
            rule(lines, "hub and its bushing", by.hub(), "ratio of hub diameters");
        }
        if (!answers.faces().isEmpty()) {
            lines.add(
                    "  clutches of which the friction faces were asked for ("
                            + String.join(", ", answers.faces().keySet())
                            + "): a piston area that was not is less by the ratio of faces times mean radius ((inner + outer diameter)/4)");
            lines.add(
                    "  a band among them is a plate clutch here that holds as much at each pressure, at the radius of the drum where none was given");
        }
        lines.add(
                "  a plate clutch that is a band in your unit: write kind: band, drum-diameter and wrap for surfaces and linings");
        rule(
                lines,
                "cooler: flow and need",
                by.cooler(),
                "ratio of cooler flows, same pressure drop; orifice before it by its root");
        rule(lines, "lubrication: needs", by.lube(), "ratio of lubrication flows");
        lubrication.ifPresent(fit -> lines.add(fitted(fit)));
        rule(lines, "valve-body bores: diameters and lengths", by.bore(), "ratio of diameters");
        boolean fitted = answers.has("idle-pressure") || answers.has("reverse-pressure");
        if (fitted) {
            lines.add(
                    "  regulator: preload and areas, or the command, so that the gauge at idle and the pressure of reverse are as asked for");
        }
        measureFirst.ifPresent(first -> {
            lines.add(String.format(
                    Locale.ROOT,
                    "Measure first what moves the verdict most. %s (%s) has %+.0f %% at %s; a tenth more of a size (of a bore: clearance) adds:",
                    first.limit().kind().word(),
                    first.limit().part(),
                    100 * first.now(),
                    first.limit().duty()));
            StringBuilder sizes = new StringBuilder(" ");
            first.effects().stream()
                    .limit(NAMED)
                    .forEach(effect -> sizes.append(
                            String.format(Locale.ROOT, " %s %+.1f %%;", effect.path(), 100 * effect.change())));
            lines.add(sizes + " a fit can go into the sheet, any other is written over here.");
        });
        return lines;
    }

    private static String fitted(LubricationFit fit) {
        return String.format(
                        Locale.ROOT,
                        "  lubrication: each branch's hole or gap so that all have the same headroom at the driving condition where it is least, %+.0f %%",
                        100 * fit.headroom())
                + (fit.wider() > 1
                        ? String.format(Locale.ROOT, "; orifice before the cooler x %.4g for it", fit.wider())
                        : "");
    }

    /** A rule that was used; two short ones share a line. */
    private static void rule(List<String> lines, String what, double factor, String why) {
        if (Math.abs(factor - 1) <= 1e-6) {
            return;
        }
        String rule = String.format(Locale.ROOT, "  %s x %.4g (%s)", what, factor, why);
        int last = lines.size() - 1;
        if (lines.get(last).startsWith("  ") && lines.get(last).length() + rule.length() < WIDTH) {
            lines.set(last, lines.get(last) + ";" + rule.substring(1));
        } else {
            lines.add(rule);
        }
    }
}
