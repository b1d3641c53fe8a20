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
 * @param style language and units
 * @param limits classes of work, strictest first
 * @param command the command that repeats the run
 */
public record AtlasPage(BenchStyle style, List<FitLimits> limits, String command) {
    private static final String SCRIPT = PageFrame.resource("atlas.js");

    /** Keeps its own copy. */
    public AtlasPage {
        limits = List.copyOf(limits);
    }

    /** The whole page as HTML. */
    public String of(Atlas atlas) {
        PageFrame frame = new PageFrame(style, new AtlasWords(style).title(atlas), SCRIPT);
        Markup page = frame.page();
        page.element("p", new AtlasWords(style).lead(atlas), "class", "lead");
        situation(page, atlas);
        surprises(page, atlas);
        map(page, atlas);
        page.open("section").element("h2", style.say("heading.divide"));
        new AtlasCharts(style).of(atlas).forEach(frame::chart);
        page.close("section");
        words(page, atlas);
        places(page, atlas);
        grouping(page, atlas);
        new Foundations(style, limits).write(page, digests(atlas));
        frame.again(command);
        return frame.html();
    }

    private void situation(Markup page, Atlas atlas) {
        SituationWords words = new SituationWords(style);
        Map<String, String> inputs = new LinkedHashMap<>();
        inputs.put(style.say("row.live"), words.lives(atlas.setting(), atlas.settingRule()));
        inputs.put(
                style.say("row.made-at"),
                words.made(atlas.madeTemperature(), atlas.madeHumidity(), atlas.finishName()));
        inputs.put(style.say("row.handle"), words.handle(atlas.handle()));
        PageFrame.situation(page, inputs);
    }

    private void surprises(Markup page, Atlas atlas) {
        List<AtlasSurprise> surprises = AtlasSurprises.of(atlas);
        if (!surprises.isEmpty()) {
            page.open("section").element("h2", style.say("heading.surprises")).open("ul");
            surprises.forEach(surprise -> page.element("li", new SurpriseWords(style).sentence(surprise)));
            page.close("ul").close("section");
        }
    }

    /** Materials against climates: the verdict that more than half of the places give, and in how many it stays. */
    private void map(Markup page, Atlas atlas) {
        page.open("section", "id", "map").element("h2", style.say("heading.map"));
        page.element("p", style.say("atlas.map", "signs", new VerdictSign(style).key()));
        page.open(
                        "div",
                        "id",
                        "filter",
                        "data-label-family",
                        style.say("filter.family"),
                        "data-label-climate",
                        style.say("filter.climate"),
                        "data-label-all",
                        style.say("filter.all"))
                .close("div");
        for (Family family : atlas.families()) {
            page.open("div", "class", "map", "data-family", family.word()).open("table");
            page.element("caption", new AtlasWords(style).heading(family))
                    .open("thead")
                    .open("tr");
            page.element("td", "");
            for (ClimateGroup climate : atlas.climates()) {
                page.open("th", "scope", "col", "data-climate", climate.id())
                        .element(
                                "span",
                                new AtlasWords(style).climate(climate) + " ("
                                        + atlas.placesOf(climate).size() + ")")
                        .close("th");
            }
            page.close("tr").close("thead").open("tbody");
            for (Line line : atlas.linesOf(family)) {
                page.open("tr").element("th", heading(line), "scope", "row");
                for (ClimateGroup climate : atlas.climates()) {
                    Tally tally = Tally.of(atlas.cells(line, climate));
                    page.open("td", "class", "v-" + tally.usual().word(), "data-climate", climate.id())
                            .element("b", new VerdictSign(style).of(tally.usual()))
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
    private void words(Markup page, Atlas atlas) {
        page.open("section").element("h2", style.say("heading.where-each"));
        WhereItStays where = new WhereItStays(atlas, style);
        for (Family family : atlas.families()) {
            List<Line> lines = atlas.linesOf(family);
            page.open("div", "data-family", family.word()).element("h3", new AtlasWords(style).heading(family));
            PageFrame.openTable(
                    page,
                    style.say("caption.where", "family", new AtlasWords(style).heading(family), "unit", style.unit()),
                    style.heads("material", "stays", "care", "change", "refuse", "edge"),
                    lines.size());
            for (Line line : lines) {
                page.open("tr").element("th", heading(line), "scope", "row");
                for (Verdict verdict : List.of(Verdict.STAYS, Verdict.CARE, Verdict.CHANGE, Verdict.REFUSE)) {
                    page.element("td", where.where(line, verdict), "class", "where");
                }
                page.element("td", where.edgeRange(line.cells()), "class", "held")
                        .close("tr");
            }
            PageFrame.closeTable(page);
            page.close("div");
        }
        page.close("section");
    }

    /** Every pair, a table a climate, folded away. */
    private void places(Markup page, Atlas atlas) {
        page.open("section").element("h2", style.say("heading.places"));
        page.element("p", style.say(style.isThou() ? "atlas.pairs.thou" : "atlas.pairs"));
        WhereItStays where = new WhereItStays(atlas, style);
        for (ClimateGroup climate : atlas.climates()) {
            List<Integer> places = atlas.placesOf(climate);
            page.open("details", "data-climate", climate.id())
                    .element("summary", new AtlasWords(style).places(atlas, climate));
            page.open(
                            "div",
                            "class",
                            "scroll tall pairs",
                            "tabindex",
                            "0",
                            "role",
                            "region",
                            "aria-label",
                            style.say("label.places", "climate", new AtlasWords(style).climate(climate)))
                    .open("table")
                    .element("caption", style.say("caption.places", "climate", new AtlasWords(style).climate(climate)))
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
                atlas.linesOf(family).forEach(line -> pairs(page, where, line, places));
                page.close("tbody");
            }
            page.close("table").close("div").close("details");
        }
        page.close("section");
    }

    private void pairs(Markup page, WhereItStays where, Line line, List<Integer> places) {
        page.open("tr").element("th", heading(line), "scope", "row");
        for (int place : places) {
            Cell cell = line.cells().get(place);
            page.open("td", "class", "v-" + cell.verdict().word())
                    .text(new VerdictSign(style).of(cell.verdict()) + Paragraph.HOLD + where.signed(cell))
                    .close("td");
        }
        page.close("tr");
    }

    private void grouping(Markup page, Atlas atlas) {
        page.open("section").element("h2", style.say("heading.grouping"));
        AtlasWords words = new AtlasWords(style);
        page.element("p", style.say("atlas.basis"));
        PageFrame.openTable(page, style.say("caption.grouping"), style.heads("climate", "rule", "places"));
        for (ClimateGroup climate : atlas.climates()) {
            page.open("tr")
                    .element("th", words.climate(climate), "scope", "row")
                    .element("td", words.rule(climate));
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

    private String heading(Line line) {
        return new AnswerWords(style).nameOf(line.cells().get(0).year());
    }

    private List<FindingDigest> digests(Atlas atlas) {
        Map<String, String> names = new LinkedHashMap<>();
        List<Finding> all = new ArrayList<>(atlas.findings());
        for (Line line : atlas.lines()) {
            names.put(line.materialId(), line.materialName());
            all.addAll(line.findings());
        }
        return FindingDigest.of(style, all, names);
    }
}
