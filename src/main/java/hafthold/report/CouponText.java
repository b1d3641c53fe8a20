package hafthold.report;

import hafthold.decide.CouponAnswer;
import hafthold.decide.CouponStudy;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What coupons told as a note for the bench: what to use first, then figures against the book, what does not go together, how
 * far it had settled, readings, what would tell more, how to use it, and what all this rests on.
 *
 * @param style language and units
 */
public record CouponText(BenchStyle style) {
    private static final Integer[] FIGURES = {36, 14, 20, 20, 10};
    private static final Integer[] READINGS = {26, 14, 9, 18, 18};
    private static final Integer[] OUTCOMES = {32, 24, 9, 7};

    /** The whole note, ending in a line feed. */
    public String of(CouponAnswer answer) {
        StringBuilder text = new StringBuilder();
        BenchNote note = new BenchNote(style, text);
        answer.studies().forEach(study -> study(note, study));
        answer.outcomes().ifPresent(tally -> {
            OutcomeWords words = new OutcomeWords(style, tally);
            text.append(style.say("coupon.heading.outcomes")).append("\n\n");
            words.sentences().forEach(sentence -> text.append(Paragraph.hanging("", sentence, BenchNote.WIDTH)));
            text.append('\n');
            text.append(style.say("coupon.caption.outcomes", "unit", style.unit()))
                    .append('\n');
            note.table("  ", OUTCOMES, words.head(), words.rows());
            text.append('\n');
        });
        note.restsOn(FindingDigest.of(style, answer.findings(), names(answer)));
        return text.toString();
    }

    private void study(BenchNote note, CouponStudy study) {
        StringBuilder text = note.text();
        CouponWords words = new CouponWords(style, study);
        CouponTables tables = new CouponTables(style, study);
        text.append(words.title()).append("\n\n");
        text.append(Paragraph.hanging("", words.verdict(), BenchNote.WIDTH)).append('\n');
        note.list(style.say("coupon.heading.warnings"), words.warnings());
        text.append(tables.figuresCaption()).append('\n');
        note.table("  ", FIGURES, tables.figuresHead(), tables.figures());
        text.append('\n');
        note.list(style.say("coupon.heading.settling"), words.settling());
        note.list(style.say("coupon.heading.plans"), words.plans());
        note.list(style.say("coupon.heading.use"), words.use().stream().toList());
        text.append(tables.readingsCaption()).append('\n');
        note.table("  ", READINGS, tables.readingsHead(), tables.readings());
        text.append('\n');
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
