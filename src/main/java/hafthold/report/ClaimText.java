package hafthold.report;

import hafthold.decide.Claim;

/**
 * A judged claim as a note for the bench: the verdict first, then what was measured beside what was to be expected, whose
 * part it is, what comes back, what to do, how sure that is, what to write to the customer, and what all this rests on.
 *
 * @param style language and units
 */
public record ClaimText(BenchStyle style) {
    private static final Integer[] MEASURED = {11, 6, 14, 10, 10, 22, 10};
    private static final Integer[] SHARES = {34, 14, 8, 14, 14};

    /** The whole note, ending in a line feed. */
    public String of(Claim claim) {
        ClaimWords words = new ClaimWords(style, claim);
        ClaimTables tables = new ClaimTables(style, claim);
        ClaimAdvice advice = new ClaimAdvice(style, claim);
        StringBuilder text = new StringBuilder();
        BenchNote note = new BenchNote(style, text);
        text.append(Paragraph.hanging("", words.title(), BenchNote.WIDTH)).append('\n');
        text.append(Paragraph.hanging("", words.verdict(), BenchNote.WIDTH)).append('\n');
        text.append(style.say("claim.caption.measured", "unit", style.unit())).append('\n');
        note.table("    ", MEASURED, tables.measuredHead(), tables.measured());
        text.append(Paragraph.hanging("  ", style.say("claim.signs"), BenchNote.WIDTH))
                .append('\n');
        text.append(style.say("claim.heading.shares")).append('\n');
        tables.sharedOut().forEach(row -> {
            text.append("  ").append(Paragraph.plain(words.shared(row))).append('\n');
            note.table("    ", SHARES, tables.sharesHead(), tables.shares(row));
        });
        text.append(Paragraph.hanging("  ", tables.sharesNote(), BenchNote.WIDTH))
                .append('\n');
        note.list(style.say("claim.heading.back"), advice.back());
        note.list(style.say("heading.to-do"), new ClaimToDo(style, claim).words());
        note.list(style.say("claim.heading.sure"), advice.sure());
        text.append(style.say("claim.heading.customer")).append('\n');
        text.append(Paragraph.hanging("  ", new ClaimForCustomer(style, claim).words(), BenchNote.WIDTH))
                .append('\n');
        told(text, claim);
        note.restsOn(FindingDigest.of(style, claim.findings(), FitInputs.names(claim.knife())));
        return text.toString();
    }

    private void told(StringBuilder text, Claim claim) {
        text.append(style.say("claim.heading.told")).append('\n');
        TextColumns columns = new TextColumns(24, BenchNote.WIDTH - 28);
        ClaimInputs.of(claim, style).forEach(input -> columns.row(input.name(), input.value()));
        columns.text().lines().forEach(line -> text.append("  ").append(line).append('\n'));
        text.append('\n');
    }
}
