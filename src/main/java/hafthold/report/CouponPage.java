package hafthold.report;

import hafthold.decide.CouponAnswer;
import hafthold.decide.CouponStudy;
import hafthold.decide.OutcomeTally;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * What coupons told as a page of its own, no script, nothing fetched.
 *
 * @param style language and units
 * @param cautions what can hurt
 * @param input the file as it was given, to be echoed
 * @param command the command that repeats the run
 */
record CouponPage(BenchStyle style, List<Finding> cautions, String input, String command) {

    /** The whole page as HTML. */
    String of(CouponAnswer answer) {
        PageFrame frame = new PageFrame(style, style.say("coupon.page-title"));
        for (int i = 0; i < answer.studies().size(); i++) {
            study(frame, answer.studies().get(i), i + 1);
        }
        answer.outcomes().ifPresent(tally -> outcomes(frame.page(), tally));
        List<Finding> findings = new ArrayList<>(answer.findings());
        findings.addAll(cautions);
        new Foundations(style, List.of())
                .write(frame.page(), FindingDigest.of(style, findings, CouponText.names(answer)));
        inputs(frame.page());
        return frame.html();
    }

    private void study(PageFrame frame, CouponStudy study, int number) {
        CouponWords words = new CouponWords(style, study);
        CouponTables tables = new CouponTables(style, study);
        Markup page = frame.page();
        page.open("section").element("h2", words.title());
        page.element("p", words.verdict(), "class", "lead");
        list(page, style.say("coupon.heading.warnings"), words.warnings());
        PageFrame.numbers(page, new NumbersTable(tables.figuresCaption(), tables.figuresHead(), tables.figures()));
        list(page, style.say("coupon.heading.settling"), words.settling());
        list(page, style.say("coupon.heading.plans"), words.plans());
        list(page, style.say("coupon.heading.use"), words.use().stream().toList());
        new CouponCharts(style, study, number).all().forEach(frame::chart);
        page.close("section");
    }

    private void outcomes(Markup page, OutcomeTally tally) {
        OutcomeWords words = new OutcomeWords(style, tally);
        page.open("section").element("h2", style.say("coupon.heading.outcomes"));
        words.sentences().forEach(sentence -> page.element("p", sentence));
        PageFrame.numbers(
                page,
                new NumbersTable(
                        style.say("coupon.caption.outcomes", "unit", style.unit()), words.head(), words.rows()));
        page.close("section");
    }

    private static void list(Markup page, String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            page.element("h3", heading).open("ul");
            sentences.forEach(sentence -> page.element("li", sentence));
            page.close("ul");
        }
    }

    private void inputs(Markup page) {
        page.open("section", "class", "inputs").element("h2", style.say("heading.again"));
        PageFrame.verbatim(page, style.say("label.command"), command);
        page.open("details").element("summary", style.say("coupon.file"));
        PageFrame.verbatim(page, style.say("label.file"), input);
        page.close("details").close("section");
    }
}
