package hotidle.circuits.text;

import static java.util.Map.entry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The units that users write, by dimension, each with its factor to SI. The first unit of a dimension is the one shown in
 * examples.
 *
 * <p>Inch 25.4 mm, pound-force 4.4482216152605 N, US gallon 3.785411784 L, pound 0.45359237 kg and so on are exact by definition: NIST Special
 * Publication 811 (2008), Appendix B (from memory); the inch of mercury there is the conventional one. Sums are done in decimals, so that 14.030 mm is 0.01403 m to the last digit.
 */
final class UnitTable {

    /**
     * A unit: SI value = (number + offset)·times/by.
     *
     * @param word   as written, for example psi
     * @param times  numerator
     * @param by     denominator
     * @param offset added to the number first; zero but for temperatures
     */
    record Unit(String word, BigDecimal times, BigDecimal by, BigDecimal offset) {
        private static Unit of(String word, String times) {
            return new Unit(word, new BigDecimal(times), BigDecimal.ONE, BigDecimal.ZERO);
        }

        private static Unit of(String word, String times, String by) {
            return new Unit(word, new BigDecimal(times), new BigDecimal(by), BigDecimal.ZERO);
        }

        double toSi(BigDecimal number) {
            BigDecimal product = number.add(offset).multiply(times);
            return by.compareTo(BigDecimal.ONE) == 0
                    ? product.doubleValue()
                    : product.divide(by, MathContext.DECIMAL128).doubleValue();
        }
    }

    private static final Map<Dimension, List<Unit>> TABLE = Map.ofEntries(
            entry(Dimension.RATIO, List.of(Unit.of("", "1"), Unit.of("%", "0.01"))),
            entry(
                    Dimension.LENGTH,
                    List.of(
                            Unit.of("mm", "0.001"),
                            Unit.of("um", "0.000001"),
                            Unit.of("in", "0.0254"),
                            Unit.of("thou", "0.0000254"),
                            Unit.of("cm", "0.01"),
                            Unit.of("m", "1"))),
            entry(
                    Dimension.AREA,
                    List.of(
                            Unit.of("mm2", "1e-6"),
                            Unit.of("cm2", "1e-4"),
                            Unit.of("in2", "0.00064516"),
                            Unit.of("m2", "1"))),
            entry(
                    Dimension.PRESSURE,
                    List.of(
                            Unit.of("psi", "4.4482216152605", "0.00064516"),
                            Unit.of("bar", "1e5"),
                            Unit.of("kPa", "1e3"),
                            Unit.of("MPa", "1e6"),
                            Unit.of("kgf/cm2", "98066.5"),
                            Unit.of("inHg", "3386.389"),
                            Unit.of("Pa", "1"))),
            entry(
                    Dimension.TEMPERATURE,
                    List.of(
                            new Unit("degC", BigDecimal.ONE, BigDecimal.ONE, new BigDecimal("273.15")),
                            new Unit("degF", new BigDecimal(5), new BigDecimal(9), new BigDecimal("459.67")),
                            Unit.of("K", "1"))),
            entry(
                    Dimension.FLOW,
                    List.of(
                            Unit.of("L/min", "0.001", "60"),
                            Unit.of("mL/min", "0.000001", "60"),
                            Unit.of("gpm", "0.003785411784", "60"),
                            Unit.of("cm3/s", "1e-6"),
                            Unit.of("m3/s", "1"))),
            entry(Dimension.SPEED, List.of(Unit.of("rpm", "1", "60"), Unit.of("rev/s", "1"))),
            entry(
                    Dimension.DISPLACEMENT,
                    List.of(Unit.of("cm3/rev", "1e-6"), Unit.of("in3/rev", "0.000016387064"), Unit.of("m3/rev", "1"))),
            entry(
                    Dimension.TORQUE,
                    List.of(
                            Unit.of("N.m", "1"),
                            Unit.of("lbf.ft", "1.3558179483314004"),
                            Unit.of("lbf.in", "0.11298482902761670"))),
            entry(
                    Dimension.FORCE,
                    List.of(
                            Unit.of("N", "1"),
                            Unit.of("lbf", "4.4482216152605"),
                            Unit.of("kN", "1000"),
                            Unit.of("kgf", "9.80665"))),
            entry(
                    Dimension.SPRING_RATE,
                    List.of(
                            Unit.of("N/mm", "1000"),
                            Unit.of("lbf/in", "4.4482216152605", "0.0254"),
                            Unit.of("kgf/mm", "9806.65"),
                            Unit.of("N/m", "1"))),
            entry(
                    Dimension.ANGLE,
                    List.of(
                            Unit.of("deg", "3.14159265358979323846264338327950288", "180"),
                            Unit.of("rad", "1"),
                            Unit.of("mm/m", "0.001"))),
            entry(
                    Dimension.KINEMATIC_VISCOSITY,
                    List.of(Unit.of("mm2/s", "1e-6"), Unit.of("cSt", "1e-6"), Unit.of("m2/s", "1"))),
            entry(Dimension.VISCOSITY, List.of(Unit.of("mPa.s", "1e-3"), Unit.of("cP", "1e-3"), Unit.of("Pa.s", "1"))),
            entry(Dimension.DENSITY, List.of(Unit.of("kg/m3", "1"), Unit.of("g/cm3", "1000"))),
            entry(Dimension.DENSITY_SLOPE, List.of(Unit.of("kg/m3/K", "1"))),
            entry(
                    Dimension.SPECIFIC_HEAT,
                    List.of(Unit.of("kJ/kg/K", "1000"), Unit.of("J/kg/K", "1"), Unit.of("Btu/lb/degF", "4186.8"))),
            entry(Dimension.CONDUCTIVITY, List.of(Unit.of("W/m/K", "1"))),
            entry(Dimension.EXPANSION, List.of(Unit.of("1/K", "1"), Unit.of("um/m/K", "1e-6"))),
            entry(
                    Dimension.PRESSURE_COEFFICIENT,
                    List.of(
                            Unit.of("1/GPa", "1e-9"),
                            Unit.of("1/MPa", "1e-6"),
                            Unit.of("1/bar", "1e-5"),
                            Unit.of("1/Pa", "1"))),
            entry(
                    Dimension.OPENING,
                    List.of(
                            Unit.of("um/bar", "1e-11"),
                            Unit.of("um/MPa", "1e-12"),
                            Unit.of("mm/bar", "1e-8"),
                            Unit.of("in/psi", "0.000016387064", "4.4482216152605"),
                            Unit.of("m/Pa", "1"))),
            entry(
                    Dimension.POWER,
                    List.of(
                            Unit.of("W", "1"),
                            Unit.of("kW", "1000"),
                            Unit.of("hp", "745.69987158227022"),
                            Unit.of("Btu/min", "1055.05585262", "60"))),
            entry(Dimension.MASS, List.of(Unit.of("g", "1e-3"), Unit.of("kg", "1"), Unit.of("lb", "0.45359237"))),
            entry(Dimension.TIME, List.of(Unit.of("min", "60"), Unit.of("s", "1"), Unit.of("h", "3600"))),
            entry(Dimension.HEAT_LOSS, List.of(Unit.of("W/K", "1"))),
            entry(
                    Dimension.INERTIA,
                    List.of(
                            Unit.of("kg.m2", "1"),
                            Unit.of("lb.ft2", "0.0421401100938048"),
                            Unit.of("lb.in2", "0.0002926396534292"))));

