package hafthold.table;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is wrong with a day that the calendar does not have. */
final class DayHint {
    private static final Pattern DAY = Pattern.compile("\\s*\\d{4}-(\\d{2})-(\\d{2}).*");
    private static final int MONTHS = 12;
    private static final int LONGEST_MONTH = 31;

    private DayHint() {}

    /** Such as "; there is no month 13"; empty where the form itself is wrong. */
    static String of(String typed) {
        Matcher day = DAY.matcher(typed);
        if (!day.matches()) {
            return "";
        }
        int month = Integer.parseInt(day.group(1));
        int ofMonth = Integer.parseInt(day.group(2));
        if (month < 1 || month > MONTHS) {
            return "; there is no month " + month;
        }
        return ofMonth < 1 || ofMonth > LONGEST_MONTH ? "; there is no day " + ofMonth + " in a month" : "";
    }
}
