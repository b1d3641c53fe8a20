package hafthold.report;

import hafthold.decide.DaySpan;
import hafthold.decide.Season;
import hafthold.decide.SeasonAnswer;
import hafthold.decide.SeasonWeek;
import java.util.ArrayList;
import java.util.List;

/** A season as CSV: one row a material and week, what comes of a scale that is sanded flush in it. */
public final class SeasonCsv {
    private static final double MILLI = 1e3;
    private static final double PERCENT = 100;

    private SeasonCsv() {}

    /** Header and rows. */
    public static String of(Season season) {
        List<String> head = new ArrayList<>(List.of(
                "from",
                "to",
                "is_today",
                "is_best",
                "temperature_c",
                "rh_percent",
                "mc_blank_percent",
                "mc_surface_percent",
                "mc_core_percent",
                "leave_proud_low_mm",
                "leave_proud_value_mm",
                "leave_proud_high_mm"));
        head.addAll(CsvFigures.columns());
        head.addAll(CsvFigures.verdictColumns());
        StringBuilder text = new StringBuilder(String.join(",", head)).append('\n');
        int rank = 0;
        for (SeasonAnswer answer : season.answers()) {
            rank++;
            for (int week = 0; week < answer.weeks().size(); week++) {
                text.append(String.join(",", quoted(cells(answer, week, rank)))).append('\n');
            }
        }
        return text.toString();
    }

    private static List<String> cells(SeasonAnswer answer, int number, int rank) {
        SeasonWeek week = answer.weeks().get(number);
        List<String> cells = new ArrayList<>(List.of(
                SeasonJson.day(week.blank().firstDay()),
                SeasonJson.day(week.blank().lastDay()),
                Boolean.toString(number == answer.now()),
                Boolean.toString(isBest(answer, week)),
                CsvFigures.number(week.blank().celsius()),
                CsvFigures.number(PERCENT * week.blank().humidityFraction()),
                CsvFigures.number(PERCENT * week.blank().meanFraction()),
                CsvFigures.number(PERCENT * week.blank().surfaceFraction()),
                CsvFigures.number(PERCENT * week.blank().coreFraction()),
                CsvFigures.number(MILLI * week.allowance().proud().low()),
                CsvFigures.number(MILLI * week.allowance().proud().value()),
                CsvFigures.number(MILLI * week.allowance().proud().high())));
        cells.addAll(CsvFigures.cells(rank, week.year()));
        cells.addAll(CsvFigures.verdict(week.year(), week.verdict(), week.keeps()));
        return cells;
    }

    static boolean isBest(SeasonAnswer answer, SeasonWeek week) {
        for (DaySpan span : answer.best()) {
            if (span.has(week.blank().firstDay())) {
                return true;
            }
        }
        return false;
    }

    private static List<String> quoted(List<String> cells) {
        return cells.stream()
                .map(cell -> cell.contains(",") || cell.contains("\"") ? '"' + cell.replace("\"", "\"\"") + '"' : cell)
                .toList();
    }
}
