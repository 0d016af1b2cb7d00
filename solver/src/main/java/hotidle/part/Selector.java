package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Hole;
import hotidle.law.SeriesLoss;
import hotidle.oil.OilAt;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Manual and shift valves as a table: which ports are joined in which range. A port that is to be empty is joined to the sump.
 * What leaks past the valves is not counted here: each bore has its own gap.
 *
 * @param ports names of the ports
 * @param links passages that the valves open
 */
public record Selector(List<String> ports, List<Connection> links) implements Part {

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
    public Form form() {
        return new Form(ports, List.of(), List.of());
    }

    @Override
    public Law law(Setting setting) {
        List<Connection> open = links.stream()
                .filter(link -> link.ranges().contains(setting.range()))
                .toList();
        List<SeriesLoss> losses = open.stream().map(Connection::loss).toList();
        OilAt oil = setting.oil();
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
