package hafthold.report;

import java.util.List;

/** English names of months; written here because the short ones change between Java versions. */
public final class MonthWord {
    private static final List<String> NAMES = List.of(
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December");

    private MonthWord() {}

    /** Full name of month 1 to 12. */
    public static String of(int month) {
        return NAMES.get(month - 1);
    }

    /** First three letters of the name of month 1 to 12. */
    public static String shortOf(int month) {
        return of(month).substring(0, 3);
    }
}
