package hotidle.geartrain;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A planetary set: wheels on members, planets on one carrier, and which of them mesh.
 *
 * @param name    for example front
 * @param carrier the member that carries the planets
 * @param wheels  suns, rings and planets
 * @param meshes  all pairs in mesh
 */
public record PlanetarySet(String name, String carrier, List<Wheel> wheels, List<Mesh> meshes) {

    private static final String SUN = "sun";
    private static final String SHORT_SUN = "short-sun";
    private static final String RING = "ring";
    private static final String PLANET = "planet";
    private static final String SHORT_PLANET = "short-planet";

    public PlanetarySet {
        wheels = List.copyOf(wheels);
        meshes = List.copyOf(meshes);
        for (Mesh mesh : meshes) {
            if (wheel(wheels, mesh.first()).isEmpty()
                    || wheel(wheels, mesh.second()).isEmpty()) {
                throw new IllegalArgumentException(name + " has no wheels " + mesh.first() + " and " + mesh.second());
            }
        }
    }

    /**
     * A wheel with its member.
     *
     * @param member name of the member
     * @param teeth  number of teeth
     */
    public record Central(String member, int teeth) {}

    /** Sun, ring and one row of planets; efficiency is that of each mesh. */
    public static PlanetarySet single(String name, Central sun, Central ring, String carrier, double efficiency) {
        double planet = (ring.teeth - sun.teeth) / 2.0;
        return new PlanetarySet(
                name,
                carrier,
                List.of(
                        Wheel.sun(SUN, sun.teeth, sun.member),
                        Wheel.planet(PLANET, planet),
                        Wheel.ring(RING, ring.teeth, ring.member)),
                List.of(new Mesh(SUN, PLANET, efficiency), new Mesh(PLANET, RING, efficiency)));
    }

    /** Sun, ring and pairs of planets, the one on the sun, the other on the ring; efficiency is that of each mesh. */
    public static PlanetarySet paired(String name, Central sun, Central ring, String carrier, double efficiency) {
        double planet = (ring.teeth - sun.teeth) / 4.0;
        return new PlanetarySet(
                name,
                carrier,
                List.of(
                        Wheel.sun(SUN, sun.teeth, sun.member),
                        Wheel.planet(SHORT_PLANET, planet),
                        Wheel.planet(PLANET, planet),
                        Wheel.ring(RING, ring.teeth, ring.member)),
                List.of(
                        new Mesh(SUN, SHORT_PLANET, efficiency),
                        new Mesh(SHORT_PLANET, PLANET, efficiency),
                        new Mesh(PLANET, RING, efficiency)));
    }

    /**
     * A set after Ravigneaux: long planets between one sun and the ring, short ones between the other sun and the long ones.
     *
     * @param name       of the set
     * @param sun        in mesh with the long planets
     * @param shortSun   in mesh with the short ones
     * @param ring       in mesh with the long ones
     * @param carrier    of both
     * @param efficiency of each mesh [-]
     */
    public static PlanetarySet ravigneaux(
            String name, Central sun, Central shortSun, Central ring, String carrier, double efficiency) {
        double planet = (ring.teeth - sun.teeth) / 2.0;
        return new PlanetarySet(
                name,
                carrier,
                List.of(
                        Wheel.sun(SUN, sun.teeth, sun.member),
                        Wheel.sun(SHORT_SUN, shortSun.teeth, shortSun.member),
                        Wheel.planet(PLANET, planet),
                        Wheel.planet(SHORT_PLANET, planet),
                        Wheel.ring(RING, ring.teeth, ring.member)),
                List.of(
                        new Mesh(SUN, PLANET, efficiency),
                        new Mesh(SHORT_SUN, SHORT_PLANET, efficiency),
                        new Mesh(SHORT_PLANET, PLANET, efficiency),
                        new Mesh(PLANET, RING, efficiency)));
    }

    /** The wheel of a name. */
    public Optional<Wheel> wheel(String wheel) {
        return wheel(wheels, wheel);
    }

    private static Optional<Wheel> wheel(List<Wheel> wheels, String name) {
        return wheels.stream().filter(one -> one.name().equals(name)).findFirst();
    }

    /** The members that carry a sun or a ring. */
    List<String> centralMembers() {
        return wheels.stream().flatMap(wheel -> wheel.member().stream()).toList();
    }

    /** Product of the efficiencies of all meshes of a simple set with its carrier held [-]; empty for another set. */
    public OptionalDouble stationaryEfficiency() {
        return centralMembers().size() == 2
                ? OptionalDouble.of(
                        meshes.stream().mapToDouble(Mesh::efficiency).reduce(1, (a, b) -> a * b))
                : OptionalDouble.empty();
    }
}
