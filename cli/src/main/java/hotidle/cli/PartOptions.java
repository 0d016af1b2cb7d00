package hotidle.cli;

import hotidle.answer.phrase.ArticlePhrase;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.shape.Key;
import hotidle.circuits.single.PartKeys;
import hotidle.circuits.text.Dimension;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** What a part on its own is put under, as it is written on the command line. */
final class PartOptions {

    @Option(
            names = "--drop",
            paramLabel = "PRESSURE",
            description = "pressure drop between the two ports of a part, the lower one at 0: 150psi")
    String drop;

    @Option(
            names = "--at",
            paramLabel = "PORT=PRESSURE",
            description =
                    "pressure at a port; give it again for each. Ports without stand at 0; a solenoid's pilot finds its own")
    List<String> at = List.of();

    @Option(
            names = "--hold",
            paramLabel = "STATE=VALUE",
            description =
                    "holds what the part would find for itself: position=1.2mm of a spool, eccentricity=0.8, opening=50%%")
    List<String> hold = List.of();

    @Option(
            names = "--oil",
            paramLabel = "NAME",
            description = "an oil of the ready circuits (see 'hotidle list'). Default: shuttle-atf")
    String oil;

    @Option(
            names = "--temperature",
            paramLabel = "TEMPERATURE",
            description =
                    "of the oil and so of the part. Default: 100degC; with --viscosity, that at which it was measured")
    String temperature;

    @Option(
            names = "--viscosity",
            paramLabel = "VISCOSITY",
            description = "dynamic viscosity in place of an oil: 7.2mPa.s")
    String viscosity;

    @Option(names = "--density", paramLabel = "DENSITY", description = "density that goes with --viscosity: 830kg/m3")
    String density;

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            description = "another way to write the key speed of what turns: 2000rpm")
    String speed;

    /**
     * The keys of a part as written, and {@code --speed}, which is another way to write one.
     *
     * @throws WrongInputException where the kind has no speed, or it is no speed
     */
    List<String> keys(Kind kind, List<String> words) {
        List<String> all = new ArrayList<>(words);
        if (speed != null) {
            if (PartKeys.of(kind).stream().map(Key::name).noneMatch("speed"::equals)) {
                throw new WrongInputException(
                        "hotidle part: --speed changes nothing in " + ArticlePhrase.of(kind.word()));
            }
            OptionValues.quantity("--speed", speed, Dimension.SPEED);
            all.add("speed=" + speed);
        }
        return all;
    }

    /** The same with another drop or temperature. */
    PartOptions with(String what, String value) {
        PartOptions other = new PartOptions();
        other.drop = what.equals("drop") ? value : drop;
        other.at = at;
        other.hold = hold;
        other.oil = oil;
        other.temperature = what.equals("temperature") ? value : temperature;
        other.viscosity = viscosity;
        other.density = density;
        return other;
    }
}
