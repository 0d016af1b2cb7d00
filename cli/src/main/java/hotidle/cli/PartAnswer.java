package hotidle.cli;

import hotidle.answer.format.Digits;
import hotidle.circuits.single.LibraryMaterials;
import hotidle.circuits.single.OnePart;
import hotidle.circuits.single.ReadPart;
import hotidle.circuits.text.Problem;
import hotidle.law.Channel;
import hotidle.network.Conditions;
import hotidle.oil.OilAt;
import hotidle.part.Bushing;
import hotidle.part.Fit;
import hotidle.part.Form;
import hotidle.part.Measure;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.study.SinglePart;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a part on its own does.
 *
 * @param part    the part
 * @param duty    what it was put under
 * @param outcome its state, or why there is none
 * @param read    warnings of reading it
 */
record PartAnswer(OnePart part, PartDuty duty, Outcome outcome, List<Problem> read) {

    static PartAnswer of(ReadPart read, PartDuty.Options options, LibraryMaterials stock) {
        OnePart part = read.part().orElseThrow();
        PartDuty duty = PartDuty.of(options, part, stock);
        Conditions conditions = part.conditions(duty.oil(), OilAt.STANDARD_ATMOSPHERE, duty.temperature());
        Outcome outcome = SinglePart.run(
                part.network(duty.pressures()), conditions, part.placed().name(), duty.holds());
        return new PartAnswer(part, duty, outcome, read.problems());
    }

    /**
     * One path of oil.
     *
     * @param name     empty where there is one only
     * @param flow     volume flow [m³/s]
     * @param reynolds Reynolds number, NaN where the path has no geometry
     * @param regime   in words, empty where the path has no geometry
     */
    record Path(String name, double flow, double reynolds, String regime) {}

    /** The paths of oil through the part. */
    List<Path> paths() {
        Solution state = outcome.state().orElseThrow();
        Map<String, Channel> channels = part.placed().part().channels();
        List<Path> paths = new ArrayList<>();
        for (Solution.PartStream stream : state.streams()) {
            if (stream.part().equals(part.placed().name())) {
                Optional<Channel> channel = Optional.ofNullable(channels.get(stream.name()));
                double mean = (state.pressure(stream.from()) + state.pressure(stream.to())) / 2;
                double re = channel.map(
                                one -> one.reynolds(stream.mass(), duty.oilAt().viscosity(mean)))
                        .orElse(Double.NaN);
                String regime = channel.map(one -> one.regime(re).name().toLowerCase(Locale.ROOT))
                        .orElse("");
                paths.add(new Path(stream.name(), stream.volume(), re, regime));
            }
        }
        return paths;
    }

    /** Net flow into the part at its first port [m³/s]; NaN where it passes no oil. */
    double flow() {
        if (paths().isEmpty()) {
            return Double.NaN;
        }
        String first = part.ports().get(0);
        double flow = 0;
        for (Solution.PartStream stream : outcome.state().orElseThrow().streams()) {
            if (stream.part().equals(part.placed().name()) && !stream.from().equals(stream.to())) {
                flow += stream.from().equals(first) ? stream.volume() : 0;
                flow -= stream.to().equals(first) ? stream.volume() : 0;
            }
        }
        return flow;
    }

    /** The path with the highest Reynolds number. */
    Optional<Path> swiftest() {
        return paths().stream()
                .filter(path -> Double.isFinite(path.reynolds()))
                .reduce((one, other) -> other.reynolds() > one.reynolds() ? other : one);
    }

    /** Numbers in SI by their name with the unit at its end, in the order of reading. */
    Map<String, Double> numbers() {
        Solution state = outcome.state().orElseThrow();
        Map<String, Double> numbers = new LinkedHashMap<>();
        List<String> ports = part.ports();
        if (ports.size() == 2) {
            numbers.put("pressure_drop_pa", state.pressure(ports.get(0)) - state.pressure(ports.get(1)));
        }
        state.measures()
                .getOrDefault(part.placed().name(), Map.of())
                .forEach((measure, value) -> value.ifPresent(known -> numbers.put(named(measure), known)));
        state.states()
                .forEach((owner, own) -> own.forEach((name, value) -> {
                    String known = name.replace('-', '_');
                    if (Stream.of("", "_m", "_k").noneMatch(unit -> numbers.containsKey(known + unit))) {
                        numbers.put(name, value);
                    }
                }));
        duty.holds().forEach(numbers::putIfAbsent);
        if (ports.size() == 2 && !paths().isEmpty() && !numbers.containsKey("metal_contact")) {
            numbers.putIfAbsent("power_w", numbers.get("pressure_drop_pa") * flow());
        }
        fits().forEach((name, fit) -> {
            String key = name.replaceAll("[^a-z0-9]+", "_");
            numbers.put(key + "_as_measured_m", fit.outer() - fit.inner());
            numbers.put(key + "_warm_m", fit.gap(duty.temperature()));
        });
        numbers.remove("position", numbers.get("position_m"));
        return numbers;
    }

