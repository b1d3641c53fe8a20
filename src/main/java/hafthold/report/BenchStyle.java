package hafthold.report;

import hafthold.decide.Verdict;
import hafthold.knife.FitLimits;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.quantity.Length;
import hafthold.report.chart.ChartWords;
import hafthold.source.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How a bench reads its reports: in which language, with which units and decimal mark. Every text of a report goes
 * through it, so that a second language is one file; see {@link Wording}.
 *
 * @param units units of movements
 * @param words the language's texts
 */
public record BenchStyle(LengthUnits units, Wording words) implements ChartWords {
    /** English and millimetres. */
    public static final BenchStyle ENGLISH = new BenchStyle(LengthUnits.MM, Wording.english());

    private static final List<String> SUBJECTS = List.of("subject", "setting", "family", "event");
    private static final int COMMON_YEAR = 2023;
    private static final int HOURS_A_DAY = 24;
    private static final double MILLI = 1000;
    private static final double METRES_PER_THOU = 0.0254e-3;
    private static final double MILLIMETRES_PER_INCH = 25.4;

    /** The text of a key of the bench, its holes filled. */
    @Override
    public String say(String key, String... filling) {
        return words.say("bench." + key, filling);
    }

    /** A message in words. */
    public String tell(Message message) {
        return message.in(new SpokenWords(this));
    }

    /** The text for one or for many, with their count. */
    String counted(String key, long count) {
        return say(key + (count == 1 ? ".one" : ".many"), "count", Long.toString(count));
    }

    /** Texts joined as the language joins them. */
    String joined(String key, List<String> parts) {
        return String.join(say(key), parts);
    }

    /** Headings of columns, each under its key. */
    List<String> heads(String... keys) {
        return Arrays.stream(keys).map(key -> say("head." + key)).toList();
    }

    /** A constant's name as it stands in keys. */
    String keyOf(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The text of something that has a name of its own; its name where the language has no text for it. */
    String named(String kind, String id) {
        String key = "bench." + kind + "." + id.toLowerCase(Locale.ROOT).replace('_', '-');
        return words.has(key) ? words.say(key) : id.replace('-', ' ');
    }

    /** What a note is about, by its word; where the language has no text for it, as it is. */
    String subject(String word) {
        String id = word.replace(' ', '-');
        return SUBJECTS.stream()
                .filter(kind -> words.has("bench." + kind + "." + id))
                .findFirst()
                .map(kind -> named(kind, id))
                .orElseGet(() -> word.replace('-', ' '));
    }

    String verdict(Verdict verdict) {
        return named("verdict", verdict.word());
    }

    String cut(Cut cut) {
        return named("cut", cut.name());
    }

    /** A cut in one word for a table; a dash for what has none. */
    String shortCut(Cut cut) {
        return cut == Cut.NONE ? "–" : named("short-cut", cut.name());
    }

    String family(Family family) {
        return named("family", family.word());
    }

    /** The name of a class of work. */
    String work(FitLimits limits) {
        return named("work", limits.name());
    }

    /** Name of month 1 to 12. */
    String month(int month) {
        return words.month(month);
    }

    @Override
    public String shortMonth(int month) {
        return words.say("month.short." + month);
    }

    @Override
    public String number(String plain) {
        return words.number(plain);
    }

    /** The day of an hour counted from 1 January, such as "15 January". */
    String dayOfHour(int hour) {
        LocalDate day = LocalDate.ofYearDay(COMMON_YEAR, 1).plusDays(hour / HOURS_A_DAY);
        return say("day-of-month", "day", Integer.toString(day.getDayOfMonth()), "month", month(day.getMonthValue()));
    }

    /** A number with fixed decimals. */
    String fixed(double number, int decimals) {
        return number(BigDecimal.valueOf(number)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString());
    }

    /** Likewise, with its sign. */
    String signed(double number, int decimals) {
        return (number < 0 ? "" : "+") + fixed(number, decimals);
    }

    /** A setting of the user as typed: no rounding, no trailing zeros. */
    String plain(double number) {
        return number(AnswerWords.plain(number));
    }

    /** A fraction as percent with one digit. */
    String percent(double fraction) {
        return fixed(100 * fraction, 1);
    }

    /** The unit of movements, such as "mm". */
    @Override
    public String unit() {
        return words.say(isThou() ? "unit.thou" : "unit.mm");
    }

    /** A movement as a number in the unit of movements, for pictures. */
    double shown(double metres) {
        return isThou() ? metres / METRES_PER_THOU : MILLI * metres;
    }

    /** A movement without its unit, to a hundredth of a millimetre or a tenth of a thou. */
    @Override
    public String hundredths(double metres) {
        return fixed(shown(metres), isThou() ? 1 : 2);
    }

    /** Likewise, a digit finer where millimetres are asked for: for tables of numbers. */
    String thousandths(double metres) {
        return fixed(shown(metres), isThou() ? 1 : 3);
    }

    /** A limit without its unit. */
    String limit(Length limit) {
        return isThou() ? hundredths(limit.metres()) : plain(limit.millimetres());
    }

    /** A number with its unit, held together. */
    String withUnit(String number) {
        return number + Paragraph.HOLD + unit();
    }

    /** A dimension of a knife, to the nearest 0.001 mm, in inches for those who read thou. */
    String size(Length length) {
        return isThou()
                ? fixed(length.millimetres() / MILLIMETRES_PER_INCH, 3) + " " + say("unit.inch")
                : plain(Math.rint(MILLI * length.millimetres()) / MILLI) + " " + words.say("unit.mm");
    }

    /** Likewise, in inches beside millimetres for those who read both. */
    String dimension(Length length) {
        return size(length)
                + (units == LengthUnits.BOTH
                        ? " (" + fixed(length.millimetres() / MILLIMETRES_PER_INCH, 3) + " " + say("unit.inch") + ")"
                        : "");
    }

    /** A text as a sentence begins. */
    static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** The same where there is room for one unit only. */
    BenchStyle mainUnit() {
        return isBoth() ? new BenchStyle(LengthUnits.MM, words) : this;
    }

    boolean isThou() {
        return units == LengthUnits.THOU;
    }

    boolean isBoth() {
        return units == LengthUnits.BOTH;
    }
}
