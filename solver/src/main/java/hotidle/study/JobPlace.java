package hotidle.study;

import hotidle.assess.Roles;
import hotidle.network.Group;
import hotidle.network.Placed;
import hotidle.part.Clutch;
import hotidle.part.FlatGap;
import hotidle.part.PumpChamber;
import hotidle.part.SealingRing;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Job;
import hotidle.transmission.WearSize;
import hotidle.transmission.Workshop;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a shop restores in one go, where the file names no jobs: worn fits, by kind and place (our grouping). */
public enum JobPlace {
    PUMP("pump"),
    HUB("hub and bushing"),
    REGULATOR("regulator bore"),
    VALVE_BODY("valve-body bores"),
    PLATE("plate and faces"),
    RINGS("rings"),
    SEALS("seals"),
    CONVERTER("converter side"),
    OTHER("other fits");

    private final String label;

    JobPlace(String label) {
        this.label = label;
    }

    /** The name of the job. */
    public String label() {
        return label;
    }

    /** Whether a job by place is called so, in whatever build. */
    public static boolean named(String name) {
        return Stream.of(values()).anyMatch(place -> place.label.equals(name));
    }

    /** Where a part belongs. */
    static JobPlace of(Placed placed, Optional<String> regulator) {
        if (placed.part() instanceof PumpChamber || placed.group() == Group.PUMP) {
            return PUMP;
        } else if (placed.group() == Group.HUB) {
            return HUB;
        } else if (regulator.filter(placed.name()::equals).isPresent()) {
            return REGULATOR;
        } else if (placed.part() instanceof SealingRing) {
            return RINGS;
        } else if (placed.part() instanceof Clutch) {
            return SEALS;
        } else if (placed.group() == Group.CONVERTER) {
            return CONVERTER;
        } else if (placed.part() instanceof FlatGap) {
            return PLATE;
        }
        return placed.group() == Group.VALVE_BODY ? VALVE_BODY : OTHER;
    }

    /** A build and the jobs that bring its worn fits back to new; those with nothing to do are left out. */
    public static Workshop workshop(Adjustable build) {
        Optional<String> regulator = Roles.of(build.unit()).regulating().map(Placed::name);
        Map<JobPlace, Map<String, Double>> fresh = new EnumMap<>(JobPlace.class);
        for (WearSize size : build.dimensions()) {
            if (size.worn()) {
                Placed placed = build.unit().network().part(size.part()).orElseThrow();
                fresh.computeIfAbsent(of(placed, regulator), place -> new LinkedHashMap<>())
                        .put(size.name(), size.fresh());
            }
        }
        Map<Job, Map<String, Double>> sizes = new LinkedHashMap<>();
        fresh.forEach((place, some) -> sizes.put(Job.of(place.label(), parts(some)), some));
        return new Workshop(build.unit(), List.copyOf(sizes.keySet()), new Renewal(build, sizes));
    }

    /** Brings sizes back to new. */
    private record Renewal(Adjustable build, Map<Job, Map<String, Double>> sizes) implements Workshop.Rework {

        @Override
        public Adjustable after(List<Job> done) {
            return build.madeTo(all(done));
        }

        private Map<String, Double> all(List<Job> done) {
            Map<String, Double> all = new LinkedHashMap<>();
            done.forEach(job -> all.putAll(sizes.get(job)));
            return all;
        }
    }

    /** What it brings back to new, for example "primary, secondary, pump-cover". */
    private static String parts(Map<String, Double> sizes) {
        return sizes.keySet().stream()
                .map(name -> name.substring(0, name.indexOf('.')))
                .distinct()
                .collect(Collectors.joining(", "));
    }
}
