package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas;
import hafthold.decide.Claim;
import hafthold.decide.ClaimVerdict;
import hafthold.decide.Comparison;
import hafthold.decide.EventComparison;
import hafthold.decide.FullTangFit;
import hafthold.decide.KnifeFit;
import hafthold.decide.Verdict;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.simulate.HandleYear;
import hafthold.source.Finding;
import hafthold.table.EventTable;
import hafthold.table.TableSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Reports of compare, fit and atlas in a pretend language, whose every text stands in brackets: what is left outside them
 * must come from the tables or be a unit of the SI.
 */
class BenchLanguageTest {
    private static final Wording PRETEND = Wording.of("qps").orElseThrow();
    private static final Pattern BRACKETED = Pattern.compile("\u27e6[^\u27e6\u27e7]*\u27e7");
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");
    private static final Set<String> SYMBOLS = Set.of("MPa");
    private static final String COMMAND = "hafthold --something";

    @ParameterizedTest
    @EnumSource(LengthUnits.class)
    void everyWordOfAComparisonComesFromTheLanguageFile(LengthUnits units) {
        BenchStyle style = new BenchStyle(units, PRETEND);
        for (EventComparison answers : List.of(
                EventComparison.quiet(InventedComparison.unglued()),
                EventComparison.quiet(InventedComparison.damp()),
                InventedEvents.weekly(InventedComparison.glued()))) {
            Optional<String> named = Optional.of("walnut-black");
            Comparison comparison = answers.comparison();
            Data data = Data.of(comparison);
            new ComparisonReport(style, named, InventedComparison.limits(), COMMAND)
                    .files(answers)
                    .forEach((name, text) -> data.assertNoWord(name, text));
            data.with(ComparisonMarkdown.words(
                            ComparisonCsv.of(answers).lines().findFirst().orElseThrow()))
                    .assertNoWord("comparison.md", ComparisonMarkdown.of(answers, style, named));
        }
    }

    @ParameterizedTest
    @EnumSource(LengthUnits.class)
    void everyWordOfAFitComesFromTheLanguageFile(LengthUnits units) {
        BenchStyle style = new BenchStyle(units, PRETEND);
        for (KnifeFit fit :
                List.of(InventedKnives.WALNUT, InventedKnives.ODD_PAIR, InventedKnives.GLASS, InventedKnives.STACK)) {
            Data data = Data.of(fit);
            new FitReport(style, InventedKnives.LIMITS, List.of(), "", COMMAND)
                    .files(fit)
                    .forEach((name, text) -> data.assertNoWord(name, text));
            data.with(String.join(" ", FitMarkdown.numbers(FitJson.of(fit)).keySet()))
                    .assertNoWord("fit.md", FitMarkdown.of(fit, style));
        }
    }

    @ParameterizedTest
    @EnumSource(ClaimVerdict.class)
    void everyWordOfAClaimComesFromTheLanguageFile(ClaimVerdict verdict) {
        BenchStyle style = new BenchStyle(LengthUnits.MM, PRETEND);
        KnifeFit fit = InventedKnives.WALNUT;
        Claim claim = InventedClaim.of((FullTangFit) fit, verdict, 0.2);
        Data data = Data.of(fit);
        data.findings(claim.findings());
        new ClaimReport(style, InventedKnives.LIMITS, List.of(), "", COMMAND)
                .files(claim)
                .forEach((name, text) -> data.assertNoWord(name, text));
    }

    @ParameterizedTest
    @EnumSource(LengthUnits.class)
    void everyWordOfAnAtlasComesFromTheLanguageFile(LengthUnits units) {
        BenchStyle style = new BenchStyle(units, PRETEND);
        Atlas atlas = InventedAtlas.small();
        Data data = Data.of(atlas);
        data.assertNoWord("atlas.txt", new AtlasText(style, true).of(atlas));
        data.assertNoWord("atlas.html", new AtlasPage(style, InventedComparison.limits(), COMMAND).of(atlas));
    }

    @Test
    void thouAreTheOnlyUnitWhereTheyAreAskedFor() {
        BenchStyle style = new BenchStyle(LengthUnits.THOU, Wording.english());
        Pattern millimetres = Pattern.compile("\\d[\u00a0 ]mm");
        String compared = new ComparisonText(style, Optional.of("walnut-black")).of(InventedComparison.glued());
        assertTrue(compared.contains(" thou"), compared);
        assertFalse(millimetres.matcher(compared).find(), compared);
        String atlas = new AtlasText(style, true).of(InventedAtlas.small());
        assertTrue(atlas.contains(" thou"), atlas);
        assertFalse(millimetres.matcher(atlas).find(), atlas);
        String fit = new FitText(style).of(InventedFit.walnut()).replace("over its last 2 mm", "");
        assertTrue(fit.contains(" thou"), fit);
        String rows = fit.substring(0, fit.indexOf("What this rests on"));
        assertFalse(millimetres.matcher(rows).find(), rows);
    }

    @Test
    void jsonAndCsvKeepThePoint() {
        assertTrue(Pattern.compile("\\d\\.\\d")
                .matcher(ComparisonCsv.of(InventedComparison.glued()))
                .find());
        assertFalse(Pattern.compile("\\d,\\d+ ")
                .matcher(FitJson.of(InventedFit.walnut()))
                .find());
    }

