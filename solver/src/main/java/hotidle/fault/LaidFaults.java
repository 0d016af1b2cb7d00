package hotidle.fault;

import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Faults that lie over a build whatever is changed of it: other sizes, and another set pressure, are made beneath them, so that no
 * spring is set to make up for a fault. A size that wears by a fault counts from its worn value on; brought back to new, it is new.
 *
 * @param faults one laid over the other
 */
public record LaidFaults(List<UnitFault.Sized> faults) {

    public LaidFaults {
        faults = List.copyOf(faults);
    }

    /**
     * A build with them.
     *
     * @throws IllegalArgumentException where a size is impossible
     */
    public Adjustable over(Adjustable sound) {
        return over(sound, Map.of());
    }

    /**
     * The same of a build whose sizes differ beside its faults.
     *
     * @param more by how much each of some sizes differs [m] or [m²], by name
     * @throws IllegalArgumentException where a size is impossible
     */
    Adjustable over(Adjustable sound, Map<String, Double> more) {
        Map<String, Double> worn = new HashMap<>();
        more.forEach(
                (name, by) -> worn.put(name, sound.dimension(name).orElseThrow().value() + by));
        for (UnitFault.Sized one : faults) {
            for (WearSize wear : one.fault().wears()) {
                double by = one.size() * wear.allowance();
                worn.merge(wear.name(), wear.value() + by, (before, now) -> before + by);
            }
        }
        Adjustable resized = sound.resized(worn);
        return new Adjustable(changed(resized.unit()), resized.dimensions(), new Beneath(this, sound, more, resized));
    }

    private Transmission changed(Transmission unit) {
        Transmission changed = unit;
        for (UnitFault.Sized one : faults) {
            changed = one.fault().change().of(changed, one.size());
        }
        return changed;
    }

    /** Changes a build beneath its faults. */
    private record Beneath(LaidFaults faults, Adjustable sound, Map<String, Double> more, Adjustable worn)
            implements Adjustable.Remake {
        @Override
        public Transmission with(Map<String, Double> sizes) {
            return faults.changed(worn.remake().with(sizes));
        }

        @Override
        public List<WearSize> others() {
            return worn.remake().others();
        }

        @Override
        public Adjustable setTo(Adjustable build, double pressure, SetPressure.By by) {
            return faults.over(sound.setTo(pressure, by), more);
        }
    }
}
