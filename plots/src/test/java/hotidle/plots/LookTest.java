package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pictures must be read in grey and by colour-blind eyes. */
class LookTest {

    /** CIE 1976: black 0, white 100; the middle grey 119 of sRGB has L* = 50 (50.03). */
    @Test
    void lightnessIsThatOfCie1976() {
        assertEquals(0, Palette.lightness(Color.BLACK), 1e-9);
        assertEquals(100, Palette.lightness(Color.WHITE), 1e-6);
        assertEquals(50.03, Palette.lightness(new Color(119, 119, 119)), 0.01);
    }

    @Test
    void neighbouringBandsDifferInLightness() {
        for (int i = 1; i < BandLook.ALL.size(); i++) {
            double step = Math.abs(lightness(i) - lightness(i - 1));
            assertTrue(step >= BandLook.LEAST_STEP, "bands " + (i - 1) + " and " + i + " differ by " + step);
        }
    }

    @Test
    void noTwoBandsHaveColourAndHatchInCommon() {
        assertEquals(BandLook.ALL.size(), BandLook.ALL.stream().distinct().count());
    }

    /** WCAG 2.1, success criterion 1.4.3, large text: contrast at least 3:1, (Y1 + 0.05)/(Y2 + 0.05). */
    @Test
    void textOnABandCanBeRead() {
        for (BandLook look : BandLook.ALL) {
            double one = luminance(look.fill());
            double two = luminance(look.text());
            double contrast = (Math.max(one, two) + 0.05) / (Math.min(one, two) + 0.05);
            assertTrue(contrast >= 3, look + " has contrast " + contrast);
        }
    }

    @Test
    void dashesColoursAndMarkersAreUnique() {
        List<LineLook> all = LineLook.ALL;
        assertEquals(all.size(), all.stream().map(LineLook::dashes).distinct().count());
        assertEquals(all.size(), all.stream().map(LineLook::colour).distinct().count());
        assertEquals(all.size(), all.stream().map(LineLook::marker).distinct().count());
    }

    @Test
    void theFirstFourCurvesDifferInLightness() {
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < i; j++) {
                double step = Math.abs(Palette.lightness(LineLook.ALL.get(i).colour())
                        - Palette.lightness(LineLook.ALL.get(j).colour()));
                assertTrue(step >= 11, "curves " + i + " and " + j + " differ by " + step);
            }
        }
    }

    /** Printed in grey a map says the same: the more is left, the lighter, with a leap between fails, narrow and holds. */
    @Test
    void whatFailsIsNarrowAndHoldsIsFarApartInGrey() {
        double[] grey = HeadroomShade.all(10).stream()
                .mapToDouble(shade -> Palette.lightness(shade.fill()))
                .toArray();
        for (int i = 1; i < grey.length; i++) {
            assertTrue(
                    grey[i] - grey[i - 1] >= 4,
                    "shades " + (i - 1) + " and " + i + ": " + grey[i - 1] + ", " + grey[i]);
        }
        assertTrue(grey[3] - grey[2] >= HeadroomShade.LEAST_LEAP, "fails and narrow: " + grey[2] + ", " + grey[3]);
        assertTrue(grey[4] - grey[3] >= HeadroomShade.LEAST_LEAP, "narrow and holds: " + grey[3] + ", " + grey[4]);
        assertTrue(grey[4] - grey[2] >= 2 * HeadroomShade.LEAST_LEAP, "fails and holds");
    }

    /** Letters stand on it: WCAG 2.1, success criterion 1.4.3, contrast at least 4.5:1. */
    @Test
    void aBlackLetterCanBeReadOnEveryShade() {
        for (HeadroomShade shade : HeadroomShade.all(10)) {
            double contrast = (luminance(shade.fill()) + 0.05) / 0.05;
            assertTrue(contrast >= 4.5, shade + " has contrast " + contrast);
        }
    }

    @Test
    void noFontIsSmallerThanTwelve() {
        List.of(Style.TITLE, Style.AXIS, Style.SMALL, Style.LABEL)
                .forEach(font -> assertTrue(font.getSize() >= 12, font.toString()));
    }

    private static double lightness(int band) {
        return Palette.lightness(BandLook.ALL.get(band).fill());
    }

    /** Relative luminance back from L*. */
    private static double luminance(Color colour) {
        double l = Palette.lightness(colour);
        return l > 8 ? Math.pow((l + 16) / 116, 3) : l / 903.3;
    }
}
