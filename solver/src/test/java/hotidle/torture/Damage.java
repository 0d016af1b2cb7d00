package hotidle.torture;

import hotidle.law.Hole;
import hotidle.law.Poppet;
import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.CheckValve;
import hotidle.part.Fit;
import hotidle.part.Part;
import hotidle.part.Setting;
import hotidle.part.SpoolValve;
import hotidle.transmission.Transmission;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * Damages a unit at random: any dimension from a tenth of what it is to ten times the wear limit, blocked filters and coolers, broken
 * springs, stuck spools, missing check balls; at any speed, temperature and range.
 *
 * <p>Dimensions are found by the records' own components, so that a new kind of part is damaged like all others. What a part itself
 * refuses, such as a discharge coefficient of 5, is drawn nearer to what it was; no circuit is turned away.
 */
public final class Damage {

    private static final double LEAST = 0.1;

    /** Ten times the wear limit, which is about two and a half times the new gap. */
    private static final double MOST = 25;

    private static final double BLOCKED = 0.995;
    private static final double HIGHEST_SPEED = 7000 / 60.0;
    private static final double IDLE = 700 / 60.0;
    private static final double COLDEST = 273.15 - 40;
    private static final double HOTTEST = 273.15 + 160;
    private static final List<Setting.Lockup> LOCKUPS = List.of(Setting.Lockup.values());

    private final Random random;

    private Damage(Random random) {
        this.random = random;
    }

    /** A damaged unit and the conditions that it is put to. */
    public static Case of(Transmission unit, Random random) {
        return new Damage(random).draw(unit);
    }

    private Case draw(Transmission unit) {
        // from a single fault to a wreck
        double share = Math.pow(random.nextDouble(), 2);
        List<Placed> parts = unit.network().parts().stream()
                .map(placed -> random.nextDouble() < share ? placed.with(damaged(placed.part())) : placed)
                .toList();
        return new Case(
                unit.circuit() + ", " + unit.build(), new Network(unit.network().nodes(), parts), conditions(unit));
    }

    private Conditions conditions(Transmission unit) {
        double sump = between(COLDEST, HOTTEST);
        Map<String, Double> temperatures = new HashMap<>();
        unit.duties()
                .get(0)
                .temperatures()
                .keySet()
                .forEach(region -> temperatures.put(
                        region, region.equals("sump") ? sump : Math.min(sump + between(-20, 60), HOTTEST + 60)));
        Map<String, Double> commands = new HashMap<>();
        unit.network()
                .parts()
                .forEach(placed -> commands.put(placed.name(), random.nextInt(4) == 0 ? 0 : between(0, 1e6)));
        return new Conditions(
                speed(),
                unit.ranges().get(random.nextInt(unit.ranges().size())).name(),
                LOCKUPS.get(random.nextInt(LOCKUPS.size())),
                unit.oil(),
                unit.ambient(),
                temperatures,
                commands);
    }

    /** Up to the highest; a third of them cranking and idling, where oil is short and films are thin, some standing still. */
    private double speed() {
        if (random.nextInt(20) == 0) {
            return 0;
        }
        return between(0, random.nextInt(3) == 0 ? IDLE : HIGHEST_SPEED);
    }

    private Part damaged(Part part) {
        if (part instanceof CheckValve check && random.nextInt(4) == 0) {
            return withoutBall(check.poppet());
        }
        if (part instanceof SpoolValve spool && random.nextInt(4) == 0) {
            double place = between(spool.spring().low(), spool.spring().high());
            return new SpoolValve(
                    spool.ports(), spool.openings(), spool.areas(), spool.spring(), OptionalDouble.of(place));
        }
        return (Part) worn((Record) part);
    }

    /** The seat stands open both ways. */
    private static CheckValve withoutBall(Poppet poppet) {
        return new CheckValve(new Poppet(
                poppet.seat(),
                poppet.springRate(),
                1e6,
                poppet.stop(),
                poppet.dischargeCoefficient(),
                Hole.loss(poppet.seat(), 0, Hole.SHARP_EDGE)));
    }

    private Record worn(Record record) {
        if (record instanceof Fit fit) {
            double gap = fit.outer() - fit.inner();
            return new Fit(
                    fit.inner() + gap * decades(LEAST, MOST),
                    fit.inner(),
                    fit.outerExpansion(),
                    fit.innerExpansion(),
                    fit.measuredAt());
        }
        boolean wreck = random.nextInt(3) == 0;
        for (double strength = 1; strength > 1e-3; strength /= 2) {
            Optional<Record> made = made(record, values(record, strength, wreck));
            if (made.isPresent()) {
                return made.get();
            }
        }
        return record;
    }

    private Object[] values(Record record, double strength, boolean all) {
        return Arrays.stream(record.getClass().getRecordComponents())
                .map(component -> value(component, read(record, component), strength, all))
                .toArray();
    }

    private Object value(RecordComponent component, Object old, double strength, boolean all) {
        if (old instanceof Double number) {
            if (component.getName().equals("blocked")) {
                return random.nextBoolean() ? number : Double.valueOf(between(0, BLOCKED));
            }
            boolean change = all || random.nextInt(4) == 0;
            return change ? number * Math.pow(decades(LEAST, 1 / LEAST), strength) : number;
        }
        if (old instanceof Record inner) {
            return worn(inner);
        }
        if (old instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof Record) {
            return list.stream().map(item -> (Object) worn((Record) item)).toList();
        }
        return old;
    }

    private static Object read(Record record, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException fault) {
            throw new IllegalStateException(record.getClass() + " does not show its " + component.getName(), fault);
        }
    }

    /** Empty where the record refuses its values. */
    private static Optional<Record> made(Record record, Object[] values) {
        try {
            Class<?>[] types = Arrays.stream(record.getClass().getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new);
            Constructor<?> constructor = record.getClass().getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return Optional.of((Record) constructor.newInstance(values));
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof IllegalArgumentException) {
                return Optional.empty();
            }
            throw new IllegalStateException(record.getClass() + " broke", refused);
        } catch (ReflectiveOperationException fault) {
            throw new IllegalStateException(record.getClass() + " cannot be made", fault);
        }
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double decades(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }
}
