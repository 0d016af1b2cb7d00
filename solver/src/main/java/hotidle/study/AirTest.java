package hotidle.study;

import hotidle.law.AirLeak;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a stand's reading says of a land: its oil leak, which needs neither clearance nor eccentricity, and the bore that leaks as much.
 *
 * @param freeAir      that passes, counted at ambient pressure [m³/s]
 * @param shape        what is the gap's own, {@link AirLeak} [m³]
 * @param concentric   radial clearance, were the valve in the middle of the bore [m]
 * @param asInTheFile  radial clearance at the eccentricity that the circuit file gives: with it the part leaks as it was tested [m]
 * @param doubts       why less may be known than this says
 */
public record AirTest(double freeAir, double shape, double concentric, double asInTheFile, List<AirDoubt> doubts) {

    /** Why an air test may tell less than it seems to. */
    public enum AirDoubt {
        /** The gap is so narrow that air slips along its walls: the leak comes out too large. */
        SLIPS("slips"),
        /** The air runs so fast at the end of the gap that its own inertia counts: the leak comes out too small. */
        CHOKES("chokes"),
        /** The flow may be turbulent: the leak comes out too small. */
        TURBULENT("turbulent");

        private final String word;

        AirDoubt(String word) {
            this.word = word;
        }

        /** The word that users read. */
        public String word() {
            return word;
        }
    }

    /**
     * A land that is tested.
     *
     * @param diameter     of the valve [m]
     * @param length       of the land [m]
     * @param eccentricity that its part has [-]
     */
    public record TestedLand(double diameter, double length, double eccentricity) {}

    public AirTest {
        doubts = List.copyOf(doubts);
    }

    /** What a reading [Pa, absolute] says of a land; empty where it lies beyond the stand's calibration. */
    public static Optional<AirTest> of(AirStand stand, double reading, TestedLand land) {
        OptionalDouble air = stand.freeAir(reading);
        if (air.isEmpty()) {
            return Optional.empty();
        }
        double high = Math.max(reading, stand.ambient());
        double low = Math.min(reading, stand.ambient());
        double room = stand.temperature();
        double shape = AirLeak.shape(air.getAsDouble(), high, low, stand.ambient(), room);
        double concentric = AirLeak.clearance(shape, land.diameter(), land.length(), 0);
        List<AirDoubt> doubts = new ArrayList<>();
        if (concentric < AirLeak.SLIPS) {
            doubts.add(AirDoubt.SLIPS);
        }
        if (concentric > 0
                && AirLeak.mach(air.getAsDouble(), stand.ambient(), low, land.diameter(), concentric, room)
                        > AirLeak.SLOW) {
            doubts.add(AirDoubt.CHOKES);
        }
        if (AirLeak.reynolds(air.getAsDouble(), stand.ambient(), land.diameter(), room) > AirLeak.LAMINAR) {
            doubts.add(AirDoubt.TURBULENT);
        }
        return Optional.of(new AirTest(
                air.getAsDouble(),
                shape,
                concentric,
                AirLeak.clearance(shape, land.diameter(), land.length(), land.eccentricity()),
                doubts));
    }

    /** The oil that leaks through it [m³/s] under a drop [Pa] at a viscosity [Pa·s]. */
    public double oil(double drop, double viscosity) {
        return AirLeak.oil(shape, drop, viscosity);
    }

    /**
     * The same with the gap grown as bore and valve warm up, at the eccentricity of the file.
     *
     * @param growth of the diametral clearance since the test [m]
     */
    public double oilWarm(double drop, double viscosity, double growth) {
        double grown = Math.max(asInTheFile + growth / 2, 0) / asInTheFile;
        return asInTheFile == 0 ? 0 : oil(drop, viscosity) * grown * grown * grown;
    }
}
