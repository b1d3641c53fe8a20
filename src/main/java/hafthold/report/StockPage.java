package hafthold.report;

import hafthold.decide.StockAnswer;
import hafthold.decide.StockVerdict;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * Judged blocks as a page of their own: the bench note with a picture a block, no script, nothing fetched.
 *
 * @param style language and units
 * @param cautions what can hurt with their materials
 * @param input the file as it was given, to be echoed
 * @param command the command that repeats the run
 */
record StockPage(BenchStyle style, List<Finding> cautions, String input, String command) {

    /** The whole page as HTML. */
    String of(List<StockAnswer> answers) {
        PageFrame frame = new PageFrame(
                style, answers.size() == 1 ? answers.get(0).block().name() : style.say("stock.caption.blocks"));
        Markup page = frame.page();
        if (answers.size() > 1) {
            StockTables tables = new StockTables(style);
            PageFrame.numbers(
                    page, new NumbersTable(style.say("stock.caption.blocks"), tables.head(), tables.rows(answers)));
        }
        for (int i = 0; i < answers.size(); i++) {
            block(frame, answers.get(i), i + 1, answers.size() > 1);
        }
        List<Finding> findings = new ArrayList<>(StockText.findings(answers));
        findings.addAll(cautions);
        new Foundations(style, List.of()).write(page, FindingDigest.of(style, findings, StockText.names(answers)));
        page.open("section", "class", "inputs").open("details").element("summary", style.say("stock.file"));
        PageFrame.verbatim(page, style.say("label.file"), input);
        page.close("details").close("section");
        frame.again(command);
        return frame.html();
    }

    private void block(PageFrame frame, StockAnswer answer, int number, boolean isOneOfMany) {
        Markup page = frame.page();
        StockWords words = new StockWords(style, answer);
        page.open("section");
        if (isOneOfMany) {
            page.element("h2", answer.block().name());
        }
        page.open("p", "class", "lead verdict")
                .element("span", words.stamp(), "class", "stamp " + look(answer.verdict()))
                .text(" " + words.lead())
                .close("p")
                .close("section");
        if (answer.fill().isPresent()) {
            StockFillWords fill = new StockFillWords(style, answer);
            List<String> lines = new ArrayList<>();
            if (answer.moisture().isPresent()) {
                lines.add(fill.lead());
            }
            lines.addAll(fill.advice());
            list(page, style.say("stock.heading.fill"), lines);
        }
        if (answer.moisture().isPresent()) {
            moisture(frame, answer, number);
        }
    }

    private void moisture(PageFrame frame, StockAnswer answer, int number) {
        Markup page = frame.page();
        boolean isTold = answer.told().isPresent();
        if (isTold) {
            page.open("section");
            frame.chart(new StockCharts(style).course(answer, number));
            page.close("section");
        }
        StockAdvice advice = new StockAdvice(style, answer);
        list(page, style.say("stock.heading.box"), advice.box());
        if (isTold) {
            list(page, style.say("stock.heading.balance"), advice.balance());
        }
        list(page, style.say("heading.to-do"), advice.next());
        if (!answer.block().readings().isEmpty()) {
            StockTables tables = new StockTables(style);
            page.open("section").element("h2", style.say("stock.heading.read"));
            PageFrame.numbers(
                    page,
                    new NumbersTable(
                            style.say(
                                    "stock.caption.read",
                                    "block",
                                    answer.block().name()),
                            tables.readHead(),
                            tables.read(answer)));
            page.close("section");
        }
        if (isTold) {
            list(page, style.say("stock.heading.sure"), advice.sure());
        }
    }

    /** The look of the stamp, from the quietest verdict to the loudest. */
    private static String look(StockVerdict verdict) {
        return switch (verdict) {
            case READY -> "stamp-stays";
            case WET, DRY -> "stamp-change";
            case ODD -> "stamp-refuse";
            case OPEN, FILL_ONLY -> "stamp-unknown";
        };
    }

    private static void list(Markup page, String heading, List<String> sentences) {
        page.open("section").element("h2", heading).open("ul");
        sentences.forEach(sentence -> page.element("li", sentence));
        page.close("ul").close("section");
    }
}
