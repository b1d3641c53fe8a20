package hafthold.report;

import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas;
import hafthold.decide.Atlas.Line;
import hafthold.decide.AtlasSurprise;
import hafthold.decide.AtlasSurprises;
import hafthold.decide.Tally;
import hafthold.decide.Verdict;
import hafthold.material.Family;
import hafthold.source.Finding;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * An atlas as it is read in a terminal of about a hundred columns.
 *
 * @param named true where materials were named: each then gets its sentence
 */
public record AtlasText(boolean named) {
    private static final int WIDTH = 100;
    private static final int MOST_SENTENCES = 12;

    /** The whole answer, ending in a line feed. */
    public String of(Atlas atlas) {
        StringBuilder text = new StringBuilder(AtlasWords.title(atlas)).append("\n\n");
        text.append(situation(atlas)).append('\n');
        text.append(Paragraph.hanging("", AtlasWords.lead(atlas), WIDTH)).append('\n');
        text.append(overview(atlas)).append('\n');
        for (ClimateGroup climate : atlas.climates()) {
            text.append(climate(atlas, climate)).append('\n');
        }
        sentences(atlas, text);
        surprises(atlas, text);
        foundations(atlas, text);
        return text.toString();
    }

    private static String situation(Atlas atlas) {
        TextColumns columns = new TextColumns(8, WIDTH - 10);
        columns.row("Live", SituationWords.lives(atlas.setting(), atlas.settingRule()));
        columns.row("Made at", SituationWords.made(atlas.madeTemperature(), atlas.madeHumidity(), atlas.finishName()));
        columns.row("Handle", SituationWords.handle(atlas.handle(), LengthUnits.MM));
        columns.row("Signs", VerdictSign.key() + "; steps are the year's worst, a side");
        return columns.text();
    }

    /** Family by climate: the verdict that more than half of the pairs keep, and the share that stays. */
    private static String overview(Atlas atlas) {
        Integer[] widths = new Integer[1 + atlas.climates().size()];
        Arrays.fill(widths, 8);
        widths[0] = 13;
        TextColumns columns = new TextColumns(widths);
        columns.row(cells("", atlas, climate -> climate.words()));
        for (Family family : atlas.families()) {
            columns.row(cells(AtlasWords.plain(family), atlas, climate -> {
                Tally tally = AtlasWords.tally(atlas, family, climate);
                return VerdictSign.of(tally.usual()) + " " + Math.round(100 * tally.share(Verdict.STAYS)) + "%";
            }));
        }
        return columns.text() + "What more than half of the pairs keep, and how many of them stay\n";
    }

    private static String[] cells(String first, Atlas atlas, Function<ClimateGroup, String> cell) {
        return Stream.concat(Stream.of(first), atlas.climates().stream().map(cell))
                .toArray(String[]::new);
    }

    private static String climate(Atlas atlas, ClimateGroup climate) {
        int places = atlas.placesOf(climate).size();
        TextColumns columns = new TextColumns(13, 3, 3, 3, 3, 3, 62);
        columns.row("", "st", "ca", "ch", "re", "un", "Best, and its edge steps over the places");
        for (Family family : atlas.families()) {
            Tally tally = AtlasWords.tally(atlas, family, climate);
            columns.row(
                    AtlasWords.plain(family),
                    share(tally, Verdict.STAYS),
                    share(tally, Verdict.CARE),
                    share(tally, Verdict.CHANGE),
                    share(tally, Verdict.REFUSE),
                    share(tally, Verdict.UNKNOWN),
                    Paragraph.plain(AtlasWords.bestWords(atlas, family, climate)));
        }
        return Paragraph.hanging(
                        "",
                        climate.words() + ", " + places + (places == 1 ? " place" : " places") + " (" + climate.rule()
                                + "), percent of pairs",
                        WIDTH)
                + columns.text();
    }

    private static String share(Tally tally, Verdict verdict) {
        return tally.of(verdict) == 0 ? "–" : Long.toString(Math.round(100 * tally.share(verdict)));
    }

    private void sentences(Atlas atlas, StringBuilder text) {
        if (!named) {
            return;
        }
        text.append("Where it stays\n");
        WhereItStays where = new WhereItStays(atlas);
        for (Line line : atlas.lines().stream().limit(MOST_SENTENCES).toList()) {
            text.append(Paragraph.hanging("  - ", AtlasWords.nameOf(line) + ": " + where.sentence(line), WIDTH));
        }
        if (atlas.lines().size() > MOST_SENTENCES) {
            text.append("  ")
                    .append(atlas.lines().size() - MOST_SENTENCES)
                    .append(" more stand in the page and the JSON.\n");
        }
        text.append('\n');
    }

    private static void surprises(Atlas atlas, StringBuilder text) {
        List<AtlasSurprise> surprises = AtlasSurprises.of(atlas);
        if (!surprises.isEmpty()) {
            text.append("What one might not have guessed\n");
            surprises.forEach(surprise -> text.append(Paragraph.hanging("  - ", AtlasWords.sentence(surprise), WIDTH)));
            text.append('\n');
        }
    }

    private static void foundations(Atlas atlas, StringBuilder text) {
        text.append("What this rests on\n");
        text.append(Paragraph.hanging("  - ", AtlasWords.basis(), WIDTH));
        FindingDigest.of(atlas.findings(), Map.of()).stream()
                .filter(digest -> digest.kind() != Finding.Kind.CAUTION)
                .forEach(digest -> text.append(Paragraph.hanging("  - ", digest.lead() + digest.text(), WIDTH)));
        text.append("  What single materials rest on is told by the page, the JSON and 'hafthold materials ID'.\n");
    }
}
