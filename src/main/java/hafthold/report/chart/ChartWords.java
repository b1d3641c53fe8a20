package hafthold.report.chart;

/** The words and numbers a picture writes by itself, in the language of the report it stands in. */
public interface ChartWords {
    /**
     * A text with its holes filled.
     *
     * @param key its key among the texts of the bench
     * @param filling names of holes and what goes into them, in turn
     */
    String say(String key, String... filling);

    /** Short name of month 1 to 12. */
    String shortMonth(int month);

    /** A number as Java prints it, such as 0.15, in the language's style. */
    String number(String plain);

    /** A movement in metres as a number in the reader's unit. */
    String hundredths(double metres);

    /** The reader's unit of movements. */
    String unit();
}
