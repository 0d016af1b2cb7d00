package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
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

    /**
     * Linear sRGB as eyes see it that lack a cone: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, IEEE Trans. Vis. Comput.
     * Graph. 15, 2009, p. 1291, severity 1.0 (from memory).
     */
    private enum Eyes {
        PROTANOPE(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
        DEUTERANOPE(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
        TRITANOPE(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

        private final double[] matrix;

        Eyes(double... matrix) {
            this.matrix = matrix;
        }

        Color see(Color colour) {
            double[] in = {linear(colour.getRed()), linear(colour.getGreen()), linear(colour.getBlue())};
            int[] out = new int[3];
            for (int i = 0; i < 3; i++) {
                double sum = matrix[3 * i] * in[0] + matrix[3 * i + 1] * in[1] + matrix[3 * i + 2] * in[2];
                out[i] = (int) Math.round(255 * coded(Math.min(1, Math.max(0, sum))));
            }
            return new Color(out[0], out[1], out[2]);
        }

        private static double linear(int channel) {
            double s = channel / 255.0;
            return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
        }

        private static double coded(double linear) {
            return linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
        }
    }

    /** Lightness of each dot of a field of the map as it is drawn, hatch and all. */
    private static DoubleSummaryStatistics field(double headroom, UnaryOperator<Color> eyes) {
        int size = 60;
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        MapDrawing.ground(g, headroom, 10, new Rectangle2D.Double(0, 0, size, size));
        g.dispose();
        return Arrays.stream(image.getRGB(2, 2, size - 4, size - 4, null, 0, size - 4))
                .mapToDouble(rgb -> Palette.lightness(eyes.apply(new Color(rgb))))
                .summaryStatistics();
    }

    private static List<UnaryOperator<Color>> allEyes() {
        List<UnaryOperator<Color>> all = new ArrayList<>(List.of(UnaryOperator.identity()));
        Stream.of(Eyes.values()).forEach(eyes -> all.add(eyes::see));
        return all;
    }

    /** Fails just so, narrow, holds just so: flat fields that differ in lightness to all eyes, and so in grey print. */
    @Test
    void failsNarrowAndHoldsAreToldApartByColourBlindEyes() {
        for (UnaryOperator<Color> eyes : allEyes()) {
            double fails = field(-1, eyes).getAverage();
            double narrow = field(5, eyes).getAverage();
            double holds = field(11, eyes).getAverage();
            assertTrue(narrow - fails >= HeadroomShade.LEAST_LEAP, fails + " fails, narrow " + narrow);
            assertTrue(holds - narrow >= HeadroomShade.LEAST_LEAP, narrow + " narrow, holds " + holds);
        }
    }

    /** What is not known is crossed by dark lines on white, which no other field is: none of them needs colour to be told from it. */
    @Test
    void whatIsNotKnownIsToldFromAllElseByItsHatch() {
        for (UnaryOperator<Color> eyes : allEyes()) {
            DoubleSummaryStatistics open = field(Double.NaN, eyes);
            assertTrue(open.getMax() - open.getMin() >= 50, open.toString());
            for (double headroom : new double[] {-60, -30, -1, 5, 11, 60}) {
                DoubleSummaryStatistics flat = field(headroom, eyes);
                assertEquals(0, flat.getMax() - flat.getMin(), 1e-9, "headroom " + headroom);
            }
        }
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
