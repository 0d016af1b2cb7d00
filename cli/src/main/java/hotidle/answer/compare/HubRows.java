package hotidle.answer.compare;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.HubFilmPhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.Figures;
import hotidle.assess.HubReading;
import hotidle.study.Comparison;
import java.util.List;
import java.util.Optional;

/** The lines of the bushing that carries the pump's side load. */
record HubRows(Quantity.UnitSystem units) {

    List<CompareRow> all() {
        return List.of(
                CompareRow.figure(
                        units,
                        "hub load",
                        Quantity.FORCE,
                        f -> f.hub().orElseThrow().load()),
                new CompareRow(CompareRow.headed(units, "hub film", Quantity.FILM), this::film),
                new CompareRow("  least over speed", this::leastText),
                new CompareRow("    at [rpm]", this::leastSpeed),
                new CompareRow("  least allowed (assumed)", this::allowed));
    }

    private String film(Comparison.BuildAtDuty cell) {
        return cell.figures()
                .flatMap(Figures::hub)
                .map(hub -> hub.leastFilm().isPresent()
                        ? Quantity.FILM.number(units, hub.leastFilm().getAsDouble())
                        : HubFilmPhrase.CONTACT)
                .orElse(UnsolvedPhrase.CELL);
    }

    private String leastText(Comparison.BuildAtDuty cell) {
        return cell.sweep().contactSpeeds().isEmpty()
                ? least(cell).map(film -> Quantity.FILM.number(units, film)).orElse("-")
                : HubFilmPhrase.CONTACT;
    }

    /** The hub's least film over speed [m]; empty without a film. */
    static Optional<Double> least(Comparison.BuildAtDuty cell) {
        return cell.sweep()
                .thinnestFilm()
                .map(state -> HubReading.of(cell.roles(), state).least().orElseThrow());
    }

    private String leastSpeed(Comparison.BuildAtDuty cell) {
        List<Double> contact = cell.sweep().contactSpeeds();
        return contact.isEmpty()
                ? cell.sweep()
                        .thinnestFilm()
                        .map(state ->
                                Quantity.SPEED.number(units, state.conditions().speed()))
                        .orElse("-")
                : new HubFilmPhrase(units).cell(contact);
    }

    private String allowed(Comparison.BuildAtDuty cell) {
        return cell.outcome()
                .state()
                .map(state -> Quantity.FILM.number(
                        units, HubReading.of(cell.roles(), state).allowed()))
                .orElse(UnsolvedPhrase.CELL);
    }
}
