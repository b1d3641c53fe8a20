package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.knife.FitLimits;
import hafthold.source.Finding;
import java.util.List;

/** The part of a page that says what its answers rest on, and what to mind. */
final class Foundations {
    private static final int CLASSES = 4;
    private static final String USUAL_WORK = "good-new";
    private static final List<String> VERDICTS = List.of("stays", "care", "change");
    private static final String STANDING_CAUTION =
            "Sand with extraction and a mask. A loose or split handle is a hazard: take the knife out of use. Whether a handle is safe stays the maker's"
                    + " own judgement.";

    private Foundations() {}

    static void write(Markup page, Comparison comparison, List<FitLimits> limits) {
        write(page, FindingDigest.of(comparison), limits, USUAL_WORK);
    }

    /** Likewise for work of a class, by whose limits it was judged. */
    static void write(Markup page, List<FindingDigest> digests, List<FitLimits> limits, String workClass) {
        page.open("section").element("h2", "What this rests on");
        for (Finding.Kind kind : Finding.Kind.values()) {
            if (kind != Finding.Kind.CAUTION) {
                list(page, FindingDigest.headingOf(kind), digests, kind);
            }
        }
        words(page, limits, workClass);
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

    private static void words(Markup page, List<FitLimits> limits, String workClass) {
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
        List<String> names = limits.stream().map(FitLimits::name).toList();
        int stays = names.indexOf(names.contains(workClass) ? workClass : USUAL_WORK);
        row(page, "stays", limits.get(stays));
        for (int i = 1; i < VERDICTS.size(); i++) {
            boolean isLast = i == VERDICTS.size() - 1;
            if (stays + i < CLASSES) {
                row(page, VERDICTS.get(i), limits.get(isLast ? CLASSES - 1 : stays + i));
            } else {
                page.open("tr").element("th", VERDICTS.get(i), "scope", "row");
                page.element("td", "something is worked too hard, or softens in the heat", "colspan", "5")
                        .close("tr");
            }
        }
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
