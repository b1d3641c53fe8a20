package hafthold.report;

import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas;
import hafthold.decide.Atlas.Cell;
import hafthold.decide.Atlas.Line;
import hafthold.decide.AtlasSurprise;
import hafthold.decide.AtlasSurprises;
import hafthold.decide.Tally;
import hafthold.decide.Verdict;
import hafthold.knife.FitLimits;
import hafthold.material.Family;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An atlas as a page of its own: nothing fetched, readable without its script, which only hides what is not wanted.
 *
 * @param limits classes of work, strictest first
 * @param command the command that repeats the run
 */
public record AtlasPage(List<FitLimits> limits, String command) {
    private static final String SCRIPT = PageFrame.resource("atlas.js");

    /** Keeps its own copy. */
    public AtlasPage {
        limits = List.copyOf(limits);
    }

    /** The whole page as HTML. */
    public String of(Atlas atlas) {
        PageFrame frame = new PageFrame(AtlasWords.title(atlas), SCRIPT);
        Markup page = frame.page();
        page.element("p", AtlasWords.lead(atlas), "class", "lead");
        situation(page, atlas);
        surprises(page, atlas);
        map(page, atlas);
        page.open("section").element("h2", "How they divide");
        AtlasCharts.of(atlas).forEach(frame::chart);
        page.close("section");
        words(page, atlas);
        places(page, atlas);
        grouping(page, atlas);
        Foundations.write(page, digests(atlas), limits, "good-new");
        page.open("section").element("h2", "To run this again");
        page.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", "Command")
                .open("pre")
                .verbatim(command)
                .close("pre")
                .close("div");
        page.close("section");
        return frame.html();
    }

    private static void situation(Markup page, Atlas atlas) {
        page.open("dl", "class", "situation");
        Map<String, String> inputs = new LinkedHashMap<>();
        inputs.put("Live", SituationWords.lives(atlas.setting(), atlas.settingRule()));
        inputs.put("Made at", SituationWords.made(atlas.madeTemperature(), atlas.madeHumidity(), atlas.finishName()));
        inputs.put("Handle", SituationWords.handle(atlas.handle(), LengthUnits.MM));
        inputs.forEach((term, words) -> page.element("dt", term).element("dd", words));
        page.close("dl");
    }

    private static void surprises(Markup page, Atlas atlas) {
        List<AtlasSurprise> surprises = AtlasSurprises.of(atlas);
        if (!surprises.isEmpty()) {
            page.open("section")
                    .element("h2", "What one might not have guessed")
                    .open("ul");
            surprises.forEach(surprise -> page.element("li", AtlasWords.sentence(surprise)));
            page.close("ul").close("section");
        }
    }

    /** Materials against climates: the verdict that more than half of the places give, and in how many it stays. */
    private static void map(Markup page, Atlas atlas) {
        page.open("section", "id", "map").element("h2", "The map");
        page.element(
                "p",
                "A cell tells what more than half of a climate's places give a material, and below it in how many of them"
                        + " it stays. The darker, the worse: " + VerdictSign.key()
                        + ". In every family the material that"
                        + " moves least stands first.");
        page.open("div", "id", "filter").close("div");
        for (Family family : atlas.families()) {
            page.open("div", "class", "map", "data-family", family.word()).open("table");
            page.element("caption", AtlasWords.heading(family)).open("thead").open("tr");
            page.element("td", "");
            for (ClimateGroup climate : atlas.climates()) {
                page.open("th", "scope", "col", "data-climate", climate.id())
                        .element(
                                "span",
                                climate.words() + " (" + atlas.placesOf(climate).size() + ")")
                        .close("th");
            }
            page.close("tr").close("thead").open("tbody");
            for (Line line : atlas.linesOf(family)) {
                page.open("tr").element("th", heading(line), "scope", "row");
                for (ClimateGroup climate : atlas.climates()) {
                    Tally tally = Tally.of(atlas.cells(line, climate));
                    page.open("td", "class", "v-" + tally.usual().word(), "data-climate", climate.id())
                            .element("b", VerdictSign.of(tally.usual()))
                            .text(Integer.toString(tally.of(Verdict.STAYS)))
                            .close("td");
                }
                page.close("tr");
            }
            page.close("tbody").close("table").close("div");
        }
        page.close("section");
    }

