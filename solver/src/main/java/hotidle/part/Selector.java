package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Hole;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import hotidle.oil.OilAt;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Manual and shift valves as a table: which ports are joined in which range. A port that is to be empty is joined to the sump.
 * Where the bore of its valve is given, a passage that is shut leaks past the land that shuts it, as an annular gap; law and source in
 * {@link Slot}. Otherwise what leaks past the valves is not counted here, and each bore has its own gap.
 *
 * @param ports names of the ports
 * @param links passages that the valves open
 * @param land  that shuts a passage; empty where it is taken as tight
 */
public record Selector(List<String> ports, List<Connection> links, Optional<Land> land) implements Part {

    /** The key of its fit. */
    private static final String CLEARANCE = "diametral clearance";

    /** Tight in its bore. */
    public Selector(List<String> ports, List<Connection> links) {
        this(ports, links, Optional.empty());
    }

    /**
     * What shuts a passage: alike for all of them.
     *
     * @param fit          bore and valve, diametral
     * @param length       of the land between two ports [m]
     * @param eccentricity [-], 0 concentric to 1 touching the wall
     */
    public record Land(Fit fit, double length, double eccentricity) {
        public Land {
            Check.positive("length of a selector's land", length);
            Check.within("eccentricity", eccentricity, 0, 1);
        }

        private SeriesLoss loss(double temperature) {
            return Slot.annular(fit.inner(), fit.gap(temperature) / 2, length, eccentricity);
        }
    }

    /** A drilled passage flows full: Cd 0.7 (common practice). */
    private static final double DISCHARGE = 0.7;

    /**
     * A passage between two ports, open in some ranges.
     *
     * @param name     what the passage is called
     * @param from     number of one port
     * @param to       number of the other
     * @param diameter of the narrowest hole [m]
     * @param ranges   in which it is open
     */
    public record Connection(String name, int from, int to, double diameter, Set<String> ranges) {
        public Connection {
            ranges = Set.copyOf(ranges);
            Check.positive("diameter of a selector's passage", diameter);
        }

        private SeriesLoss loss() {
            return Hole.loss(diameter, 0, DISCHARGE);
        }
    }

    public Selector {
        ports = List.copyOf(ports);
        links = List.copyOf(links);
    }

    @Override
    public Map<String, Channel> channels() {
        Map<String, Channel> channels = new LinkedHashMap<>();
        links.forEach(link -> channels.put(link.name(), Channel.hole(link.diameter(), 1)));
        return channels;
    }

    @Override
    public Map<String, Fit> fits() {
        return land.map(shut -> Map.of(CLEARANCE, shut.fit())).orElse(Map.of());
    }

    @Override
    public Form form() {
        return new Form(ports, List.of(), List.of());
    }

    @Override
    public Law law(Setting setting) {
        OilAt oil = setting.oil();
        List<Connection> open = new ArrayList<>();
        List<SeriesLoss> losses = new ArrayList<>();
        for (Connection link : links) {
            Optional<SeriesLoss> loss = link.ranges().contains(setting.range())
                    ? Optional.of(link.loss())
                    : land.map(shut -> shut.loss(oil.temperature()));
            loss.ifPresent(way -> {
                open.add(link);
                losses.add(way);
            });
        }
        return new Law() {
            @Override
            public void evaluate(Reading in, Stamp out) {
                for (int i = 0; i < losses.size(); i++) {
                    out.pass(in, open.get(i).from(), open.get(i).to(), losses.get(i), oil);
                }
            }

            @Override
            public List<Stream> streams(Reading in) {
                List<Stream> streams = new ArrayList<>();
                for (int i = 0; i < losses.size(); i++) {
                    Connection link = open.get(i);
                    streams.add(Stream.through(link.name(), in, link.from(), link.to(), losses.get(i), oil));
                }
                return streams;
            }
        };
    }
}
