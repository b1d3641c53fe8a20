package hafthold.report;

import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.source.Language;
import java.util.Map;

/**
 * Messages in the language and the units of a bench.
 *
 * @param style language and units
 */
record SpokenWords(BenchStyle style) implements Language {

    @Override
    public String say(String key, Map<String, String> filling) {
        return style.words().say(key, filling);
    }

    @Override
    public String sayOr(String key, String words) {
        return style.words().has(key) ? style.words().say(key) : words;
    }

    @Override
    public String number(double number, int decimals) {
        return style.fixed(number, decimals);
    }

    @Override
    public String number(Band band, int decimals) {
        return range(
                style.fixed(band.value(), decimals),
                style.fixed(band.low(), decimals),
                style.fixed(band.high(), decimals),
                band);
    }

    @Override
    public String size(Length length) {
        return style.dimension(length);
    }

    @Override
    public String movement(Band metres) {
        String main = movement(metres, style.mainUnit());
        return style.isBoth()
                ? style.say(
                        "either", "mm", main, "thou", movement(metres, new BenchStyle(LengthUnits.THOU, style.words())))
                : main;
    }

    private static String movement(Band metres, BenchStyle style) {
        String range = new SpokenWords(style)
                .range(
                        style.hundredths(metres.value()),
                        style.hundredths(metres.low()),
                        style.hundredths(metres.high()),
                        metres);
        return range + " " + style.unit();
    }

    private String range(String value, String low, String high, Band band) {
        return band.isExact() ? value : style.say("range", "value", value, "low", low, "high", high);
    }
}
