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
import hafthold.source.Message;
import hafthold.table.EventTable;
import hafthold.table.TableSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Reports of compare, fit and atlas in a pretend language, whose every text stands in brackets: what is left outside them
 * must come from the tables or be a unit of the SI.
 */
class BenchLanguageTest {
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");
    private static final Set<String> SYMBOLS = Set.of("MPa");
    private static final BenchStyle PRETEND = new BenchStyle(LengthUnits.MM, PretendLanguage.WORDING);
    private static final String COMMAND = "hafthold --something";

    @ParameterizedTest
    @EnumSource(LengthUnits.class)
    void everyWordOfAComparisonComesFromTheLanguageFile(LengthUnits units) {
        BenchStyle style = new BenchStyle(units, PretendLanguage.WORDING);
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
        BenchStyle style = new BenchStyle(units, PretendLanguage.WORDING);
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
        BenchStyle style = new BenchStyle(LengthUnits.MM, PretendLanguage.WORDING);
        KnifeFit fit = InventedKnives.WALNUT;
        Claim claim = InventedClaim.of((FullTangFit) fit, verdict, 0.2);
        Data data = Data.of(fit);
        data.findings(claim.findings());
        new ClaimReport(style, InventedKnives.LIMITS, List.of(), "", COMMAND)
                .files(claim)
                .forEach((name, text) -> data.assertNoWord(name, text));
        data.assertNoWord("claim.md", ClaimMarkdown.of(claim, style));
    }

    @ParameterizedTest
    @EnumSource(LengthUnits.class)
    void everyWordOfAnAtlasComesFromTheLanguageFile(LengthUnits units) {
        BenchStyle style = new BenchStyle(units, PretendLanguage.WORDING);
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
        String fit = new FitText(style).of(InventedFit.walnut());
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
        Arrays.stream(ClimateGroup.values())
                .forEach(climate -> Stream.of("climate.", "climate-rule.", "climate-places.")
                        .forEach(kind -> keys.add(kind + climate.id())));
        hafthold.air.Setting.all().forEach(setting -> keys.add("setting." + setting.id()));
        keys.forEach(key -> assertTrue(Wording.english().has("bench." + key), key));
    }

    /** What stands in a report as the tables have it: whole sentences, and names of which any word may stand alone. */
    private record Data(List<String> sentences, Set<String> words) {
        static Data of(Comparison comparison) {
            Data data = new Data(new ArrayList<>(), new TreeSet<>(SYMBOLS));
            data.told(comparison.settingRule());
            data.told(comparison.placeName());
            data.names(comparison.finishName());
            data.findings(comparison.findings());
            comparison.ranked().forEach(answer -> data.year(answer.year()));
            return data;
        }

        static Data of(KnifeFit fit) {
            Data data = new Data(new ArrayList<>(), new TreeSet<>(SYMBOLS));
            data.told(fit.destination().lives());
            data.told(fit.destination().name());
            data.names(fit.destination().id());
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
            data.told(atlas.settingRule());
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
            names(year.scale().name());
            findings(year.grounds().findings());
            year.stays().forEach(stay -> names(stay.name()));
        }

        /** Names of metals and finishes stand alone among the inputs. */
        private void steel(String value) {
            if (value.contains("steel") || !value.contains(" ")) {
                names(value);
            }
        }

        /** Sentences of the invented orders, and ids and names that are filled in; what has a key must come from the file. */
        private void told(Message message) {
            if (message instanceof Message.Verbatim own && !own.words().isBlank()) {
                sentences.add(own.words());
            } else if (message instanceof Message.Text text) {
                text.filling().values().forEach(this::told);
            } else if (message instanceof Message.Sequence list) {
                list.parts().forEach(this::told);
            }
        }

        private void findings(List<Finding> findings) {
            findings.forEach(finding -> {
                told(finding.message());
                if (finding.subject().equals(PRETEND.subject(finding.subject()))) {
                    names(finding.subject());
                }
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
            PretendLanguage.seen(file, text).forEach(this::assertOnlyData);
        }

        private void assertOnlyData(String where, String said) {
            List<String> left = PretendLanguage.wordsOutside(said, sentences).stream()
                    .filter(word -> !words.contains(word))
                    .filter(word -> !words.contains(word.toLowerCase(Locale.ROOT)))
                    .distinct()
                    .toList();
            assertEquals(List.of(), left, where);
            String rest = PretendLanguage.outside(said, sentences);
            assertFalse(PretendLanguage.hasPoint(rest), where + " has a point between digits: " + rest);
        }
    }
}
