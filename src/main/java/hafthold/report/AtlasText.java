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
 * @param style language and units
 * @param named true where materials were named: each then gets its sentence
 */
public record AtlasText(BenchStyle style, boolean named) {
    private static final int WIDTH = 100;
    private static final int MOST_SENTENCES = 12;

    /** The whole answer, ending in a line feed. */
    public String of(Atlas atlas) {
        AtlasWords words = new AtlasWords(style);
        StringBuilder text = new StringBuilder(words.title(atlas)).append("\n\n");
        text.append(situation(atlas)).append('\n');
        text.append(Paragraph.hanging("", words.lead(atlas), WIDTH)).append('\n');
        text.append(overview(atlas)).append('\n');
        for (ClimateGroup climate : atlas.climates()) {
            text.append(climate(atlas, climate)).append('\n');
        }
        sentences(atlas, text);
        surprises(atlas, text);
        foundations(atlas, text);
        return text.toString();
    }

    private String situation(Atlas atlas) {
        SituationWords words = new SituationWords(style);
        TextColumns columns = new TextColumns(8, WIDTH - 10);
        columns.row(style.say("row.live"), words.lives(atlas.setting(), atlas.settingRule()));
        columns.row(
                style.say("row.made-at"),
                words.made(atlas.madeTemperature(), atlas.madeHumidity(), atlas.finishName()));
        columns.row(style.say("row.handle"), words.handle(atlas.handle()));
        columns.row(style.say("row.signs"), style.say("atlas.signs", "signs", new VerdictSign(style).key()));
        return columns.text();
    }

    /** Family by climate: the verdict that more than half of the pairs keep, and the share that stays. */
    private String overview(Atlas atlas) {
        Integer[] widths = new Integer[1 + atlas.climates().size()];
        Arrays.fill(widths, 8);
        widths[0] = 13;
        AtlasWords words = new AtlasWords(style);
        TextColumns columns = new TextColumns(widths);
        columns.row(cells("", atlas, words::climate));
        for (Family family : atlas.families()) {
            columns.row(cells(style.family(family), atlas, climate -> {
                Tally tally = AtlasWords.tally(atlas, family, climate);
                return new VerdictSign(style).of(tally.usual()) + " " + Math.round(100 * tally.share(Verdict.STAYS))
                        + "%";
            }));
        }
        return columns.text() + style.say("atlas.overview") + "\n";
    }

    private static String[] cells(String first, Atlas atlas, Function<ClimateGroup, String> cell) {
        return Stream.concat(Stream.of(first), atlas.climates().stream().map(cell))
                .toArray(String[]::new);
    }

    private String climate(Atlas atlas, ClimateGroup climate) {
        VerdictSign sign = new VerdictSign(style);
        AtlasWords words = new AtlasWords(style);
        TextColumns columns = new TextColumns(13, 3, 3, 3, 3, 3, 62);
        columns.row(row("", sign::of, style.say("atlas.best")));
        for (Family family : atlas.families()) {
            Tally tally = AtlasWords.tally(atlas, family, climate);
            columns.row(row(
                    style.family(family),
                    verdict -> share(tally, verdict),
                    Paragraph.plain(words.bestWords(atlas, family, climate))));
        }
        return Paragraph.hanging(
                        "",
                        style.say(
                                "atlas.climate", "climate", words.places(atlas, climate), "rule", words.rule(climate)),
                        WIDTH)
                + columns.text();
    }

    private static String[] row(String first, Function<Verdict, String> cell, String last) {
        return Stream.of(Stream.of(first), Arrays.stream(Verdict.values()).map(cell), Stream.of(last))
                .flatMap(cells -> cells)
                .toArray(String[]::new);
    }

    private static String share(Tally tally, Verdict verdict) {
        return tally.of(verdict) == 0 ? "–" : Long.toString(Math.round(100 * tally.share(verdict)));
    }

    private void sentences(Atlas atlas, StringBuilder text) {
        if (!named) {
            return;
        }
        text.append(style.say("heading.where")).append('\n');
        WhereItStays where = new WhereItStays(atlas, style);
        AtlasWords words = new AtlasWords(style);
        for (Line line : atlas.lines().stream().limit(MOST_SENTENCES).toList()) {
            text.append(Paragraph.hanging("  - ", words.nameOf(line) + ": " + where.sentence(line), WIDTH));
        }
        if (atlas.lines().size() > MOST_SENTENCES) {
            text.append("  ")
                    .append(style.say(
                            "atlas.more",
                            "count",
                            Integer.toString(atlas.lines().size() - MOST_SENTENCES)))
                    .append('\n');
        }
        text.append('\n');
    }

    private void surprises(Atlas atlas, StringBuilder text) {
        List<AtlasSurprise> surprises = AtlasSurprises.of(atlas);
        if (!surprises.isEmpty()) {
            SurpriseWords words = new SurpriseWords(style);
            text.append(style.say("heading.surprises")).append('\n');
            surprises.forEach(surprise -> text.append(Paragraph.hanging("  - ", words.sentence(surprise), WIDTH)));
            text.append('\n');
        }
    }

    private void foundations(Atlas atlas, StringBuilder text) {
        text.append(style.say("heading.rests-on")).append('\n');
        text.append(Paragraph.hanging("  - ", style.say("atlas.basis"), WIDTH));
        FindingDigest.of(style, atlas.findings(), Map.of()).stream()
                .filter(digest -> digest.kind() != Finding.Kind.CAUTION)
                .forEach(digest -> text.append(Paragraph.hanging("  - ", digest.lead(style) + digest.text(), WIDTH)));
        text.append("  ").append(style.say("atlas.single")).append('\n');
    }
}
