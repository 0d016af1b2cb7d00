package hotidle.circuits.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.SetPressure;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Past 300 lines, since each unit has its factor here as a row, and each way to write a number that is refused. */
class UnitsTest {

    /** Factors by their definitions: inch 0.0254 m, pound 0.45359237 kg, g 9.80665 m/s2, US gallon 231 in3, hp 550 ft.lbf/s. */
    @ParameterizedTest
    @CsvSource({
        "LENGTH, 14.030 mm, 0.01403",
        "LENGTH, 0.0015 in, 0.0000381",
        "LENGTH, 0.0015 thou, 3.81e-8",
        "LENGTH, 25um, 0.000025",
        "LENGTH, 1.2e1 cm, 0.12",
        "AREA, 2 in2, 0.00129032",
        "AREA, 150 cm2, 0.015",
        "PRESSURE, 1 psi, 6894.757293168361",
        "PRESSURE, 270psi, 1861584.4691554576",
        "PRESSURE, -0.5 bar, -50000",
        "PRESSURE, 1.5 MPa, 1500000",
        "TEMPERATURE, 95 degC, 368.15",
        "TEMPERATURE, 32 degF, 273.15",
        "TEMPERATURE, 300K, 300",
        "FLOW, 11 L/min, 0.00018333333333333333",
        "FLOW, 1 gpm, 0.0000630901964",
        "SPEED, 3000 rpm, 50",
        "DISPLACEMENT, 18 cm3/rev, 0.000018",
        "DISPLACEMENT, 1 in3/rev, 0.000016387064",
        "TORQUE, 100 lbf.ft, 135.58179483314004",
        "FORCE, 10 lbf, 44.482216152605",
        "SPRING_RATE, 12 N/mm, 12000",
        "SPRING_RATE, 1 lbf/in, 175.12683524647637",
        "ANGLE, 180 deg, 3.141592653589793",
        "KINEMATIC_VISCOSITY, 7.4 mm2/s, 0.0000074",
        "VISCOSITY, 7.2mPa.s, 0.0072",
        "DENSITY, 0.85 g/cm3, 850",
        "DENSITY_SLOPE, 0.65 kg/m3/K, 0.65",
        "EXPANSION, 23e-6 1/K, 0.000023",
        "EXPANSION, 23 um/m/K, 0.000023",
        "SPECIFIC_HEAT, 2.1 kJ/kg/K, 2100",
        "SPECIFIC_HEAT, 0.5 Btu/lb/degF, 2093.4",
        "CONDUCTIVITY, 0.13 W/m/K, 0.13",
        "PRESSURE_COEFFICIENT, 15 1/GPa, 1.5e-8",
        "OPENING, 0.1 um/bar, 1e-12",
        "POWER, 2 hp, 1491.3997431645404",
        "RATIO, 1.5 %, 0.015",
        "RATIO, .61, 0.61"
    })
    void quantitiesComeOutInSiToTheLastDigit(Dimension dimension, String text, double si) {
        assertEquals(si, Units.parse(text, dimension), Math.abs(si) * 1e-15);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "mm",
                "1",
                "1 psi",
                "1,5 mm",
                "1 mm mm",
                "--1 mm",
                "1e999 mm",
                "0x10 mm",
                "NaN mm",
                "1 MM",
                "1 000 mm"
            })
    void whatIsNoLengthIsRefusedWithARemedy(String text) {
        Units.Amount amount = Units.read(text, Dimension.LENGTH);
        assertFalse(amount.good());
        assertFalse(amount.mend().isEmpty());
        assertThrows(IllegalArgumentException.class, () -> Units.parse(text, Dimension.LENGTH));
    }

    @Test
    void theRemedyNamesTheUnitThatWasMeant() {
        assertEquals("write 30 psi", Units.read("30 spi", Dimension.PRESSURE).mend());
        assertEquals("write 1.5 mm", Units.read("1,5 mm", Dimension.LENGTH).mend());
        assertTrue(Units.read("3 psi", Dimension.LENGTH).wrong().contains("a pressure"));
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyDimensionHasUnitsToldApartByTheirWords(Dimension dimension) {
        List<String> words = Units.of(dimension);
        assertFalse(words.isEmpty());
        assertEquals(words.size(), new HashSet<>(words).size());
        assertEquals(3.0e-5, Units.parse(Units.inSi(3.0e-5, dimension), dimension), 1e-19);
    }

    /** Factors as printed in NIST Special Publication 811 (2008), Appendix B.8 (from memory), seven digits. */
    @ParameterizedTest
    @CsvSource({
        "PRESSURE, 1 psi, 6.894757E+03",
        "PRESSURE, 1 kg/cm2, 9.80665E+04",
        "PRESSURE, 1 inHg, 3.386389E+03",
        "TORQUE, 1 ft-lb, 1.355818",
        "TORQUE, 1 in-lb, 1.129848E-01",
        "FLOW, 1 gal/min, 6.309020E-05",
        "FLOW, 1 lpm, 1.666667E-05",
        "SPRING_RATE, 1 lb/in, 1.751268E+02",
        "SPRING_RATE, 7 kg/mm, 6.864655E+04",
        "FORCE, 1 lb, 4.448222",
        "FORCE, 1 kgf, 9.80665",
        "MASS, 1 lb, 4.535924E-01",
        "POWER, 1 hp, 7.456999E+02",
        "POWER, 1 Btu/min, 1.758427E+01",
        "DISPLACEMENT, 1 in3/rev, 1.638706E-05",
        "DISPLACEMENT, 1 cu in, 1.638706E-05",
        "DISPLACEMENT, 1 in\u00b3, 1.638706E-05",
        "DISPLACEMENT, 1 cu. in./rev, 1.638706E-05",
        "AREA, 1 sq in, 6.4516E-04",
        "DISPLACEMENT, 21 cc, 21E-06",
        "LENGTH, 0.47\", 1.19380E-02",
        "LENGTH, 0.47 in., 1.19380E-02",
        "TEMPERATURE, 110 C, 383.15",
        "TEMPERATURE, 110 \u00b0C, 383.15",
        "TEMPERATURE, 212 F, 373.15",
        "SPEED, 650 RPM, 10.833333"
    })
    void spellingsOfTheTradeHaveTheFactorsOfTheStandard(Dimension dimension, String text, double si) {
        assertEquals(si, Units.parse(text, dimension), Math.abs(si) * 5e-7);
    }

    @Test
    void thePsiOfTheSolverIsThatOfTheTable() {
        assertEquals(Units.parse("1 psi", Dimension.PRESSURE), SetPressure.PSI);
        assertEquals("150 psi (10.3 bar)", SetPressure.told(Units.parse("150 psi", Dimension.PRESSURE)));
    }

    /** The table by which files are read, and the solver, which knows no table. */
    @Test
    void itsFactorIsSpelledNowhereElse() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of(".."))) {
            assertEquals(
                    List.of("SetPressure.java", "UnitTable.java"),
                    files.filter(file -> file.toString().matches(".*/src/main/.*[.]java"))
                            .filter(UnitsTest::spellsPsi)
                            .map(file -> file.getFileName().toString())
                            .sorted()
                            .toList());
        }
    }

    private static boolean spellsPsi(Path file) {
        try {
            String text = Files.readString(file);
            return text.contains("4.44822") || text.contains("6894.7");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "FLOW, 0.5 lpn",
        "TORQUE, 236 fl",
        "SPRING_RATE, 7 kg/m",
        "LENGTH, 3 mn",
        "PRESSURE, 5 mPa",
        "LENGTH, 5 MM"
    })
    void anUnknownUnitListsThoseOfItsKindAndKeepsNoNumberInAnotherSize(Dimension dimension, String text) {
        Units.Amount amount = Units.read(text, dimension);
        assertFalse(amount.good());
        assertEquals(
                "give it in one of these, its number with it: " + String.join(", ", Units.of(dimension)),
                amount.mend());
    }

    @Test
    void theTradesSpellingsStandBesideTheUnits() {
        assertTrue(Units.spellings(Dimension.PRESSURE).containsAll(List.of("psi", "PSI", "kg/cm2")));
        assertEquals(
                Units.of(Dimension.MASS).size() + 1,
                Units.spellings(Dimension.MASS).size());
    }

    @Test
    void aRatioIsABareNumberOrAPercentage() {
        assertEquals("a ratio is a number", Units.read("half", Dimension.RATIO).why());
        assertEquals(
                "a ratio is a bare number or a percentage",
                Units.read("3 psi", Dimension.RATIO).why());
        assertEquals(
                "a length is a number with its unit",
                Units.read("wide", Dimension.LENGTH).why());
    }

    @Test
    void everyOtherSpellingStandsForAUnitOfItsOwnKind() {
        for (Dimension dimension : Dimension.values()) {
            for (String word : Units.spellings(dimension)) {
                assertTrue(Units.read("1 " + word, dimension).good(), word);
            }
        }
    }

    @Test
    void noWordIsTheUnitOfTwoDimensions() {
        Set<String> seen = new HashSet<>();
        for (Dimension dimension : Dimension.values()) {
            Units.of(dimension).forEach(word -> assertTrue(seen.add(word), word));
        }
    }

    @Test
    void aSeriesHasBothItsEnds() {
        assertEquals(List.of(500.0 / 60, 1000.0 / 60, 1200.0 / 60), Units.series("500..1200/500rpm", Dimension.SPEED));
        assertEquals(List.of(40 + 273.15, 95 + 273.15), Units.series("40..95/55 degC", Dimension.TEMPERATURE));
        assertEquals(61, Units.series("500..3500/50rpm", Dimension.SPEED).size());
        assertEquals(List.of(800.0 / 60), Units.series("800rpm", Dimension.SPEED));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "500..3500/0rpm",
                "500..3500/-1rpm",
                "3500..500/50rpm",
                "0..1000000/1rpm",
                "500..3500/50",
                "500..3500",
                "a..b/c"
            })
    void aSeriesThatDoesNotRiseInStepsIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> Units.series(text, Dimension.SPEED));
    }

    /** What a keyboard or a data sheet may have in place of plain letters. */
    @ParameterizedTest
    @CsvSource({
        "LENGTH, 25 \u00b5m, 25e-6",
        "LENGTH, 25 \u03bcm, 25e-6",
        "TEMPERATURE, 95\u00a0\u00b0C, 368.15",
        "AREA, 2\u202fmm\u00b2, 2e-6",
        "DISPLACEMENT, 18\u2009cm\u00b3/rev, 18e-6",
        "PRESSURE, \u22120.5 bar, -50000",
        "TORQUE, 3 N\u00b7m, 3"
    })
    void signsOfADataSheetAreTakenForPlainOnes(Dimension dimension, String text, double si) {
        assertEquals(si, Units.parse(text, dimension), Math.abs(si) * 1e-15);
    }

    @Test
    void theSameNumberIsOfferedInAUnitThatBringsItBetweenTheBounds() {
        assertEquals(
                "14 mm",
                Units.sameNumberBetween("14 um", Dimension.LENGTH, 1e-3, 0.05).orElseThrow());
        assertEquals(
                "14 mm",
                Units.sameNumberBetween(" 14 in ", Dimension.LENGTH, 0.014, 0.014)
                        .orElseThrow());
        assertTrue(Units.sameNumberBetween("14 um", Dimension.LENGTH, 20, 30).isEmpty());
        assertTrue(Units.sameNumberBetween("wide", Dimension.LENGTH, 0, 1).isEmpty());
    }

    @Test
    void aSeriesOfOneValueOfTenThousandStepsAndBeyond() {
        assertEquals(List.of(10.0), Units.series("600..600/50rpm", Dimension.SPEED));
        assertEquals(10_001, Units.series("0..10000/1rpm", Dimension.SPEED).size());
        assertThrows(IllegalArgumentException.class, () -> Units.series("0..10001/1rpm", Dimension.SPEED));
    }

    @Test
    void aFractionIsMendedToItsDecimal() {
        assertEquals("write 0.5 in", Units.read("1/2 in", Dimension.LENGTH).mend());
        assertEquals("write 0.375", Units.read("3/8", Dimension.LENGTH).mend());
        assertFalse(Units.read("3/0 in", Dimension.LENGTH).good());
        assertTrue(Units.read("3/0 in", Dimension.LENGTH).mend().isEmpty());
    }

    @Test
    void whatIsMissingOrOddIsToldWithAnExample() {
        assertEquals(
                "write 95 degF or 95 degC, whichever is meant",
                Units.read("95", Dimension.TEMPERATURE).mend());
        assertEquals(
                "a number without its unit",
                Units.read("95", Dimension.PRESSURE).wrong());
        assertEquals(
                "write 150 psi, for example",
                Units.read("high", Dimension.PRESSURE).mend());
        assertEquals(
                "write 650 rpm, for example",
                Units.read("idle", Dimension.SPEED).mend());
        assertEquals("write 3.7", Units.read("3,7", Dimension.LENGTH).mend());
        assertEquals(
                "which has a decimal comma", Units.read("3,7", Dimension.LENGTH).wrong());
        assertTrue(Units.read("3 furlongs", Dimension.LENGTH).wrong().contains("is no unit of length"));
    }
}
