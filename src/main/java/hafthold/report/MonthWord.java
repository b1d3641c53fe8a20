package hafthold.report;

/** English names of months, from our own texts: the localised short ones of Java change between its versions. */
public final class MonthWord {
    private MonthWord() {}

    /** Full name of month 1 to 12. */
    public static String of(int month) {
        return Wording.english().month(month);
    }

    /** First three letters of the name of month 1 to 12. */
    public static String shortOf(int month) {
        return Wording.english().say("month.short." + month);
    }
}
