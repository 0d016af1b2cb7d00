package hotidle.part;

import hotidle.law.Bow;
import hotidle.law.Poppet;
import hotidle.law.RatedPoint;
import hotidle.law.Slot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;

/** Draws parts of every kind, with dimensions spread over decades around what a transmission has. */
public final class Samples {

    /** Each kind with how one of it is drawn. */
    public static final Map<Class<? extends Part>, Function<Samples, Part>> KINDS = kinds();

    private final Random random;

    public Samples(Random random) {
        this.random = random;
    }

    private static Map<Class<? extends Part>, Function<Samples, Part>> kinds() {
        Map<Class<? extends Part>, Function<Samples, Part>> kinds = new LinkedHashMap<>();
        kinds.put(Orifice.class, s -> s.orifice());
        kinds.put(AnnularGap.class, s -> s.annularGap());
        kinds.put(FlatGap.class, s -> s.flatGap());
        kinds.put(FaceGap.class, s -> s.faceGap());
        kinds.put(SealingRing.class, s -> s.sealingRing());
        kinds.put(Passage.class, s -> s.passage());
        kinds.put(Filter.class, s -> new Filter(s.rated(), s.random.nextBoolean() ? 0 : s.between(0, 0.95), 0.05));
        kinds.put(Cooler.class, s -> new Cooler(s.rated(), s.random.nextBoolean() ? 0 : s.between(0, 0.95), 3e-5));
        kinds.put(LubeBranch.class, s -> new LubeBranch(s.random.nextBoolean() ? s.orifice() : s.annularGap(), 1e-5));
        kinds.put(CheckValve.class, s -> new CheckValve(s.poppet(s.decades(1e2, 3e4))));
        kinds.put(ReliefValve.class, s -> new ReliefValve(s.poppet(s.decades(1e6, 3e6))));
        kinds.put(PumpChamber.class, s -> s.pumpChamber());
        kinds.put(PumpInlet.class, s -> new PumpInlet(s.decades(1e-5, 1e-2), s.decades(1e-3, 1e-1)));
        kinds.put(SpoolValve.class, s -> s.spoolValve(List.of("p1", "p2", "p3", "p4")));
        kinds.put(Selector.class, s -> s.selector());
        kinds.put(Solenoid.class, s -> s.solenoid());
        kinds.put(SignalValve.class, s -> new SignalValve(s.solenoid(), s.demand()));
        kinds.put(Bushing.class, s -> s.bushing());
        kinds.put(Clutch.class, s -> s.clutch());
        kinds.put(Converter.class, s -> s.converter());
        return kinds;
    }

