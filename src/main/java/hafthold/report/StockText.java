package hafthold.report;

import hafthold.decide.StockAnswer;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Blocks as a note for the bench: all of them in a row where there are several, then each by itself.
 *
 * @param style language and units
 */
public record StockText(BenchStyle style) {
    private static final int WIDTH = 100;
    private static final Integer[] SIDE_BY_SIDE = {26, 12, 12, 10, 20, 30};
    private static final Integer[] READ = {18, 12, 12, 12, 10, 14};

    /** The whole note, ending in a line feed. */
    public String of(List<StockAnswer> answers) {
        StringBuilder text = new StringBuilder();
        StockTables tables = new StockTables(style);
        if (answers.size() > 1) {
            text.append(style.say("stock.caption.blocks")).append('\n');
            table(text, SIDE_BY_SIDE, tables.head(), tables.rows(answers));
            text.append('\n');
        }
        for (StockAnswer answer : answers) {
            block(text, answer, tables);
        }
        foundations(text, answers);
        return text.toString();
    }

    private void block(StringBuilder text, StockAnswer answer, StockTables tables) {
        StockWords words = new StockWords(style, answer);
        text.append(words.title()).append("\n\n");
        text.append(Paragraph.hanging("", words.lead().strip(), WIDTH)).append('\n');
        if (answer.fill().isPresent()) {
            StockFillWords fill = new StockFillWords(style, answer);
            List<String> lines = new ArrayList<>();
            if (answer.moisture().isPresent()) {
                lines.add(fill.lead());
            }
            lines.addAll(fill.advice());
            list(text, style.say("stock.heading.fill"), lines);
        }
        if (answer.moisture().isPresent()) {
            StockAdvice advice = new StockAdvice(style, answer);
            list(text, style.say("stock.heading.box"), advice.box());
            if (answer.told().isPresent()) {
                list(text, style.say("stock.heading.balance"), advice.balance());
            }
            list(text, style.say("heading.to-do"), advice.next());
            if (!answer.block().readings().isEmpty()) {
                text.append(style.say(
                                "stock.caption.read", "block", answer.block().name()))
                        .append('\n');
                table(text, READ, tables.readHead(), tables.read(answer));
                text.append('\n');
            }
            if (answer.told().isPresent()) {
                list(text, style.say("stock.heading.sure"), advice.sure());
            }
        }
    }

    private static void table(StringBuilder text, Integer[] widths, List<String> head, List<List<String>> rows) {
        TextColumns columns = new TextColumns(widths);
        columns.row(head.toArray(new String[0]));
        rows.forEach(row -> columns.row(row.toArray(new String[0])));
        columns.text().lines().forEach(line -> text.append("  ").append(line).append('\n'));
    }

    private static void list(StringBuilder text, String heading, List<String> sentences) {
        text.append(heading).append('\n');
        sentences.forEach(sentence -> text.append(Paragraph.hanging("  - ", sentence, WIDTH)));
        text.append('\n');
    }

    private void foundations(StringBuilder text, List<StockAnswer> answers) {
        text.append(style.say("heading.rests-on")).append('\n');
        List<FindingDigest> digests = FindingDigest.of(style, findings(answers), names(answers));
        for (Finding.Kind kind : Finding.Kind.values()) {
            List<FindingDigest> some =
                    digests.stream().filter(digest -> digest.kind() == kind).toList();
            if (!some.isEmpty()) {
                text.append("  ").append(FindingDigest.headingOf(style, kind)).append(":\n");
                some.forEach(
                        digest -> text.append(Paragraph.hanging("  - ", digest.lead(style) + digest.text(), WIDTH)));
            }
        }
    }

    /** What all answers rest on. */
    static List<Finding> findings(List<StockAnswer> answers) {
        return answers.stream().flatMap(answer -> answer.findings().stream()).toList();
    }

    /** Names of the materials of the blocks by their ids. */
    static Map<String, String> names(List<StockAnswer> answers) {
        Map<String, String> names = new LinkedHashMap<>();
        answers.forEach(answer -> {
            names.put(answer.block().material().id(), answer.block().material().name());
            names.put(answer.block().wood().id(), answer.block().wood().name());
        });
        return names;
    }
}