    /** Other spellings of the trade, by dimension: each stands for a unit of the table. Where one could mean two sizes, it is none. */
    private static final Map<Dimension, Map<String, String>> ALSO = Map.ofEntries(
            entry(
                    Dimension.LENGTH,
                    spellings("in: \" inch inches in.", "mm: mm.", "um: micron microns", "thou: thous mil mils")),
            entry(Dimension.AREA, spellings("mm2: mm^2 sqmm", "cm2: cm^2 sqcm", "in2: in^2 sqin sq.in sq.in. sq-in")),
            entry(
                    Dimension.PRESSURE,
                    spellings(
                            "psi: PSI psig lbf/in2 lb/in2",
                            "bar: Bar bars",
                            "kPa: kpa KPa",
                            "kgf/cm2: kg/cm2 kg/cm^2 kgf/cm^2")),
            entry(Dimension.TEMPERATURE, spellings("degC: C deg-C", "degF: F deg-F")),
            entry(
                    Dimension.FLOW,
                    spellings(
                            "L/min: lpm LPM l/min",
                            "gpm: GPM gal/min",
                            "mL/min: ml/min cc/min cm3/min",
                            "cm3/s: cc/s")),
            entry(Dimension.SPEED, spellings("rpm: RPM r/min 1/min min-1")),
            entry(
                    Dimension.DISPLACEMENT,
                    spellings(
                            "cm3/rev: cc/rev cc cm3 cm^3/rev cm^3 mL/rev ml/rev mL ml ccm CC",
                            "in3/rev: in^3/rev in3 in^3 cuin cuin/rev cu.in cu.in. cu.in/rev cu.in./rev cu-in cid CID")),
            entry(
                    Dimension.TORQUE,
                    spellings(
                            "N.m: Nm N-m N*m",
                            "lbf.ft: ft-lb ft-lbs ft.lb lb-ft lb.ft ftlb ftlbs lbft ft-lbf lbf-ft",
                            "lbf.in: in-lb in-lbs in.lb lb-in lbf-in")),
            entry(Dimension.FORCE, spellings("lbf: lb lbs", "kgf: kg kp")),
            entry(Dimension.SPRING_RATE, spellings("lbf/in: lb/in lbs/in", "kgf/mm: kg/mm")),
            entry(Dimension.ANGLE, spellings("deg: degrees")),
            entry(Dimension.POWER, spellings("hp: HP", "kW: kw")),
            entry(Dimension.MASS, spellings("lb: lbs")),
            entry(Dimension.INERTIA, spellings("kg.m2: kgm2 kg*m2 kg.m^2", "lb.ft2: lb-ft2", "lb.in2: lb-in2")));

    private static Map<String, String> spellings(String... each) {
        Map<String, String> all = new java.util.LinkedHashMap<>();
        for (String one : each) {
            String[] halves = one.split(": ", 2);
            for (String word : halves[1].split(" ", -1)) {
                all.put(word, halves[0]);
            }
        }
        return all;
    }

    private UnitTable() {}

    /** Other spellings of the units of a dimension. */
    static List<String> also(Dimension dimension) {
        return List.copyOf(ALSO.getOrDefault(dimension, Map.of()).keySet());
    }

    /** The units of a dimension. */
    static List<Unit> of(Dimension dimension) {
        return TABLE.get(dimension);
    }

    /** The unit of a dimension that is written so; other spellings may have blanks in them, {@code cu in}. */
    static Optional<Unit> find(String word, Dimension dimension) {
        Map<String, String> also = ALSO.getOrDefault(dimension, Map.of());
        String meant = also.getOrDefault(word, also.getOrDefault(word.replace(" ", ""), word));
        for (Unit unit : TABLE.get(dimension)) {
            if (unit.word().equals(meant)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