    /** Evenly between two values. */
    public double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** Evenly in the logarithm between two values. */
    public double decades(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    private Fit fit(double size, double least, double most) {
        double alloy = random.nextBoolean() ? 23e-6 : 12e-6;
        return new Fit(size + decades(least, most), size, alloy, 12e-6, Fit.REFERENCE_TEMPERATURE);
    }

    private Orifice orifice() {
        OptionalDouble known = random.nextBoolean() ? OptionalDouble.of(between(0.55, 0.85)) : OptionalDouble.empty();
        double diameter = decades(0.3e-3, 6e-3);
        return new Orifice(
                diameter,
                random.nextBoolean() ? 0 : between(0, 5e-3),
                known,
                random.nextInt(1, 3),
                random.nextBoolean() ? Double.POSITIVE_INFINITY : diameter / between(0.1, 0.8));
    }

    private AnnularGap annularGap() {
        return new AnnularGap(fit(decades(5e-3, 60e-3), 8e-6, 300e-6), decades(1e-3, 30e-3), between(0, 1));
    }

    private FlatGap flatGap() {
        double height = decades(3e-6, 200e-6);
        boolean bowed = random.nextBoolean();
        return new FlatGap(
                decades(5e-3, 0.2),
                height,
                bowed ? height : height * between(0.2, 5),
                bowed ? height * between(0, 3) : 0,
                random.nextBoolean() ? Bow.ACROSS : Bow.BETWEEN,
                decades(1e-3, 2e-2));
    }

    private FaceGap faceGap() {
        double inner = decades(5e-3, 30e-3);
        return new FaceGap(inner, inner * between(1.1, 2), fit(0.013, 10e-6, 200e-6), 0.5, between(0.1, 1), 2, 1);
    }

    private SealingRing sealingRing() {
        double bore = decades(0.03, 0.15);
        double length = Math.PI * bore - decades(1e-4, 1.5e-3);
        double shaft = bore - 2 * decades(5e-5, 3e-4);
        double alloy = random.nextBoolean() ? 23e-6 : 12e-6;
        return new SealingRing(
                new Fit(bore, shaft, 12e-6, alloy, Fit.REFERENCE_TEMPERATURE),
                new Fit(Math.PI * bore, length, 12e-6, 11e-6, Fit.REFERENCE_TEMPERATURE),
                2.5e-3,
                decades(1e-6, 4e-5),
                2e-3,
                2);
    }

    private Passage passage() {
        return new Passage(decades(2e-3, 15e-3), decades(0.02, 1), decades(1e-6, 1e-4), between(0, 6));
    }

    private RatedPoint rated() {
        return new RatedPoint(decades(3e-5, 1e-3), decades(3e3, 2e5), decades(4e-3, 3e-2), 820, between(0, 0.9));
    }

    private Poppet poppet(double crackingPressure) {
        double seat = decades(5e-3, 15e-3);
        double area = Math.PI * seat * seat / 4;
        double stop = seat / 4;
        double rise = crackingPressure * between(0.1, 2);
        return new Poppet(
                seat,
                rise * area / stop,
                crackingPressure * area,
                stop,
                between(0.6, 0.75),
                Slot.annular(seat, decades(5e-7, 1e-5), 1e-3, 0));
    }

    private PumpChamber pumpChamber() {
        PumpSlip.Face face = new PumpSlip.Face(
                "face", fit(0.013, 20e-6, 150e-6), 0.007, 0.016, between(0.3, 1), random.nextInt(1, 5), 1);
        // of a hand of their own, so that what is drawn after them stays
        Samples apart = new Samples(new Random(Double.hashCode(face.sector())));
        Optional<Fit> hub = apart.random.nextBoolean() ? Optional.empty() : Optional.of(apart.fit(0.05, 40e-6, 200e-6));
        PumpSlip.Tip tip = new PumpSlip.Tip(
                "tip", fit(0.084, 50e-6, 400e-6), between(1e-3, 3e-3), random.nextInt(2, 8), 0.026, 0.084, hub);
        boolean measured = random.nextInt(4) > 0;
        PumpSlip slip = new PumpSlip(
                measured ? List.of(face) : List.of(),
                measured ? List.of(tip) : List.of(),
                random.nextBoolean() ? 0 : decades(1e-13, 5e-12),
                measured ? PumpSlip.Fitted.NONE : new PumpSlip.Fitted(decades(1e-14, 3e-12), apart.decades(1e-9, 1e-7)),
                decades(1e-8, 2e-6),
                new PumpSlip.Lost(measured ? 0 : between(0, 0.1), apart.between(0, 1e-3)));
        Optional<PumpChamber.Slide> slide = random.nextInt(4) > 0
                ? Optional.empty()
                : Optional.of(new PumpChamber.Slide(
                        decades(1e-4, 8e-4),
                        decades(1e4, 1e5),
                        decades(50, 500),
                        random.nextBoolean() ? 0 : 4e-4,
                        3e-3));
        return new PumpChamber(decades(5e-6, 40e-6), slip, new PumpChamber.Drag(2e5, 0.1, 0.3), slide);
    }

    /** A spool valve with openings between ports drawn at random, the first areas on the first and the last port. */
    public SpoolValve spoolValve(List<String> ports) {
        Fit fit = fit(decades(8e-3, 20e-3), 15e-6, 120e-6);
        double face = Math.PI * fit.inner() * fit.inner() / 4;
        double stroke = between(1e-3, 5e-3);
        List<SpoolValve.Opening> openings = new ArrayList<>();
        for (int i = 0; i < random.nextInt(1, 4); i++) {
            int from = random.nextInt(ports.size());
            int to = (from + random.nextInt(1, ports.size())) % ports.size();
            openings.add(new SpoolValve.Opening(
                    "opening-" + i,
                    from,
                    to,
                    fit,
                    between(0.05, 1),
                    between(-0.2, 1.1) * stroke,
                    random.nextInt(4) > 0,
                    between(0, 1),
                    between(0.6, 0.75),
                    random.nextInt(4),
                    decades(1e-3, 5e-3),
                    random.nextBoolean() ? 0 : between(0, 1)));
        }
        double set = decades(2e5, 2e6);
        return new SpoolValve(
                ports,
                openings,
                List.of(
                        new SpoolValve.Area(0, face, Set.of()),
                        new SpoolValve.Area(
                                ports.size() - 1,
                                -face * between(0, 0.9),
                                random.nextBoolean() ? Set.of() : Set.of("reverse"))),
                new SpoolSpring(face * decades(1e7, 4e8), face * set, 0, stroke, 0),
                random.nextInt(8) == 0 ? OptionalDouble.of(between(0, 1) * stroke) : OptionalDouble.empty());
    }

    private Selector selector() {
        return new Selector(
                List.of("supply", "one", "two", "sump"),
                List.of(
                        new Selector.Connection("one-feed", 0, 1, decades(1e-3, 4e-3), Set.of("first", "reverse")),
                        new Selector.Connection("two-feed", 0, 2, decades(1e-3, 4e-3), Set.of("second", "reverse")),
                        new Selector.Connection("one-vent", 1, 3, decades(1e-3, 4e-3), Set.of("second")),
                        new Selector.Connection("two-vent", 2, 3, decades(1e-3, 4e-3), Set.of("first"))),
                random.nextBoolean()
                        ? java.util.Optional.empty()
                        : java.util.Optional.of(new Selector.Land(
                                Fit.same(0.014 + decades(5e-6, 1e-4), 0.014), decades(1e-3, 1e-2), between(0, 1))));
    }

    private Solenoid solenoid() {
        return new Solenoid(decades(0.4e-3, 2e-3), decades(0.5e-3, 3e-3), decades(1e3, 5e4), random.nextBoolean());
    }

    /** Asked for something even where nothing is felt, as by the random circuits. */
    private SignalValve.Demand demand() {
        double area = decades(3e-5, 3e-4);
        return random.nextBoolean()
                ? new ThrottleSpring(area, between(0, 8e5) * area, decades(1e3, 2e4), 0.01, between(-1e-3, 1e-3))
                : new Diaphragm(area, decades(1e4, 8e5) * area, decades(1e-3, 1e-2), between(0, 1));
    }

    private Bushing bushing() {
        double diameter = decades(0.03, 0.06);
        return new Bushing(
                fit(diameter, 30e-6, 250e-6),
                diameter * between(0.2, 1),
                List.of(
                        new Bushing.SideLoad(decades(1e-4, 1e-3), 0),
                        new Bushing.SideLoad(decades(1e-4, 1e-3), between(2, 4))),
                decades(10, 300),
                -Math.PI / 2,
                3e-6,
                7e6,
                random.nextBoolean() ? 0 : decades(1e-5, 1e-3),
                random.nextBoolean());
    }

    private Clutch clutch() {
        return new Clutch(
                Clutch.Piston.plain(decades(5e-3, 2e-2), between(300, 2000)),
                random.nextInt(3) == 0
                        ? new Band(
                                0.08, between(3, 6), between(0.5, 3), random.nextBoolean(), between(0.11, 0.15), 0.12)
                        : new Lining(
                                2 * random.nextInt(2, 8), 0.06, 0.08, between(0.11, 0.15), 0.12, random.nextBoolean()),
                1.2,
                new Clutch.Seal(
                        decades(0.05, 0.15),
                        decades(1e-6, 2e-5),
                        2e-3,
                        random.nextBoolean() ? 0 : decades(2e-4, 8e-4)));
    }

    private Converter converter() {
        return new Converter(
                rated(),
                3e5,
                random.nextInt(4) == 0
                        ? Optional.empty()
                        : Optional.of(new Converter.LockupClutch(rated(), rated(), 0.03, 0.12, 1, 0.12, 1.2)));
    }
}
