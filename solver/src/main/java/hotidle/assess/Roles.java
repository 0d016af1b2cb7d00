package hotidle.assess;

import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.part.CheckValve;
import hotidle.part.Converter;
import hotidle.part.Cooler;
import hotidle.part.LubeBranch;
import hotidle.part.Part;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
import hotidle.part.SpoolValve;
import hotidle.transmission.Command;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which part of a unit plays which role; found from kinds and nodes, so that no file has to say it twice.
 *
 * @param line      node of the line; where nothing is commanded the outlet of the first chamber, without one the first free node,
 *                   without that the first one
 * @param regulating the pressure regulator, where line pressure is commanded
 * @param inlet     the pump's inlet, where there is one
 * @param chambers  all chambers of the pump
 * @param secondary the chamber that joins the line through a check valve
 * @param check     that check valve
 * @param hub       the bushing that carries the chambers' side load
 * @param converter the converter
 * @param cooler    the cooler
 * @param lube      branches of the lubrication
 * @param sumps     nodes held at a pressure
 */
public record Roles(
        String line,
        Optional<Placed> regulating,
        Optional<Placed> inlet,
        List<Placed> chambers,
        Optional<Placed> secondary,
        Optional<Placed> check,
        Optional<Placed> hub,
        Optional<Placed> converter,
        Optional<Placed> cooler,
        List<Placed> lube,
        Set<String> sumps) {

    /** The roles in a unit. */
    public static Roles of(Transmission unit) {
        List<Placed> chambers = all(unit, PumpChamber.class);
        String line = unit.commanded().map(Command::line).orElseGet(() -> uncommanded(unit, chambers));
        Optional<Placed> secondary = chambers.stream()
                .filter(chamber -> !outlet(chamber).equals(line))
                .filter(chamber -> check(unit, outlet(chamber), line).isPresent())
                .findFirst();
        return new Roles(
                line,
                unit.commanded()
                        .map(command -> unit.network().part(command.regulator()).orElseThrow()),
                all(unit, PumpInlet.class).stream().findFirst(),
                chambers,
                secondary,
                secondary.flatMap(chamber -> check(unit, outlet(chamber), line)),
                all(unit, Bushing.class).stream()
                        .filter(placed -> !((Bushing) placed.part()).loads().isEmpty())
                        .findFirst(),
                all(unit, Converter.class).stream().findFirst(),
                all(unit, Cooler.class).stream().findFirst(),
                all(unit, LubeBranch.class),
                unit.network().nodes().stream()
                        .filter(node -> node.held().isPresent())
                        .map(Node::name)
                        .collect(Collectors.toUnmodifiableSet()));
    }

    private static String uncommanded(Transmission unit, List<Placed> chambers) {
        return chambers.stream()
                .findFirst()
                .map(Roles::outlet)
                .orElseGet(() -> unit.network().nodes().stream()
                        .filter(node -> node.held().isEmpty())
                        .map(Node::name)
                        .findFirst()
                        .orElse(unit.network().nodes().get(0).name()));
    }

    private static List<Placed> all(Transmission unit, Class<? extends Part> kind) {
        return unit.network().parts().stream()
                .filter(placed -> kind.isInstance(placed.part()))
                .toList();
    }

    private static String outlet(Placed chamber) {
        return chamber.nodes().get(1);
    }

    private static Optional<Placed> check(Transmission unit, String from, String to) {
        return all(unit, CheckValve.class).stream()
                .filter(valve -> valve.nodes().equals(List.of(from, to)))
                .findFirst();
    }

    /**
     * The pressure regulator.
     *
     * @throws java.util.NoSuchElementException where nothing is commanded; {@link #regulating} is then empty
     */
    public Placed regulator() {
        return regulating.orElseThrow();
    }

    /** The regulator as a spool valve; throws as {@link #regulator} does. */
    public SpoolValve spool() {
        return (SpoolValve) regulator().part();
    }

    /** What all lube branches need together at a duty [m³/s]. */
    public double lubeNeeded(DutyPoint duty) {
        return duty.lubeNeed()
                * lube.stream()
                        .mapToDouble(placed -> ((LubeBranch) placed.part()).neededFlow())
                        .sum();
    }

    /** The opening that unloads the secondary to the pump's inlet. */
    public Optional<SpoolValve.Opening> unloading() {
        return secondary.flatMap(
                chamber -> opening(outlet(chamber), chamber.nodes().get(0)));
    }

    /** The opening that bypasses the line to the pump's inlet. */
    public Optional<SpoolValve.Opening> bypass() {
        return chambers.stream()
                .findFirst()
                .flatMap(chamber -> opening(line, chamber.nodes().get(0)));
    }

    /** The opening that feeds the control chamber of a variable pump's slide from the line: the pump then displaces less. */
    public Optional<SpoolValve.Opening> destroking() {
        return chambers.stream()
                .filter(chamber -> ((PumpChamber) chamber.part()).slide().isPresent())
                .findFirst()
                .flatMap(chamber -> opening(line, chamber.nodes().get(PumpChamber.CONTROL)));
    }

    private Optional<SpoolValve.Opening> opening(String from, String to) {
        return regulating.stream()
                .flatMap(placed -> ((SpoolValve) placed.part()).openings().stream())
                .filter(opening -> regulator().nodes().get(opening.from()).equals(from)
                        && regulator().nodes().get(opening.to()).equals(to))
                .findFirst();
    }
}