    /** The same; none where there is no state. */
    Map<String, Double> numbersIfSolved() {
        return outcome.state().isPresent() ? numbers() : Map.of();
    }

    /** A part on its own has one film and one power. */
    private static String named(Measure measure) {
        if (measure.equals(Bushing.LEAST_FILM)) {
            return "film_m";
        }
        return measure.equals(Bushing.FRICTION_POWER) ? "power_w" : measure.key();
    }

    private Map<String, Fit> fits() {
        return part.placed().part().fits();
    }

    /** What to be careful about. */
    List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        read.forEach(
                problem -> warnings.add(problem.message() + (problem.why().isEmpty() ? "" : "; " + problem.why())));
        fits().forEach((name, fit) -> {
            if (fit.gap(duty.temperature()) <= 0) {
                warnings.add("no " + name + " is left at this temperature: the pieces would bind");
            }
        });
        if (outcome.state().isPresent()) {
            paths().forEach(path -> regime(path).ifPresent(warnings::add));
            states(warnings);
            film(warnings);
        }
        return warnings;
    }

    private Optional<String> regime(Path path) {
        Channel channel = part.placed().part().channels().get(path.name());
        boolean slot = channel != null && channel.form() == Channel.Form.SLOT;
        return slot && path.reynolds() > channel.form().laminar()
                ? Optional.of("Reynolds number " + Digits.four(path.reynolds())
                        + (path.name().isEmpty() ? "" : " at " + path.name()) + " is above "
                        + Digits.four(channel.form().laminar())
                        + ": the law of a gap holds for laminar flow, the true flow is less")
                : Optional.empty();
    }

    private void states(List<String> warnings) {
        Map<String, Double> own = outcome.state()
                .orElseThrow()
                .states()
                .getOrDefault(part.placed().name(), Map.of());
        for (Form.Unknown state : part.placed().part().form().states()) {
            double at = own.getOrDefault(state.name(), Double.NaN);
            boolean moves = state.high() > state.low() && !duty.holds().containsKey(state.name());
            if (moves && (state.name().equals("position") || state.name().equals("opening"))) {
                if (at <= state.low()) {
                    warnings.add(state.name() + " is at its lower stop: it does not regulate here");
                } else if (at >= state.high()) {
                    warnings.add(state.name() + " is at its upper stop: it does not regulate here");
                }
            }
            if (state.name().equals("filling") && at < 1) {
                warnings.add("the inlet is starved: its pressure is below that at which air is released");
            }
        }
    }

    private void film(List<String> warnings) {
        Map<String, Double> numbers = numbers();
        if (numbers.getOrDefault("metal_contact", 0.0) > 0) {
            warnings.add("metal contact: the film does not carry this load, its thickness is not known");
        }
        if (numbers.getOrDefault("film_m", Double.NaN) < numbers.getOrDefault("permissible_film_m", Double.NaN)) {
            warnings.add("the film is thinner than permissible (film-factor times roughness)");
        }
        if (numbers.getOrDefault("unit_load_pa", Double.NaN)
                > numbers.getOrDefault("permissible_load_pa", Double.NaN)) {
            warnings.add("the unit load is above what the bushing's material permits");
        }
        double clearance = numbers.getOrDefault("radial_clearance_m", Double.NaN);
        double radius =
                fits().values().stream().mapToDouble(Fit::inner).findFirst().orElse(Double.NaN) / 2;
        double re = duty.oilAt().liquidDensity()
                * 2
                * Math.PI
                * radius
                * part.speed()
                * clearance
                / duty.oilAt().viscosity();
        if (re > Channel.vortices(radius, clearance)) {
            warnings.add("the film's Reynolds number " + Digits.four(re) + " is above "
                    + Digits.four(Channel.vortices(radius, clearance))
                    + ": vortices, the film's law holds for laminar flow");
        }
    }
}
