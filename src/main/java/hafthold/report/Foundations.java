package hafthold.report;

import hafthold.decide.Verdict;
import hafthold.knife.FitLimits;
import hafthold.quantity.Length;
import hafthold.source.Finding;
import java.util.List;

/**
 * The part of a page that says what its answers rest on, and what to mind.
 *
 * @param style language and units
 * @param limits classes of work, strictest first
 */
record Foundations(BenchStyle style, List<FitLimits> limits) {
    private static final int CLASSES = 4;
    private static final String USUAL_WORK = "good-new";
    private static final List<Verdict> VERDICTS = List.of(Verdict.STAYS, Verdict.CARE, Verdict.CHANGE);

    /** Writes what answers rest on that were judged for good new work. */
    void write(Markup page, List<FindingDigest> digests) {
        write(page, digests, USUAL_WORK);
    }

    /** Likewise for work of a class, by whose limits it was judged. */
    void write(Markup page, List<FindingDigest> digests, String workClass) {
        page.open("section").element("h2", style.say("heading.rests-on"));
        for (Finding.Kind kind : Finding.Kind.values()) {
            if (kind != Finding.Kind.CAUTION) {
                list(page, FindingDigest.headingOf(style, kind), digests, kind);
            }
        }
        verdicts(page, workClass);
        page.close("section");
        page.open("section", "class", "mind")
                .element("h2", FindingDigest.headingOf(style, Finding.Kind.CAUTION))
                .open("ul");
        items(page, digests, Finding.Kind.CAUTION);
        if (digests.stream().noneMatch(digest -> digest.kind() == Finding.Kind.CAUTION)) {
            page.element("li", style.say("standing-caution"));
        }
        page.close("ul").close("section");
    }

    private void list(Markup page, String heading, List<FindingDigest> digests, Finding.Kind kind) {
        if (digests.stream().anyMatch(digest -> digest.kind() == kind)) {
            page.element("h3", heading).open("ul");
            items(page, digests, kind);
            page.close("ul");
        }
    }

    private void items(Markup page, List<FindingDigest> digests, Finding.Kind kind) {
        digests.stream().filter(digest -> digest.kind() == kind).forEach(digest -> {
            page.open("li");
            String lead = digest.lead(style);
            if (!lead.isEmpty()) {
                page.open("b").text(lead.strip()).trusted("</b> ");
            }
            page.text(digest.text()).close("li");
        });
    }

    private void verdicts(Markup page, String workClass) {
        if (limits.size() != CLASSES) {
            return;
        }
        page.element("h3", style.say("heading.verdicts"));
        page.element("p", style.say("verdicts.limits", "unit", style.unit()));
        PageFrame.openTable(
                page,
                style.say("caption.verdicts"),
                style.heads("verdict", "keeps", "shy", "proud", "pin-head", "gap"));
        List<String> names = limits.stream().map(FitLimits::name).toList();
        int stays = names.indexOf(names.contains(workClass) ? workClass : USUAL_WORK);
        row(page, Verdict.STAYS, limits.get(stays));
        for (int i = 1; i < VERDICTS.size(); i++) {
            boolean isLast = i == VERDICTS.size() - 1;
            if (stays + i < CLASSES) {
                row(page, VERDICTS.get(i), limits.get(isLast ? CLASSES - 1 : stays + i));
            } else {
                row(page, VERDICTS.get(i), style.say("verdicts.too-hard"));
            }
        }
        row(page, Verdict.REFUSE, style.say("verdicts.refuse", "work", style.work(limits.get(CLASSES - 1))));
        row(page, Verdict.UNKNOWN, style.say("verdicts.unknown"));
        PageFrame.closeTable(page);
    }

    private void row(Markup page, Verdict verdict, String words) {
        page.open("tr")
                .element("th", style.verdict(verdict), "scope", "row")
                .element("td", words, "colspan", "5")
                .close("tr");
    }

    private void row(Markup page, Verdict verdict, FitLimits limit) {
        page.open("tr")
                .element("th", style.verdict(verdict), "scope", "row")
                .element("td", style.say("verdicts.work", "work", style.work(limit)));
        for (Length length : List.of(limit.shy(), limit.proud(), limit.pinHead(), limit.gap())) {
            page.element("td", style.limit(length));
        }
        page.close("tr");
    }
}
