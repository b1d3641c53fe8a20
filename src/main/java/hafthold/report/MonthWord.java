package hafthold.report;

import java.time.Month;
import java.util.Locale;

/** English names of months, from the names Java fixes; the localised short ones change between Java versions. */
public final class MonthWord {
    private static final int SHORT = 3;

    private MonthWord() {}

    /** Full name of month 1 to 12. */
    public static String of(int month) {
        String name = Month.of(month).name();
        return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
    }

    /** First three letters of the name of month 1 to 12. */
    public static String shortOf(int month) {
        return of(month).substring(0, SHORT);
    }
}
