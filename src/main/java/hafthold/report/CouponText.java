package hafthold.report;

import hafthold.decide.CouponAnswer;
import hafthold.decide.CouponStudy;
import hafthold.source.Finding;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What coupons told as a note for the bench: what to use first, then figures against the book, what does not go together, how
 * far it had settled, readings, what would tell more, how to use it, and what all this rests on.
 *
 * @param style language and units
 */
public record CouponText(BenchStyle style) {
    private static final int WIDTH = 100;
    private static final Integer[] FIGURES = {36, 14, 20, 20, 10};
    private static final Integer[] READINGS = {26, 14, 9, 18, 18};
    private static final Integer[] OUTCOMES = {32, 24, 9, 7};

    /** The whole note, ending in a line feed. */
    public String of(CouponAnswer answer) {
        StringBuilder text = new StringBuilder();
        answer.studies().forEach(study -> study(text, study));
        answer.outcomes().ifPresent(tally -> {
            OutcomeWords words = new OutcomeWords(style, tally);
            text.append(style.say("coupon.heading.outcomes")).append("\n\n");
            words.sentences().forEach(sentence -> text.append(Paragraph.hanging("", sentence, WIDTH)));
            text.append('\n');
            text.append(style.say("coupon.caption.outcomes", "unit", style.unit()))
                    .append('\n');
            table(text, OUTCOMES, words.head(), words.rows());
        });
        foundations(text, answer);
        return text.toString();
    }

    private void study(StringBuilder text, CouponStudy study) {
        CouponWords words = new CouponWords(style, study);
        CouponTables tables = new CouponTables(style, study);
        text.append(words.title()).append("\n\n");
        text.append(Paragraph.hanging("", words.verdict(), WIDTH)).append('\n');
        list(text, style.say("coupon.heading.warnings"), words.warnings());
        text.append(tables.figuresCaption()).append('\n');
        table(text, FIGURES, tables.figuresHead(), tables.figures());
        list(text, style.say("coupon.heading.settling"), words.settling());
        list(text, style.say("coupon.heading.plans"), words.plans());
        list(text, style.say("coupon.heading.use"), words.use().stream().toList());
        text.append(tables.readingsCaption()).append('\n');
        table(text, READINGS, tables.readingsHead(), tables.readings());
    }

    private static void table(StringBuilder text, Integer[] widths, List<String> head, List<List<String>> rows) {
        TextColumns columns = new TextColumns(widths);
        columns.row(head.toArray(new String[0]));
        rows.forEach(row -> columns.row(row.toArray(new String[0])));
        columns.text().lines().forEach(line -> text.append("  ").append(line).append('\n'));
        text.append('\n');
    }

    private static void list(StringBuilder text, String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            text.append(heading).append('\n');
            sentences.forEach(sentence -> text.append(Paragraph.hanging("  - ", sentence, WIDTH)));
            text.append('\n');
        }
    }

    private void foundations(StringBuilder text, CouponAnswer answer) {
        text.append(style.say("heading.rests-on")).append('\n');
        List<FindingDigest> digests = FindingDigest.of(style, answer.findings(), names(answer));
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

    /** Names for people by the ids that findings speak of. */
    static Map<String, String> names(CouponAnswer answer) {
        return answer.studies().stream()
                .collect(Collectors.toMap(
                        study -> study.material().id(),
                        study -> study.material().name(),
                        (one, same) -> one));
    }
}
