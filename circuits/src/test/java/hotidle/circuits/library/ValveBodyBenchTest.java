package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.newton.SteadySolver;
import hotidle.oil.OilAt;
import hotidle.part.AnnularGap;
import hotidle.result.Solution;
import hotidle.transmission.Transmission;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ValveBodyBenchTest {

    private static final DescribedCircuit BENCH = CircuitReader.read(
                    Library.text("valve-body-bench").orElseThrow(), "valve-body-bench.yaml")
            .circuit()
            .orElseThrow();

    private static Solution at(String build, String duty) {
        Transmission unit = BENCH.unit(build);
        return new SteadySolver(unit.network())
                .solve(unit.conditions(unit.duty(duty).orElseThrow()), Optional.empty())
                .state()
                .orElseThrow();
    }

    /**
     * π·(d + c)·c³·(1 + 1.5·ε²)·Δp/(12·μ·L), which bends into a ring by s²/15, s = c/(d + c), with 1.686 velocity heads lost at its ends, aluminium 21.8e-6 and steel 12e-6 1/K from
     * 20 °C: Merritt 1967 section 2-5; the ends: Lundgren and others 1964 (both from memory).
     */
    @ParameterizedTest
    @ValueSource(strings = {"fresh", "measured", "at-limit", "sleeved"})
    void everyLandLeaksAsWorkedOutByHandAtThePressureOfThePlate(String build) {
        for (String duty : new String[] {"low", "high", "warm"}) {
            Solution state = at(build, duty);
            double plate = state.pressure("plate");
            double kelvin = BENCH.unit().duty(duty).orElseThrow().temperatures().get("sump");
            OilAt oil = BENCH.unit().oil().at(kelvin, 101_300);
            double all = 0;
            for (var placed : BENCH.unit(build).network().parts()) {
                if (placed.part() instanceof AnnularGap gap) {
                    double bore = gap.fit().outer() * (1 + 21.8e-6 * (kelvin - 293.15));
                    double valve = gap.fit().inner() * (1 + 12e-6 * (kelvin - 293.15));
                    double c = (bore - valve) / 2;
                    double w = Math.PI * (gap.fit().inner() + c);
                    double curved = 1 + Math.pow(c / (gap.fit().inner() + c), 2) / 15;
                    double mu = oil.viscosity(plate / 2);
                    double rho = oil.density(plate / 2);
                    double b = 12 * mu * gap.length() / (w * c * c * c * curved * (1 + 1.5 * 0.25));
                    double a = 1.686 * rho / (2 * w * w * c * c);
                    double q = 2 * plate / (b + Math.sqrt(b * b + 4 * a * plate));
                    assertEquals(q, state.flow(placed.name()), 1e-9 * q, placed.name());
                    all += state.flow(placed.name());
                }
            }
            double supplied = state.flow("reducer.feed") - state.flow("reducer.exhaust");
            assertEquals(supplied, all, 1e-8 * state.flow("reducer.feed"));
        }
    }

    @Test
    void threeTimesTheClearanceIsSomeTwentyFiveTimesTheOil() {
        double was = at("fresh", "high").flow("manual-front");
        double is = at("measured", "high").flow("manual-front");
        assertTrue(is / was > 20 && is / was < 29, is + " after " + was);
    }

    @Test
    void theSameBoresLeakAboutFourTimesAsMuchInWarmOil() {
        double cold = at("measured", "high").flow("shift-1-2");
        double warm = at("measured", "warm").flow("shift-1-2");
        assertTrue(warm / cold > 3.5 && warm / cold < 4.5, warm + " after " + cold);
    }

    @Test
    void sleevingTheBoresPastTheirLimitWinsBackWhatTheyLost() {
        double sleeved = at("sleeved", "high").flow("regulator-boost");
        assertEquals(at("fresh", "high").flow("regulator-boost"), sleeved, 1e-3 * sleeved);
        assertTrue(at("sleeved", "high").flow("reducer.feed")
                < at("measured", "high").flow("reducer.feed"));
    }
}
