package hotidle.cli;

import hotidle.circuits.text.Nearest;
import hotidle.network.Placed;
import hotidle.part.AnnularGap;
import hotidle.transmission.Transmission;
import java.util.List;

/** Lands of a unit, of which a stand can test one. */
final class Lands {

    private Lands() {}

    /**
     * The land of a name, where it is placed in a unit.
     *
     * @throws WrongInputException where the unit has no land of that name
     */
    static Placed named(String name, Transmission unit) {
        List<Placed> lands = unit.network().parts().stream()
                .filter(one -> one.part() instanceof AnnularGap)
                .toList();
        return lands.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new WrongInputException("hotidle: " + unit.circuit() + " has no land '" + name
                        + "'\nmend: "
                        + Nearest.mend(name, lands.stream().map(Placed::name).toList())));
    }
}
