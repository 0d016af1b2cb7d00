package hotidle.validation;

import hotidle.geartrain.Coupling;
import hotidle.geartrain.Drive.Driven;
import hotidle.geartrain.GearTrain;
import hotidle.geartrain.PlanetarySet.Central;
import hotidle.geartrain.TrainDrive;
import java.util.List;
import java.util.Set;

/**
 * One gear train and the rows that a source has of it.
 *
 * @param train in words
 */
record GearTrainCase(String train, Source source, GearTrain gears) {

    static final String PART = "Gear train";

    Driven driven(String... applied) {
        if (TrainDrive.of(gears, Set.of(applied)) instanceof Driven driven) {
            return driven;
        }
        throw new IllegalStateException(train + " does not drive with " + List.of(applied));
    }

    Row ratio(String range, String published, String... applied) {
        return Row.of(
                PART, "ratio in " + range, train, published, "", driven(applied).ratio(), source);
    }

    Row torque(String range, String published, String... applied) {
        return Row.of(
                PART,
                "torque ratio in " + range,
                train,
                published,
                "",
                driven(applied).torqueRatio(),
                source);
    }

    static Coupling clutch(String name, String first, String second) {
        return new Coupling(name, Coupling.Kind.CLUTCH, first, second);
    }

    static Central on(String member, int teeth) {
        return new Central(member, teeth);
    }
}
