package hafthold.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Contrast after WCAG 2.2, success criteria 1.4.3 (words, 4.5) and 1.4.11 (lines, 3). Colour blindness after Machado,
 * Oliveira and Fernandes 2009, "A physiologically-based model for simulation of color vision deficiency", IEEE TVCG
 * 15(6), severity 1.0; the matrices are from memory. Colour difference CIE 1976 L*a*b*, D65.
 */
class InkTest {
    private static final List<Ink> WORDS = List.of(Ink.TEXT, Ink.MUTED, Ink.LIMIT, Ink.SHY, Ink.PROUD);
    private static final List<Ink> LINES = List.of(Ink.FIRST, Ink.SECOND, Ink.THIRD, Ink.FOURTH, Ink.FIFTH);
    private static final List<Function<Ink, String>> SHADES = List.of(Ink::lightHex, Ink::darkHex);
    private static final List<double[][]> SIGHTS = List.of(
            new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
            new double[][] {
                {0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}
            },
            new double[][] {
                {0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}
            },
            new double[][] {
                {1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}
            });

    @Test
    void hasNoLightShadeTwice() {
        List<String> shades = Arrays.stream(Ink.values()).map(Ink::lightHex).toList();
        assertEquals(shades.size(), new HashSet<>(shades).size());
    }

    @Test
    void setsWordsWithEnoughContrastOnBothPapers() {
        for (Function<Ink, String> shade : SHADES) {
            WORDS.forEach(ink -> assertTrue(contrast(shade.apply(ink), shade.apply(Ink.PAPER)) >= 4.5, ink + ""));
        }
    }

    @Test
    void drawsLinesWithEnoughContrastOnBothPapers() {
        for (Function<Ink, String> shade : SHADES) {
            LINES.forEach(ink -> assertTrue(contrast(shade.apply(ink), shade.apply(Ink.PAPER)) >= 3, ink + ""));
            assertTrue(contrast(shade.apply(Ink.STEEL), shade.apply(Ink.PAPER)) >= 3);
        }
    }

    @Test
    void keepsFiveLinesApartForEverySight() {
        for (Function<Ink, String> shade : SHADES) {
            for (double[][] sight : SIGHTS) {
                for (Ink one : LINES) {
                    for (Ink other : LINES) {
                        if (one != other) {
                            double difference = distance(
                                    lab(seen(linear(shade.apply(one)), sight)),
                                    lab(seen(linear(shade.apply(other)), sight)));
                            assertTrue(difference >= 20, one + " and " + other + ": " + difference);
                        }
                    }
                }
            }
        }
    }

    @Test
    void keepsFiveLinesApartInGrey() {
        for (Function<Ink, String> shade : SHADES) {
            double[] lightness = LINES.stream()
                    .mapToDouble(ink -> lab(linear(shade.apply(ink)))[0])
                    .sorted()
                    .toArray();
            IntStream.range(1, lightness.length)
                    .forEach(i -> assertTrue(lightness[i] - lightness[i - 1] >= 5, Arrays.toString(lightness)));
        }
    }

    private static double contrast(String a, String b) {
        double one = luminance(linear(a));
        double other = luminance(linear(b));
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    private static double[] linear(String hex) {
        return IntStream.of(1, 3, 5)
                .mapToDouble(i -> Integer.parseInt(hex.substring(i, i + 2), 16) / 255.0)
                .map(c -> c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4))
                .toArray();
    }

    private static double luminance(double[] rgb) {
        return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
    }

    private static double[] seen(double[] rgb, double[][] sight) {
        return Arrays.stream(sight)
                .mapToDouble(row -> row[0] * rgb[0] + row[1] * rgb[1] + row[2] * rgb[2])
                .map(c -> Math.max(0, Math.min(1, c)))
                .toArray();
    }

    private static double[] lab(double[] rgb) {
        double x = bend((0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.95047);
        double y = bend(luminance(rgb));
        double z = bend((0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.08883);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double bend(double t) {
        return t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116.0;
    }

    private static double distance(double[] a, double[] b) {
        return Math.sqrt(IntStream.range(0, 3)
                .mapToDouble(i -> (a[i] - b[i]) * (a[i] - b[i]))
                .sum());
    }
}