    @Test
    void hasATextForEverythingThatHasAName() {
        List<String> keys = new ArrayList<>();
        Arrays.stream(Verdict.values()).forEach(verdict -> {
            for (String kind : List.of("verdict.", "sign.", "verdict-clause.", "does.", "where.")) {
                keys.add(kind + verdict.word());
            }
        });
        Arrays.stream(Family.values()).forEach(family -> keys.add("family." + family.word()));
        Arrays.stream(Cut.values())
                .filter(cut -> cut != Cut.NONE)
                .forEach(cut -> Stream.of("cut.", "short-cut.", "name.")
                        .forEach(kind -> keys.add(kind + cut.name().toLowerCase(Locale.ROOT))));
        Arrays.stream(Finding.Kind.values())
                .forEach(kind -> keys.add("kind." + kind.name().toLowerCase(Locale.ROOT)));
        Arrays.stream(hafthold.decide.Reason.Kind.values())
                .filter(kind -> kind != hafthold.decide.Reason.Kind.SOFTENING)
                .map(BenchStyle.ENGLISH::keyOf)
                .forEach(kind -> keys.addAll(List.of("reason." + kind, "brief." + kind)));
        EventTable.read(TableSet.builtIn()).all().forEach(event -> keys.add("event." + event.id()));
        hafthold.air.Setting.all().forEach(setting -> keys.add("setting." + setting.id()));
        keys.forEach(key -> assertTrue(Wording.english().has("bench." + key), key));
    }

    @Test
    void climatesAreCalledAsTheyAreInTheJson() {
        AtlasWords words = new AtlasWords(BenchStyle.ENGLISH);
        for (ClimateGroup climate : ClimateGroup.values()) {
            assertEquals(climate.words(), words.climate(climate));
            assertEquals(climate.rule(), words.rule(climate));
        }
    }

    /** What stands in a report as the tables have it: whole sentences, and names of which any word may stand alone. */
    private record Data(List<String> sentences, Set<String> words) {
        static Data of(Comparison comparison) {
            Data data = new Data(new ArrayList<>(), new TreeSet<>(SYMBOLS));
            data.sentences.add(comparison.settingRule());
            data.names(comparison.placeName(), comparison.finishName());
            data.findings(comparison.findings());
            comparison.ranked().forEach(answer -> data.year(answer.year()));
            return data;
        }

        static Data of(KnifeFit fit) {
            Data data = new Data(new ArrayList<>(), new TreeSet<>(SYMBOLS));
            data.sentences.add(fit.destination().lives());
            data.names(fit.destination().name(), fit.destination().id());
            fit.knife().build().order().name().ifPresent(data::names);
            data.names(fit.knife().build().order().workClass());
            data.findings(fit.findings());
            data.year(fit.whole());
            FitInputs.names(fit.knife()).values().forEach(data::names);
            FitInputs.of(fit, BenchStyle.ENGLISH).forEach(input -> data.steel(input.value()));
            return data;
        }

        static Data of(Atlas atlas) {
            Data data = new Data(new ArrayList<>(), new TreeSet<>(SYMBOLS));
            data.sentences.add(atlas.settingRule());
            data.names(atlas.finishName());
            data.findings(atlas.findings());
            atlas.sites().forEach(site -> data.names(site.name()));
            atlas.lines().forEach(line -> {
                data.names(line.materialName());
                data.findings(line.findings());
            });
            return data;
        }

        Data with(String names) {
            Data more = new Data(sentences, new TreeSet<>(words));
            more.names(names);
            return more;
        }

        private void year(HandleYear year) {
            names(year.scale().name(), year.grounds().restsOn().figure());
            findings(year.grounds().findings());
            year.stays().forEach(stay -> names(stay.name()));
        }

        /** Names of metals and finishes stand alone among the inputs. */
        private void steel(String value) {
            if (value.contains("steel") || !value.contains(" ")) {
                names(value);
            }
        }

        private void findings(List<Finding> findings) {
            findings.forEach(finding -> {
                sentences.add(finding.text());
                names(finding.subject());
            });
        }

        private void names(String... names) {
            for (String name : names) {
                WORD.matcher(name).results().forEach(word -> words.add(word.group()));
            }
        }

        void assertNoWord(String file, String text) {
            if (file.endsWith(".json") || file.endsWith(".csv")) {
                return;
            }
            Map<String, String> seen = new LinkedHashMap<>();
            if (file.endsWith(".html") || file.endsWith(".svg")) {
                Document page = Jsoup.parse(text);
                page.select("pre").remove();
                seen.put(file, page.text());
                for (Element labelled : page.select("[aria-label]")) {
                    seen.put(file + " label", labelled.attr("aria-label"));
                }
                page.select("#filter").forEach(filter -> seen.put(file + " filter", filter.attr("data-label-family")));
            } else {
                seen.put(file, text.replace("\\", ""));
            }
            seen.forEach((where, said) -> assertOnlyData(where, said));
        }

        private void assertOnlyData(String where, String said) {
            String rest = Paragraph.plain(said).replaceAll("\\s+", " ");
            for (String sentence : sentences) {
                rest = rest.replace(Paragraph.plain(sentence), " ");
            }
            for (Matcher own = BRACKETED.matcher(rest); own.find(); own = BRACKETED.matcher(rest)) {
                rest = own.replaceAll(" ");
            }
            List<String> left = WORD.matcher(rest)
                    .results()
                    .map(java.util.regex.MatchResult::group)
                    .filter(word -> !words.contains(word))
                    .filter(word -> !words.contains(word.toLowerCase(Locale.ROOT)))
                    .distinct()
                    .toList();
            assertEquals(List.of(), left, where);
            assertFalse(
                    Pattern.compile("(?<!\\d)\\d{1,3}\\.\\d(?!\\d*-)")
                            .matcher(rest)
                            .find(),
                    where + " has a point between digits: " + rest);
        }
    }
}
