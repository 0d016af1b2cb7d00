package hotidle.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.StateJson;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.Judgement;
import hotidle.study.Wear;
import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How far each fit may wear. */
@Command(
        name = "wear",
        mixinStandardHelpOptions = true,
        description =
                "Finds for each fit alone the size at which the first limit is gone at any duty point, and how far all fits"
                        + " may wear together.")
final class WearCommand implements Callable<Integer> {

    @Mixin
    Asked asked;

    @Option(names = "--build", description = "a build. Default: the circuit's first")
    String build;

    /** Step of the engine speeds searched, where none are given [rev/s]. */
    private static final double STEP = 200 / 60.0;

    @Option(
            names = "--speed",
            description =
                    "engine speeds searched for the hub's least film and largest load, for example 600..4000/50rpm."
                            + " Default: from the slowest duty point to 4000rpm in steps of 200rpm")
    String speed;

    @Option(names = "--fit", description = "a fit to look at, part.key; give it again for each. Default: all that wear")
    List<String> fits = List.of();

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit described = asked.load();
        Adjustable chosen = Circuits.adjustable(described, build);
        List<Double> speeds = Choice.searched(speed, chosen.unit(), STEP);
        List<WearSize> looked = looked(chosen);
        Progress progress = new Progress(spec.commandLine().getErr(), "wearing fits", looked.size() + 1);
        Wear wear = Wear.study(chosen, looked, speeds, progress::step);
        progress.end();
        spec.commandLine()
                .getOut()
                .print(
                        switch (asked.shared.format) {
                            case TABLE -> table(described, chosen, wear);
                            case CSV -> csv(wear);
                            case JSON -> StateJson.text(json(chosen, wear));
                        });
        return HotIdle.DONE;
    }

    private List<WearSize> looked(Adjustable chosen) {
        List<WearSize> wearing = Wear.fits(chosen);
        List<String> names = wearing.stream().map(WearSize::name).toList();
        for (String fit : fits) {
            if (!names.contains(fit)) {
                throw new WrongInputException("hotidle: --fit " + fit + ": no fit of that name wears in "
                        + chosen.unit().build() + "\nmend: " + hotidle.circuits.text.Nearest.mend(fit, names));
            }
        }
        return fits.isEmpty()
                ? wearing
                : wearing.stream()
                        .filter(dimension -> fits.contains(dimension.name()))
                        .toList();
    }

    private String table(DescribedCircuit described, Adjustable chosen, Wear wear) {
        StringBuilder text = new StringBuilder();
        text.append(Wrap.lines(Choice.headed(described.name(), described.about()), "", "  "));
        if (wear.held() == 0) {
            return text.append(Wrap.lines(
                            chosen.unit().build() + ": no limit holds or none is judged in this circuit ("
                                    + wear.already().size() + " fail), so no wear can be said to take one away.",
                            "",
                            "  "))
                    .toString();
        }
        text.append(Wrap.lines(chosen.unit().build() + ": " + already(chosen) + together(wear), "", "  "));
        if (!wear.already().isEmpty()) {
            text.append(Wrap.lines(
                    "As it is, these fail already and are left out of the table: " + limits(wear.already()) + ".",
                    "  ",
                    "  "));
        }
        text.append("\n").append(Caution.WHOLE).append("\n\n");
        text.append(
                "Each fit alone, all others as the build has them: what it may wear before the first limit is gone\n");
        List<Wear.Fit> found =
                wear.fits().stream().filter(fit -> fit.size().isPresent()).toList();
        if (found.isEmpty()) {
            text.append("  No fit alone takes a limit away.\n");
        } else {
            text.append(table(found).aligned());
        }
        List<Wear.Fit> none =
                wear.fits().stream().filter(fit -> fit.size().isEmpty()).toList();
        if (!none.isEmpty()) {
            text.append(Wrap.lines(
                    "None of these takes a limit away alone, even worn "
                            + "eight times its allowance further: "
                            + none.stream().map(fit -> fit.dimension().name()).collect(Collectors.joining(", "))
                            + ".",
                    "",
                    "  "));
        }
        return text.append("\n").append(Wrap.lines(LEGEND, "", "")).toString();
    }

    private static final String LEGEND =
            "Sizes are as measured cold. 'Shop limit' is the one written in the circuit file. A found"
                    + " limit counts only the limits that hold in this build, at its own duty points; it is an estimate, not a"
                    + " maker's limit, and the lower of both counts.";

    private static final Quantity.UnitSystem INCHES = Quantity.UnitSystem.SHOP;
    private static final Quantity.UnitSystem MILLIMETRES = Quantity.UnitSystem.METRIC;

    private TextTable table(List<Wear.Fit> fits) {
        TextTable table = new TextTable(List.of(
                "fit",
                "new mm",
                "as is mm",
                "shop limit mm",
                "gone at mm",
                "gone at in",
                "wear left thou",
                "first limit gone"));
        for (Wear.Fit fit : fits) {
            WearSize dimension = fit.dimension();
            double gone = fit.size().orElseThrow();
            table.add(List.of(
                    dimension.name(),
                    size(dimension, MILLIMETRES, dimension.fresh()),
                    size(dimension, MILLIMETRES, dimension.value()),
                    dimension.limit().isPresent()
                            ? size(dimension, MILLIMETRES, dimension.limit().getAsDouble())
                            : "-",
                    size(dimension, MILLIMETRES, gone),
                    size(dimension, INCHES, gone),
                    dimension.kind() == WearSize.Kind.AREA
                            ? "-"
                            : String.format(Locale.ROOT, "%.2f", Math.abs(gone - dimension.value()) / 25.4e-6),
                    limit(fit.gone().get(0))));
        }
        return table;
    }

    private static String size(WearSize dimension, Quantity.UnitSystem units, double value) {
        return dimension.kind() == WearSize.Kind.AREA
                ? Quantity.AREA.with(units, value)
                : Quantity.SIZE.number(units, value);
    }

    private static String limit(Judgement.Key key) {
        return MarginWords.label(key.kind()) + " (" + key.part() + "), " + key.duty();
    }

    private static String limits(List<Judgement.Key> keys) {
        return keys.stream().map(WearCommand::limit).collect(Collectors.joining("; "));
    }

    /** How far the fits of this build are worn, so that what is said of all together, from new, is not taken for what is left. */
    private static String already(Adjustable chosen) {
        List<WearSize> wearing = Wear.fits(chosen);
        List<WearSize> worn = wearing.stream().filter(WearSize::worn).toList();
        if (worn.isEmpty()) {
            return "";
        }
        double[] shares = worn.stream()
                .filter(dimension -> dimension.limit().isPresent())
                .mapToDouble(dimension -> 100 * (dimension.value() - dimension.fresh()) / dimension.allowance())
                .sorted()
                .toArray();
        long past = Arrays.stream(shares).filter(share -> share > 100).count();
        String ways = shares.length == 0
                ? ""
                : String.format(
                        Locale.ROOT,
                        ", %.0f to %.0f %% of the way from new to their written limits (%d past theirs)",
                        shares[0],
                        shares[shares.length - 1],
                        past);
        return worn.size() + " of its " + wearing.size() + " fits are worn already" + ways
                + ". Counted from new, not from there, ";
    }

    private static String together(Wear wear) {
        if (wear.together().isEmpty()) {
            return "no fit has a wear limit written, so nothing can be said of all together.";
        }
        Wear.Together all = wear.together().get();
        String failing = all.already().isEmpty()
                ? ""
                : " Even with all fits new these fail and are not counted: " + limits(all.already()) + ".";
        if (all.share().isEmpty()) {
            return String.format(
                            Locale.ROOT,
                            "all fits together, wearing in proportion, take no limit away up to %.0f %% of their written limits.",
                            100 * all.searched())
                    + failing;
        }
        return String.format(
                        Locale.ROOT,
                        "all fits together may wear to %.0f %% of the way from new to their written limits; then %s is gone.",
                        100 * all.share().orElseThrow(),
                        limit(all.gone().get(0)))
                + failing;
    }

    private static String csv(Wear wear) {
        TextTable table = new TextTable(List.of(
                "fit", "new m", "as is m", "shop limit m", "gone at m", "first limit gone", "duty", "searched to m"));
        for (Wear.Fit fit : wear.fits()) {
            WearSize dimension = fit.dimension();
            table.add(List.of(
                    dimension.name(),
                    String.valueOf(dimension.fresh()),
                    String.valueOf(dimension.value()),
                    dimension.limit().isPresent()
                            ? String.valueOf(dimension.limit().getAsDouble())
                            : "-",
                    fit.size().map(String::valueOf).orElse("none"),
                    fit.gone().isEmpty()
                            ? "-"
                            : fit.gone().get(0).kind().word() + " "
                                    + fit.gone().get(0).part(),
                    fit.gone().isEmpty() ? "-" : fit.gone().get(0).duty(),
                    String.valueOf(fit.searched())));
        }
        return table.csv();
    }

    private static ObjectNode json(Adjustable chosen, Wear wear) {
        ObjectNode root = StateJson.object();
        root.put("circuit", chosen.unit().circuit());
        ObjectNode build = root.putArray("builds").addObject();
        build.put("build", chosen.unit().build());
        ArrayNode already = build.putArray("fail_already");
        wear.already().forEach(key -> already.add(json(key)));
        ArrayNode fits = build.putArray("fits");
        for (Wear.Fit fit : wear.fits()) {
            ObjectNode node = fits.addObject();
            node.put("fit", fit.dimension().name());
            node.put("unit", fit.dimension().kind() == WearSize.Kind.AREA ? "m2" : "m");
            node.put("new", fit.dimension().fresh());
            node.put("as_is", fit.dimension().value());
            put(node, "shop_limit", fit.dimension().limit());
            node.put("gone_at", fit.size().orElse(null));
            node.put("searched_to", fit.searched());
            ArrayNode gone = node.putArray("first_gone");
            fit.gone().forEach(key -> gone.add(json(key)));
        }
        wear.together().ifPresent(all -> {
            ObjectNode node = build.putObject("together");
            node.put("share_of_written_limits", all.share().orElse(null));
            ArrayNode gone = node.putArray("first_gone");
            all.gone().forEach(key -> gone.add(json(key)));
            ArrayNode failing = node.putArray("fail_when_new");
            all.already().forEach(key -> failing.add(json(key)));
        });
        return root;
    }

    private static void put(ObjectNode node, String key, OptionalDouble value) {
        if (value.isPresent()) {
            node.put(key, value.getAsDouble());
        } else {
            node.putNull(key);
        }
    }

    private static ObjectNode json(Judgement.Key key) {
        return StateJson.object()
                .put("duty", key.duty())
                .put("margin", key.kind().word())
                .put("part", key.part());
    }
}
