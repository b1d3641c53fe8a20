package hafthold.report;

import hafthold.decide.AtlasSurprise;
import hafthold.decide.Tally;
import hafthold.decide.Verdict;

/**
 * What one might not have guessed of an atlas, a sentence each.
 *
 * @param style language and units
 */
record SurpriseWords(BenchStyle style) {

    /** One sentence. */
    String sentence(AtlasSurprise surprise) {
        AtlasWords words = new AtlasWords(style);
        if (surprise instanceof AtlasSurprise.Ends ends) {
            int harshest = ends.harshestTally().of(Verdict.STAYS);
            return style.say(
                    harshest == 1 ? "surprise.ends.one" : "surprise.ends.many",
                    "kindest",
                    ends.kindest().name(),
                    "count",
                    Integer.toString(ends.kindestTally().of(Verdict.STAYS)),
                    "all",
                    Integer.toString(ends.kindestTally().all()),
                    "harshest",
                    ends.harshest().name(),
                    "few",
                    Integer.toString(harshest));
        }
        if (surprise instanceof AtlasSurprise.OddPlace odd) {
            return style.say(
                    "surprise.place",
                    "place",
                    odd.site().name(),
                    "others",
                    style.named("climate-places", odd.group().id()),
                    "here",
                    percent(odd.here()),
                    "over",
                    percent(odd.climate()));
        }
        if (surprise instanceof AtlasSurprise.OddMaterial odd) {
            return style.say(
                    odd.isBetter() ? "surprise.better" : "surprise.worse",
                    "material",
                    BenchStyle.capital(words.nameOf(odd.line())),
                    "does",
                    doing(odd.usual()),
                    "family",
                    style.family(odd.line().family()),
                    "most",
                    doing(odd.ofFamily()));
        }
        AtlasSurprise.NoHelp none = (AtlasSurprise.NoHelp) surprise;
        return style.say(
                "surprise.no-help",
                "treated",
                BenchStyle.capital(words.nameOf(none.treated())),
                "plain",
                words.nameOf(none.plain()),
                "places",
                style.counted("place", none.places()));
    }

    /** What a verdict means, as the rest of a sentence. */
    private String doing(Verdict verdict) {
        return style.say("does." + verdict.word());
    }

    private static String percent(Tally tally) {
        return Long.toString(Math.round(100 * tally.share(Verdict.STAYS)));
    }
}
