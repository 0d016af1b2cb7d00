package hotidle.study;

import hotidle.assess.Roles;
import hotidle.newton.Series;
import hotidle.part.Bushing;
import hotidle.result.Solution;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The hub films of several builds at the same speeds: the thinnest film of each stands at a speed of its own, and two films at
 * different speeds mislead whoever compares them.
 *
 * @param rows one for each build and duty at which a thinnest film is known
 */
public record SameSpeedFilms(List<FilmsAtSpeed> rows) {

    /**
     * The films at one speed.
     *
     * @param duty  whose oil and torque are there
     * @param speed at which the film of one build is thinnest [rev/s]
     * @param films of all builds, in their order
     */
    public record FilmsAtSpeed(String duty, double speed, List<Film> films) {
        public FilmsAtSpeed {
            films = List.copyOf(films);
        }
    }

    /** Whether a film is known. */
    public enum FilmFinding {
        KNOWN,
        METAL_CONTACT,
        UNSOLVED
    }

    /**
     * One film.
     *
     * @param least [m]; empty where it is not known
     */
    public record Film(FilmFinding found, OptionalDouble least) {
        private static Film of(String hub, Solution state) {
            return state.measure(hub, Bushing.METAL_CONTACT).orElseThrow() > 0
                    ? new Film(FilmFinding.METAL_CONTACT, OptionalDouble.empty())
                    : new Film(FilmFinding.KNOWN, state.measure(hub, Bushing.EDGE_FILM));
        }
    }

    public SameSpeedFilms {
        rows = List.copyOf(rows);
    }

    /** Of builds of one shape; none of fewer than two. */
    public static SameSpeedFilms of(List<JudgedBuild> builds) {
        List<FilmsAtSpeed> rows = new ArrayList<>();
        if (builds.size() < 2) {
            return new SameSpeedFilms(rows);
        }
        for (JudgedBuild build : builds) {
            for (Judgement judged : build.duties()) {
                judged.hub()
                        .flatMap(HubOverSpeed::thinnest)
                        .ifPresent(thinnest -> rows.add(row(judged.duty().name(), thinnest, builds)));
            }
        }
        return new SameSpeedFilms(rows);
    }

    private static FilmsAtSpeed row(String duty, Solution thinnest, List<JudgedBuild> builds) {
        double speed = thinnest.conditions().speed();
        List<Film> films = builds.stream()
                .map(build -> film(build.unit(), duty, thinnest, speed))
                .toList();
        return new FilmsAtSpeed(duty, speed, films);
    }

    private static Film film(Transmission unit, String duty, Solution like, double speed) {
        Optional<String> hub = Roles.of(unit).hub().map(placed -> placed.name());
        Series series = new Series(unit.network());
        series.restart(like);
        boolean solved =
                series.solve(unit.conditions(unit.duty(duty).orElseThrow()).atSpeed(speed));
        return hub.filter(any -> solved)
                .map(name -> Film.of(name, series.state()))
                .orElseGet(() -> new Film(FilmFinding.UNSOLVED, OptionalDouble.empty()));
    }
}
