package hafthold.report;

import hafthold.decide.Claim;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * A judged claim as a note for the bench: the verdict first, then what was measured beside what was to be expected, whose
 * part it is, what comes back, what to do, how sure that is, what to write to the customer, and what all this rests on.
 *
 * @param style language and units
 */
public record ClaimText(BenchStyle style) {
    private static final int WIDTH = 100;
    private static final Integer[] MEASURED = {11, 6, 14, 10, 10, 22, 10};
    private static final Integer[] SHARES = {34, 14, 8, 14, 14};

    /** The whole note, ending in a line feed. */
    public String of(Claim claim) {
        ClaimWords words = new ClaimWords(style, claim);
        ClaimTables tables = new ClaimTables(style, claim);
        ClaimAdvice advice = new ClaimAdvice(style, claim);
        StringBuilder text = new StringBuilder();
        text.append(words.title()).append("\n\n");
        text.append(Paragraph.hanging("", words.verdict(), WIDTH)).append('\n');
        text.append(style.say("claim.caption.measured", "unit", style.unit())).append('\n');
        table(text, MEASURED, tables.measuredHead(), tables.measured());
        text.append(Paragraph.hanging("  ", style.say("claim.signs"), WIDTH)).append('\n');
        text.append(style.say("claim.heading.shares")).append('\n');
        tables.sharedOut().forEach(row -> {
            text.append("  ")
                    .append(Paragraph.plain(style.say(
                            "claim.shares",
                            "step",
                            words.step(row.measured()),
                            "point",
                            words.point(row.measured().point()),
                            "day",
                            words.day(row.measured().on()))))
                    .append('\n');
            table(text, SHARES, tables.sharesHead(), tables.shares(row));
        });
        text.append(Paragraph.hanging("  ", style.say("claim.shares.note"), WIDTH))
                .append('\n');
        list(text, style.say("claim.heading.back"), advice.back());
        list(text, style.say("heading.to-do"), advice.toDo());
        list(text, style.say("claim.heading.sure"), advice.sure());
        text.append(style.say("claim.heading.customer")).append('\n');
        text.append(Paragraph.hanging("  ", new ClaimForCustomer(style, claim).words(), WIDTH))
                .append('\n');
        told(text, claim);
        foundations(text, claim);
        return text.toString();
    }

    private static void table(StringBuilder text, Integer[] widths, List<String> head, List<List<String>> rows) {
        TextColumns columns = new TextColumns(widths);
        columns.row(head.toArray(new String[0]));
        rows.forEach(row -> columns.row(row.toArray(new String[0])));
        columns.text().lines().forEach(line -> text.append("    ").append(line).append('\n'));
    }

    private static void list(StringBuilder text, String heading, List<String> sentences) {
        text.append(heading).append('\n');
        sentences.forEach(sentence -> text.append(Paragraph.hanging("  - ", sentence, WIDTH)));
        text.append('\n');
    }

    private void told(StringBuilder text, Claim claim) {
        text.append(style.say("claim.heading.told")).append('\n');
        TextColumns columns = new TextColumns(24, WIDTH - 28);
        ClaimInputs.of(claim, style).forEach(input -> columns.row(input.name(), input.value()));
        columns.text().lines().forEach(line -> text.append("  ").append(line).append('\n'));
        text.append('\n');
    }

    private void foundations(StringBuilder text, Claim claim) {
        text.append(style.say("heading.rests-on")).append('\n');
        List<Finding.Kind> kinds = new ArrayList<>(List.of(Finding.Kind.values()));
        List<FindingDigest> digests = FindingDigest.of(style, claim.findings(), FitInputs.names(claim.knife()));
        for (Finding.Kind kind : kinds) {
            List<FindingDigest> some =
                    digests.stream().filter(digest -> digest.kind() == kind).toList();
            if (!some.isEmpty()) {
                text.append("  ").append(FindingDigest.headingOf(style, kind)).append(":\n");
                some.forEach(
                        digest -> text.append(Paragraph.hanging("  - ", digest.lead(style) + digest.text(), WIDTH)));
            }
        }
    }
}
