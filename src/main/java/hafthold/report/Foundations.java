package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.knife.FitLimits;
import hafthold.source.Finding;
import java.util.List;

/** The part of a page that says what its answers rest on, and what to mind. */
final class Foundations {
    private static final int CLASSES = 4;
    private static final String STANDING_CAUTION =
            "Sand with extraction and a mask. A loose or split handle is a hazard: take the knife out of use. Whether a handle is safe stays the maker's"
                    + " own judgement.";

    private Foundations() {}

    static void write(Markup page, Comparison comparison, List<FitLimits> limits) {
        List<FindingDigest> digests = FindingDigest.of(comparison);
        page.open("section").element("h2", "What this rests on");
        for (Finding.Kind kind : Finding.Kind.values()) {
            if (kind != Finding.Kind.CAUTION) {
                list(page, FindingDigest.headingOf(kind), digests, kind);
            }
        }
        words(page, limits);
        page.close("section");
        page.open("section", "class", "mind").element("h2", "Mind").open("ul");
        items(page, digests, Finding.Kind.CAUTION);
        if (digests.stream().noneMatch(digest -> digest.kind() == Finding.Kind.CAUTION)) {
            page.element("li", STANDING_CAUTION);
        }
        page.close("ul").close("section");
    }

    private static void list(Markup page, String heading, List<FindingDigest> digests, Finding.Kind kind) {
        if (digests.stream().anyMatch(digest -> digest.kind() == kind)) {
            page.element("h3", heading).open("ul");
            items(page, digests, kind);
            page.close("ul");
        }
    }

    private static void items(Markup page, List<FindingDigest> digests, Finding.Kind kind) {
        digests.stream().filter(digest -> digest.kind() == kind).forEach(digest -> {
            page.open("li");
            if (!digest.lead().isEmpty()) {
                page.open("b").text(digest.lead().strip()).trusted("</b> ");
            }
            page.text(digest.text()).close("li");
        });
    }

    private static void words(Markup page, List<FitLimits> limits) {
        if (limits.size() != CLASSES) {
            return;
        }
        page.element("h3", "What the verdicts mean");
        page.element(
                "p",
                "The limits are a workshop's judgement; no published tolerance for knives was found. Limits in mm, edge"
                        + " a side.");
        PageFrame.openTable(
                page,
                "Limits behind the verdicts",
                List.of("Verdict", "All of it keeps", "Shy", "Proud", "Pin head", "Gap"));
        row(page, "stays", limits.get(1));
        row(page, "care", limits.get(2));
        row(page, "change", limits.get(3));
        page.open("tr").element("th", "refuse", "scope", "row");
        page.element("td", "not even " + name(limits.get(3)) + " work", "colspan", "5")
                .close("tr");
        page.open("tr").element("th", "unknown", "scope", "row");
        page.element("td", "the figures do not carry an answer", "colspan", "5").close("tr");
        PageFrame.closeTable(page);
    }

    private static void row(Markup page, String verdict, FitLimits limit) {
        page.open("tr").element("th", verdict, "scope", "row").element("td", name(limit) + " work");
        for (double millimetres : List.of(
                limit.shy().millimetres(),
                limit.proud().millimetres(),
                limit.pinHead().millimetres(),
                limit.gap().millimetres())) {
            page.element("td", AnswerWords.plain(millimetres));
        }
        page.close("tr");
    }

    private static String name(FitLimits limit) {
        return limit.name().replace('-', ' ');
    }
}
