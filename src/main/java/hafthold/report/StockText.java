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
    private static final Integer[] SIDE_BY_SIDE = {26, 12, 12, 10, 20, 30};
    private static final Integer[] READ = {18, 12, 12, 12, 10, 14};

    /** The whole note, ending in a line feed. */
    public String of(List<StockAnswer> answers) {
        StringBuilder text = new StringBuilder();
        BenchNote note = new BenchNote(style, text);
        StockTables tables = new StockTables(style);
        if (answers.size() > 1) {
            text.append(style.say("stock.caption.blocks")).append('\n');
            note.table("  ", SIDE_BY_SIDE, tables.head(), tables.rows(answers));
            text.append('\n');
        }
        for (StockAnswer answer : answers) {
            block(note, answer, tables);
        }
        note.restsOn(FindingDigest.of(style, findings(answers), names(answers)));
        return text.toString();
    }

    private void block(BenchNote note, StockAnswer answer, StockTables tables) {
        StringBuilder text = note.text();
        StockWords words = new StockWords(style, answer);
        text.append(words.title()).append("\n\n");
        text.append(Paragraph.hanging("", words.lead().strip(), BenchNote.WIDTH))
                .append('\n');
        if (answer.fill().isPresent()) {
            StockFillWords fill = new StockFillWords(style, answer);
            List<String> lines = new ArrayList<>();
            if (answer.moisture().isPresent()) {
                lines.add(fill.lead());
            }
            lines.addAll(fill.advice());
            note.list(style.say("stock.heading.fill"), lines);
        }
        if (answer.moisture().isPresent()) {
            StockAdvice advice = new StockAdvice(style, answer);
            note.list(style.say("stock.heading.box"), advice.box());
            if (answer.told().isPresent()) {
                note.list(style.say("stock.heading.balance"), advice.balance());
            }
            note.list(style.say("heading.to-do"), advice.next());
            if (!answer.block().readings().isEmpty()) {
                text.append(style.say(
                                "stock.caption.read", "block", answer.block().name()))
                        .append('\n');
                note.table("  ", READ, tables.readHead(), tables.read(answer));
                text.append('\n');
            }
            if (answer.told().isPresent()) {
                note.list(style.say("stock.heading.sure"), advice.sure());
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
