package hafthold.report;

import hafthold.decide.Claim;
import java.util.List;

/** A judged claim as markdown: what {@link ClaimText} says, in its order. */
public final class ClaimMarkdown {
    private ClaimMarkdown() {}

    /** The whole note. */
    public static String of(Claim claim, BenchStyle style) {
        ClaimWords words = new ClaimWords(style, claim);
        ClaimTables tables = new ClaimTables(style, claim);
        ClaimAdvice advice = new ClaimAdvice(style, claim);
        MarkdownText text = new MarkdownText()
                .heading(1, words.title())
                .paragraph(words.verdict())
                .heading(2, style.say("claim.caption.measured", "unit", style.unit()))
                .table(tables.measuredHead(), tables.measured())
                .paragraph(style.say("claim.signs"))
                .heading(2, style.say("claim.heading.shares"));
        tables.sharedOut()
                .forEach(row -> text.paragraph(words.shared(row)).table(tables.sharesHead(), tables.shares(row)));
        return text.paragraph(tables.sharesNote())
                        .heading(2, style.say("claim.heading.back"))
                        .points(advice.back())
                        .heading(2, style.say("heading.to-do"))
                        .points(new ClaimToDo(style, claim).words())
                        .heading(2, style.say("claim.heading.sure"))
                        .points(advice.sure())
                        .heading(2, style.say("claim.heading.customer"))
                        .paragraph(new ClaimForCustomer(style, claim).words())
                        .heading(2, style.say("claim.heading.told"))
                        .table(
                                style.heads("input", "value"),
                                ClaimInputs.of(claim, style).stream()
                                        .map(input -> List.of(input.name(), input.value()))
                                        .toList())
                        .heading(2, style.say("heading.rests-on"))
                        .points(FindingDigest.grounds(style, claim.findings(), FitInputs.names(claim.knife())))
                        .toString()
                        .strip()
                + "\n";
    }
}
