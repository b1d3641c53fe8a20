package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas;
import hafthold.decide.Atlas.Line;
import hafthold.decide.Tally;
import hafthold.decide.Verdict;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

class AtlasReportTest {
    private static final String COMMAND = "hafthold atlas --made-rh \"55 %\"";
    private static final AtlasPage PAGE = new AtlasPage(BenchStyle.ENGLISH, InventedComparison.limits(), COMMAND);

    private final Atlas atlas = InventedAtlas.small();
    private final String html = PAGE.of(atlas);
    private final Document page = Jsoup.parse(html);

    @Test
    void readsInTheTerminalAsKept() throws IOException {
        String fresh = new AtlasText(BenchStyle.ENGLISH, true).of(atlas);
        assertEquals(Golden.text("atlas-small.txt", fresh), fresh);
        assertTrue(fresh.lines().allMatch(line -> line.length() <= 100), "lines of a hundred columns");
    }

    @Test
    void isWellFormedEnoughForAStrictReader() {
        org.jsoup.parser.Parser strict = org.jsoup.parser.Parser.htmlParser().setTrackErrors(50);
        strict.parseInput(html, "");
        assertEquals(List.of(), strict.getErrors());
    }

    @Test
    void runsItsOwnScriptAndNoOther() throws NoSuchAlgorithmException {
        assertEquals(1, page.select("script").size());
        byte[] script = page.selectFirst("script").data().getBytes(StandardCharsets.UTF_8);
        String digest = Base64.getEncoder()
                .encodeToString(MessageDigest.getInstance("SHA-256").digest(script));
        assertTrue(page.selectFirst("meta[http-equiv]").attr("content").contains("script-src 'sha256-" + digest + "'"));
        assertTrue(
                page.select("[onclick],[onload],[onerror],link,iframe,img,form").isEmpty());
        assertTrue(page.select("#filter > *").isEmpty(), "no control that is dead without script");
        assertTrue(page.select("[hidden]").isEmpty(), "all in sight without script");
    }

    @Test
    void pagesWithoutScriptStillAllowNone() {
        Document other = Jsoup.parse(new PageFrame(BenchStyle.ENGLISH, "x").html());
        assertFalse(other.selectFirst("meta[http-equiv]").attr("content").contains("script-src"));
        assertTrue(other.select("script").isEmpty());
    }

    @Test
    void theMapTellsEveryMaterialInEveryClimateByGroundLettersAndCount() {
        int cells = 0;
        for (Element table : page.select(".map table")) {
            List<String> climates = table.select("thead th").eachAttr("data-climate");
            for (Element row : table.select("tbody tr")) {
                Line line = atlas.lines().stream()
                        .filter(candidate -> new AnswerWords(BenchStyle.ENGLISH)
                                .nameOf(candidate.cells().get(0).year())
                                .equals(row.child(0).text()))
                        .findFirst()
                        .orElseThrow();
                for (int i = 0; i < climates.size(); i++) {
                    Tally tally = Tally.of(atlas.cells(line, climate(climates.get(i))));
                    Element cell = row.child(i + 1);
                    assertEquals(climates.get(i), cell.attr("data-climate"));
                    assertEquals("v-" + tally.usual().word(), cell.className());
                    assertEquals(
                            tally.usual().word().substring(0, 2),
                            cell.selectFirst("b").text());
                    assertEquals(Integer.toString(tally.of(Verdict.STAYS)), cell.ownText());
                    cells++;
                }
            }
        }
        assertEquals(3 * 2, cells);
    }

    @Test
    void countsThePlacesOfEveryVerdictInWords() {
        for (Element row : page.select("td.where").parents().select("tr:has(td.where)")) {
            Line line = atlas.lines().stream()
                    .filter(candidate -> new AnswerWords(BenchStyle.ENGLISH)
                            .nameOf(candidate.cells().get(0).year())
                            .equals(row.child(0).text()))
                    .findFirst()
                    .orElseThrow();
            List<Verdict> verdicts = List.of(Verdict.STAYS, Verdict.CARE, Verdict.CHANGE, Verdict.REFUSE);
            for (int i = 0; i < verdicts.size(); i++) {
                int count = Tally.of(line.cells()).of(verdicts.get(i));
                String words = row.child(i + 1).text();
                String lead = count == 0 ? "–" : count == 3 ? "all 3 places" : count + " of 3: ";
                assertTrue(words.startsWith(lead), words);
            }
        }
    }

    @Test
    void everyVerdictHasLettersOfItsOwn() {
        List<String> signs = Arrays.stream(Verdict.values())
                .map(new VerdictSign(BenchStyle.ENGLISH)::of)
                .toList();
        assertEquals(signs.size(), new HashSet<>(signs).size());
    }

    @Test
    void usesNoIdTwiceAndStepsDownItsHeadings() {
        List<String> ids = page.select("[id]").eachAttr("id");
        assertEquals(ids.size(), new HashSet<>(ids).size(), ids.toString());
        int before = 1;
        for (Element heading : page.select("h1, h2, h3, h4")) {
            int level = heading.tagName().charAt(1) - '0';
            assertTrue(level <= before + 1, heading.text());
            before = level;
        }
    }

    @Test
    void keepsMarkupInNamesAsText() {
        String script = "<script>alert('x')</script>\"><img src=x onerror=y>";
        Document odd = Jsoup.parse(PAGE.of(InventedAtlas.small(text -> text + script)));
        assertEquals(1, odd.select("script").size());
        assertTrue(odd.select("img").isEmpty());
        assertTrue(odd.selectFirst(".pairs thead").text().contains(script));
    }

    private static ClimateGroup climate(String id) {
        return Arrays.stream(ClimateGroup.values())
                .filter(climate -> climate.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