    /** Where each material stays, in words. */
    private static void words(Markup page, Atlas atlas) {
        page.open("section").element("h2", "Where each stays");
        WhereItStays where = new WhereItStays(atlas);
        for (Family family : atlas.families()) {
            List<Line> lines = atlas.linesOf(family);
            page.open("div", "data-family", family.word()).element("h3", AtlasWords.heading(family));
            PageFrame.openTable(
                    page,
                    AtlasWords.heading(family) + ": where it stays; edge steps over all places, mm a side",
                    List.of("Material", "Stays", "Needs care", "Wants another build", "Does not belong", "Edge"),
                    lines.size());
            for (Line line : lines) {
                page.open("tr").element("th", heading(line), "scope", "row");
                for (Verdict verdict : List.of(Verdict.STAYS, Verdict.CARE, Verdict.CHANGE, Verdict.REFUSE)) {
                    page.element("td", where.where(line, verdict), "class", "where");
                }
                page.element("td", WhereItStays.edgeRange(line.cells()), "class", "held")
                        .close("tr");
            }
            PageFrame.closeTable(page);
            page.close("div");
        }
        page.close("section");
    }

    /** Every pair, a table a climate, folded away. */
    private static void places(Markup page, Atlas atlas) {
        page.open("section").element("h2", "Place by place");
        page.element(
                "p",
                "Verdict and the year's larger edge step in hundredths of a millimetre a side, − shy, + proud. The"
                        + " verdict counts pins, heads and ends as well.");
        for (ClimateGroup climate : atlas.climates()) {
            List<Integer> places = atlas.placesOf(climate);
            page.open("details", "data-climate", climate.id())
                    .element(
                            "summary",
                            climate.words() + ", " + places.size() + (places.size() == 1 ? " place" : " places"));
            page.open(
                            "div",
                            "class",
                            "scroll tall pairs",
                            "tabindex",
                            "0",
                            "role",
                            "region",
                            "aria-label",
                            "Place by place: " + climate.words())
                    .open("table")
                    .element("caption", "Verdicts and edge steps: " + climate.words())
                    .open("thead")
                    .open("tr")
                    .element("td", "");
            for (int place : places) {
                page.open("th", "scope", "col")
                        .element("span", atlas.sites().get(place).name())
                        .close("th");
            }
            page.close("tr").close("thead");
            for (Family family : atlas.families()) {
                page.open("tbody", "data-family", family.word());
                atlas.linesOf(family).forEach(line -> pairs(page, line, places));
                page.close("tbody");
            }
            page.close("table").close("div").close("details");
        }
        page.close("section");
    }

    private static void pairs(Markup page, Line line, List<Integer> places) {
        page.open("tr").element("th", heading(line), "scope", "row");
        for (int place : places) {
            Cell cell = line.cells().get(place);
            page.open("td", "class", "v-" + cell.verdict().word())
                    .text(VerdictSign.of(cell.verdict()) + Paragraph.HOLD + WhereItStays.signedHundredths(cell))
                    .close("td");
        }
        page.close("tr");
    }

    private static void grouping(Markup page, Atlas atlas) {
        page.open("section").element("h2", "How places are grouped");
        page.element("p", AtlasWords.basis());
        PageFrame.openTable(page, "Climates and their places", List.of("Climate", "What it takes", "Places"));
        for (ClimateGroup climate : atlas.climates()) {
            page.open("tr").element("th", climate.words(), "scope", "row").element("td", climate.rule());
            page.element(
                            "td",
                            String.join(
                                    "; ",
                                    atlas.placesOf(climate).stream()
                                            .map(place ->
                                                    atlas.sites().get(place).name())
                                            .toList()))
                    .close("tr");
        }
        PageFrame.closeTable(page);
        page.close("section");
    }

    private static String heading(Line line) {
        return AnswerWords.nameOf(line.cells().get(0).year());
    }

    private static List<FindingDigest> digests(Atlas atlas) {
        Map<String, String> names = new LinkedHashMap<>();
        List<Finding> all = new ArrayList<>(atlas.findings());
        for (Line line : atlas.lines()) {
            names.put(line.materialId(), line.materialName());
            all.addAll(line.findings());
        }
        return FindingDigest.of(all, names);
    }
}
