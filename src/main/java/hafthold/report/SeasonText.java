package hafthold.report;

import hafthold.decide.Season;
import hafthold.decide.SeasonAnswer;
import hafthold.source.Finding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A season as a note for the bench: what to do today first, then the best weeks, then the year and the cuts.
 *
 * @param style language and units
 */
public record SeasonText(BenchStyle style) {
    private static final int WIDTH = 100;
    private static final Integer[] OVERVIEW = {20, 7, 24, 6, 11, 14, 7, 11};
    private static final Integer[] YEAR = {12, 5, 5, 7, 13, 13, 9, 7, 7, 6};
    private static final Integer[] CUTS = {8, 24, 12, 12, 10, 8};

    /** The whole note, ending in a line feed. */
    public String of(Season season) {
        SeasonTables tables = new SeasonTables(style, season);
        SeasonSituation situation = new SeasonSituation(style);
        StringBuilder text = new StringBuilder(situation.title(season)).append("\n\n");
        if (season.answers().size() > 1) {
            table(
                    text,
                    style.say("season.caption.overview", "unit", style.unit()),
                    OVERVIEW,
                    tables.overviewHead(),
                    tables.overview());
        }
        season.answers().forEach(answer -> answer(text, season, answer));
        if (season.answers().size() == 1) {
            SeasonAnswer only = season.answers().get(0);
            table(
                    text,
                    style.say("season.caption.year", "material", only.scale().name(), "unit", style.unit()),
                    YEAR,
                    tables.yearHead(),
                    tables.months(only));
            text.append(Paragraph.hanging("  ", situation.yearNote(season), WIDTH))
                    .append('\n');
        }
        cuts(text, season, tables);
        TextColumns columns = new TextColumns(9, WIDTH - 11);
        situation.of(season).forEach(columns::row);
        text.append(columns.text()).append('\n');
        new BenchNote(style, text)
                .restsOn(FindingDigest.of(style, season.findings(), names(season)).stream()
                        .filter(digest -> digest.kind() != Finding.Kind.CAUTION)
                        .toList());
        return text.toString();
    }

    private void answer(StringBuilder text, Season season, SeasonAnswer answer) {
        SeasonWords words = new SeasonWords(style, season, answer);
        String indent = "";
        if (season.answers().size() > 1) {
            text.append(BenchStyle.capital(words.material())).append('\n');
            indent = "  ";
        }
        paragraph(text, indent, words.finish());
        paragraph(text, indent, words.best());
        paragraph(text, indent, List.of(new SeasonAllowance(style, season, answer).words()));
        paragraph(text, indent, new SeasonGlue(style, season, answer).sentences());
        text.append('\n');
    }

    private static void paragraph(StringBuilder text, String indent, List<String> sentences) {
        text.append(Paragraph.hanging(indent, String.join(" ", sentences), WIDTH));
    }

    /** Each wood once, whatever cuts were asked for. */
    private void cuts(StringBuilder text, Season season, SeasonTables tables) {
        Map<String, SeasonAnswer> woods = new LinkedHashMap<>();
        season.answers().stream()
                .filter(answer -> !answer.cuts().isEmpty())
                .forEach(answer -> woods.putIfAbsent(answer.scale().id(), answer));
        woods.values().forEach(answer -> {
            table(
                    text,
                    style.say(
                            "season.caption.cuts.today",
                            "material",
                            answer.scale().name(),
                            "unit",
                            style.unit()),
                    CUTS,
                    tables.cutsHead(),
                    tables.cuts(answer, true));
            if (!answer.anyWeek()) {
                table(
                        text,
                        style.say(
                                "season.caption.cuts.best",
                                "material",
                                answer.scale().name(),
                                "unit",
                                style.unit()),
                        CUTS,
                        tables.cutsHead(),
                        tables.cuts(answer, false));
            }
        });
    }

    private void table(
            StringBuilder text, String caption, Integer[] widths, List<String> head, List<List<String>> rows) {
        text.append(caption).append('\n');
        new BenchNote(style, text).table("  ", widths, head, rows);
        text.append('\n');
    }

    /** Names for people by the ids that findings speak of. */
    static Map<String, String> names(Season season) {
        Map<String, String> names = new LinkedHashMap<>();
        season.answers()
                .forEach(answer -> names.put(answer.scale().id(), answer.scale().name()));
        return names;
    }
}
