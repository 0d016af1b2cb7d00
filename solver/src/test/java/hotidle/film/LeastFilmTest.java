package hotidle.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** How thin a film may get. */
class LeastFilmTest {

    @Test
    void theRoughnessOfAFilmRatioIsTheRootMeanSquareOfBothSurfaces() {
        assertEquals(3 * 1.2533 * 0.5e-6, LeastFilm.ofRoughness(3, 0.3e-6, 0.4e-6), 1e-10);
    }

    @Test
    void heightsDrawnFromGausssCurveHaveThatRatio() {
        Random random = new Random(1);
        double mean = 0;
        double square = 0;
        int count = 200_000;
        for (int i = 0; i < count; i++) {
            double height = random.nextGaussian();
            mean += Math.abs(height) / count;
            square += height * height / count;
        }
        assertEquals(LeastFilm.RQ_OVER_RA, Math.sqrt(square) / mean, 5e-3);
    }

    @Test
    void aTiltTakesHalfOfWhatItRisesOverTheLengthFromTheEdge() {
        assertEquals(1.15e-6, LeastFilm.atEdge(2e-6, 1e-4, 0.017), 1e-12);
        assertEquals(2e-6, LeastFilm.atEdge(2e-6, 0, 0.017));
        assertEquals(0, LeastFilm.atEdge(2e-6, 1e-3, 0.017), "the edge touches");
        assertTrue(LeastFilm.trumpler(0.05) > 7e-6);
    }
}
