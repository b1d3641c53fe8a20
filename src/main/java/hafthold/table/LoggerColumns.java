package hafthold.table;

import java.time.DateTimeException;
import java.util.List;

/**
 * Where a logger's file keeps its readings, and how its cells are read. A cell is looked at as text only where it is
 * wrong.
 *
 * @param file name shown in messages
 * @param names all columns
 * @param semicolons whether semicolons stand between the cells, so that commas may be decimal ones
 * @param time column of {@code time} or {@code hour}
 * @param clock whether that column holds dates and times
 * @param temperature column of {@code temperature_c} or {@code temperature_f}
 * @param fahrenheit whether that column is in degrees Fahrenheit
 * @param humidity column of {@code rh_percent}
 */
record LoggerColumns(
        String file,
        List<String> names,
        boolean semicolons,
        int time,
        boolean clock,
        int temperature,
        boolean fahrenheit,
        int humidity) {
    private static final double COLDEST_CELSIUS = -90;
    private static final double HOTTEST_CELSIUS = 70;
    private static final double MOST_HOURS = 1e7;
    /** Humidity of 100 to 105 % is a sensor's drift. */
    private static final double WETTEST_PERCENT = 105;

    /**
     * Finds the columns.
     *
     * @param line line of the header
     * @param header its text
     * @throws InvalidTableException when one is missing
     */
    static LoggerColumns of(String file, long line, String header) {
        boolean semicolons = header.indexOf(';') >= 0;
        List<String> names = List.of(header.split(semicolons ? ";" : ",", -1)).stream()
                .map(LoggerColumns::unquoted)
                .toList();
        boolean clock = names.contains("time");
        boolean fahrenheit = !names.contains("temperature_c") && names.contains("temperature_f");
        require(file, line, header, names, fahrenheit ? "temperature_f" : "temperature_c", "temperature_c (or _f)");
        require(file, line, header, names, "rh_percent", "rh_percent");
        require(file, line, header, names, clock ? "time" : "hour", "time or hour");
        return new LoggerColumns(
                file,
                names,
                semicolons,
                names.indexOf(clock ? "time" : "hour"),
                clock,
                names.indexOf(fahrenheit ? "temperature_f" : "temperature_c"),
                fahrenheit,
                names.indexOf("rh_percent"));
    }

    private static void require(
            String file, long line, String header, List<String> names, String name, String expected) {
        if (!names.contains(name)) {
            throw new InvalidTableException(
                    file,
                    line,
                    name.equals("hour") ? "time" : name,
                    header,
                    "a column named " + expected + " in the header row");
        }
    }

    private static String unquoted(String cell) {
        String bare = cell.strip();
        return bare.length() >= 2 && bare.startsWith("\"") && bare.endsWith("\"")
                ? bare.substring(1, bare.length() - 1)
                : bare;
    }

    /** Rejects a row that is too long or too short. */
    void requireWidth(long line, List<String> cells) {
        if (cells.size() != names.size()) {
            throw new InvalidTableException(
                    file,
                    line,
                    "(all)",
                    String.join(semicolons ? ";" : ",", cells),
                    names.size() + " cells as in the header, found " + cells.size()
                            + "; decimal commas need semicolons between the cells");
        }
    }

    /** Hours since midnight before 1 January of year 0, or of the only year; NaN on 29 February. */
    double hours(long line, List<String> cells, LoggerClock times) {
        if (!clock) {
            return number(line, cells, time, 0, MOST_HOURS);
        }
        try {
            return times.hours(cells.get(time).strip());
        } catch (DateTimeException e) {
            throw row(line, cells)
                    .fault("time", "a date and time such as 2025-01-31T14:30" + DayHint.of(cells.get(time)));
        }
    }

    /** True where a logger lost its reading: an empty cell, or NaN. */
    boolean isBlank(List<String> cells) {
        return isBlank(cells.get(temperature)) || isBlank(cells.get(humidity));
    }

    private static boolean isBlank(String cell) {
        return cell.isBlank() || cell.strip().equalsIgnoreCase("nan");
    }

    /** Temperature, degrees Celsius. */
    double celsius(long line, List<String> cells) {
        return fahrenheit
                ? celsius(number(line, cells, temperature, fahrenheit(COLDEST_CELSIUS), fahrenheit(HOTTEST_CELSIUS)))
                : number(line, cells, temperature, COLDEST_CELSIUS, HOTTEST_CELSIUS);
    }

    /** Humidity in percent as it stands. */
    double percent(long line, List<String> cells) {
        return number(line, cells, humidity, 0, WETTEST_PERCENT);
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    private static double fahrenheit(double celsius) {
        return 1.8 * celsius + 32;
    }

    private double number(long line, List<String> cells, int column, double least, double most) {
        String cell = cells.get(column);
        try {
            double number = Double.parseDouble(semicolons ? cell.replace(',', '.') : cell);
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException e) {
            // Told below, like a number out of range.
        }
        row(line, cells).number(names.get(column), least, most);
        throw row(line, cells).fault(names.get(column), "a number");
    }

    private CsvRow row(long line, List<String> cells) {
        return new CsvRow(
                file,
                line,
                names,
                cells.stream()
                        .map(cell -> semicolons ? cell.replace(',', '.') : cell)
                        .toList());
    }
}
