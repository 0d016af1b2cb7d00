package hotidle.assess;

import hotidle.law.Channel;
import hotidle.network.Placed;
import hotidle.oil.OilAt;
import hotidle.result.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The oil that passes one part.
 *
 * @param paths each on its own
 * @param net   into the part at its first port [m³/s]; empty where it passes no oil
 */
public record PartFlow(List<PathFlow> paths, OptionalDouble net) {

    /**
     * One path.
     *
     * @param name     empty where there is one only
     * @param flow     volume flow [m³/s]
     * @param reynolds Reynolds number; empty where the path has no geometry
     * @param regime   how the oil flows there
     */
    public record PathFlow(String name, double flow, OptionalDouble reynolds, Optional<Channel.Regime> regime) {}

    public PartFlow {
        paths = List.copyOf(paths);
    }

    /** The flow through a part, of oil at its temperature. */
    public static PartFlow of(Placed placed, OilAt oil, Solution state) {
        Map<String, Channel> channels = placed.part().channels();
        String first = placed.nodes().get(0);
        List<PathFlow> paths = new ArrayList<>();
        double net = 0;
        for (Solution.PartStream stream : state.streams()) {
            if (stream.part().equals(placed.name())) {
                paths.add(path(stream, Optional.ofNullable(channels.get(stream.name())), oil, state));
                if (!stream.from().equals(stream.to())) {
                    net += stream.from().equals(first) ? stream.volume() : 0;
                    net -= stream.to().equals(first) ? stream.volume() : 0;
                }
            }
        }
        return new PartFlow(paths, paths.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(net));
    }

    private static PathFlow path(Solution.PartStream stream, Optional<Channel> channel, OilAt oil, Solution state) {
        if (channel.isEmpty()) {
            return new PathFlow(stream.name(), stream.volume(), OptionalDouble.empty(), Optional.empty());
        }
        double mean = (state.pressure(stream.from()) + state.pressure(stream.to())) / 2;
        double reynolds = channel.get().reynolds(stream.mass(), oil.viscosity(mean));
        return new PathFlow(
                stream.name(),
                stream.volume(),
                OptionalDouble.of(reynolds),
                Optional.of(channel.get().regime(reynolds)));
    }

    /** The path with the highest Reynolds number. */
    public Optional<PathFlow> swiftest() {
        return paths.stream()
                .filter(path -> path.reynolds().isPresent())
                .reduce((one, other) ->
                        other.reynolds().getAsDouble() > one.reynolds().getAsDouble() ? other : one);
    }
}
