package hafthold.air;

/** The calendar of a year of 365 days that repeats for ever; months are 1 to 12, days and hours count from 0. */
public final class CommonYear {
    /** Months. */
    public static final int MONTHS = 12;
    /** Days. */
    public static final int DAYS = 365;
    /** Hours of a day. */
    public static final int HOURS_A_DAY = 24;
    /** Hours. */
    public static final int HOURS = DAYS * HOURS_A_DAY;

    private static final int[] DAYS_OF_MONTH = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    private static final int[] FIRST_DAY = new int[MONTHS + 1];
    private static final int[] MONTH_OF_DAY = new int[DAYS];

    static {
        for (int month = 1; month <= MONTHS; month++) {
            FIRST_DAY[month] = FIRST_DAY[month - 1] + DAYS_OF_MONTH[month - 1];
            for (int day = FIRST_DAY[month - 1]; day < FIRST_DAY[month]; day++) {
                MONTH_OF_DAY[day] = month;
            }
        }
    }

    private CommonYear() {}

    /** Lengths of the months in days, January first. */
    public static int[] monthLengths() {
        return DAYS_OF_MONTH.clone();
    }

    /** Days in a month. */
    public static int daysOfMonth(int month) {
        return DAYS_OF_MONTH[month - 1];
    }

    /** First day of a month, counted from 0 on 1 January. */
    public static int firstDay(int month) {
        return FIRST_DAY[month - 1];
    }

    /** Month of a day counted from 0 on 1 January. */
    public static int monthOfDay(int day) {
        return MONTH_OF_DAY[day];
    }

    /** Month of an hour counted from 0 at midnight before 1 January. */
    public static int monthOfHour(int hour) {
        return MONTH_OF_DAY[hour / HOURS_A_DAY];
    }
}
