package hafthold.report;

import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas;
import hafthold.decide.Atlas.Line;
import hafthold.decide.AtlasSurprise;
import hafthold.decide.Tally;
import hafthold.decide.Verdict;
import hafthold.material.Family;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Plain words about an atlas, shared by terminal and page. */
final class AtlasWords {
    private AtlasWords() {}

    /** Title of page and text. */
    static String title(Atlas atlas) {
        return "Where handle materials stay: " + count(atlas.lines().size(), "material") + " in "
                + count(atlas.sites().size(), "place") + ", " + atlas.setting().replace('-', ' ');
    }

    /** How all answers divide. */
    static String lead(Atlas atlas) {
        Tally all = Tally.of(
                atlas.lines().stream().flatMap(line -> line.cells().stream()).toList());
        long everywhere = atlas.lines().stream()
                .filter(line -> Tally.of(line.cells()).of(Verdict.STAYS)
                        == atlas.sites().size())
                .count();
        return "Of " + count(all.all(), "pair") + " of material and place: " + VerdictSign.counts(all) + ". "
                + everywhere + " of " + count(atlas.lines().size(), "material")
                + (everywhere == 1 ? " stays everywhere." : " stay everywhere.");
    }

    /** A family as a heading, such as "Hard tissue". */
    static String heading(Family family) {
        String word = plain(family);
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }

    /** A family in a sentence. */
    static String plain(Family family) {
        return family.word().replace('-', ' ');
    }

    /** A material with its cut inside a sentence, such as "quarter-sawn teak". */
    static String nameOf(Line line) {
        return AnswerWords.plainNameOf(line.cells().get(0).year());
    }

    /** Answers of a family in a climate. */
    static Tally tally(Atlas atlas, Family family, ClimateGroup climate) {
        return Tally.of(lines(atlas, family)
                .flatMap(line -> atlas.cells(line, climate).stream())
                .toList());
    }

    /** The material of a family that moves least in a climate. */
    static Line best(Atlas atlas, Family family, ClimateGroup climate) {
        return lines(atlas, family)
                .min(Comparator.comparingDouble(line -> Atlas.meanUse(atlas.cells(line, climate))))
                .orElseThrow();
    }

    /** The best of a family in a climate with its verdict and its steps, such as "teak: stays, 0.02-0.05 mm". */
    static String bestWords(Atlas atlas, Family family, ClimateGroup climate) {
        Line best = best(atlas, family, climate);
        return nameOf(best) + ": "
                + Tally.of(atlas.cells(best, climate)).usual().word() + ", edge "
                + WhereItStays.edgeRange(atlas.cells(best, climate)) + Paragraph.HOLD + "mm";
    }

    private static Stream<Line> lines(Atlas atlas, Family family) {
        return atlas.lines().stream().filter(line -> line.family() == family);
    }

    /** How the places of each climate are told apart, one phrase a climate. */
    static List<String> rules(Atlas atlas) {
        return atlas.climates().stream()
                .map(climate -> climate.words() + ": " + climate.rule())
                .toList();
    }

    /** What the grouping rests on. */
    static String basis() {
        return "Climates are told apart by the outdoor air's monthly normals. Limits of temperature follow the"
                + " Köppen–Geiger classes (Peel and others 2007); humidity stands in the place of rain, because a handle"
                + " feels the air and not the rain, and its limits are ours. Dry climates are taken out first, then hot"
                + " ones, then by winter.";
    }

    /** One sentence a surprise. */
    static String sentence(AtlasSurprise surprise) {
        if (surprise instanceof AtlasSurprise.Ends ends) {
            return "Kindest is " + ends.kindest().name() + ", where "
                    + ends.kindestTally().of(Verdict.STAYS) + " of "
                    + ends.kindestTally().all() + " materials stay; harshest is "
                    + ends.harshest().name() + ", where " + ends.harshestTally().of(Verdict.STAYS)
                    + (ends.harshestTally().of(Verdict.STAYS) == 1 ? " does." : " do.");
        }
        if (surprise instanceof AtlasSurprise.OddPlace odd) {
            return odd.site().name() + " is unlike other places " + describing(odd.group()) + ": "
                    + percent(odd.here()) + " of the materials stay there, " + percent(odd.climate()) + " over all of"
                    + " them.";
        }
        if (surprise instanceof AtlasSurprise.OddMaterial odd) {
            return upper(nameOf(odd.line())) + (odd.isBetter() ? " does better" : " does worse") + " than its family: "
                    + doing(odd.usual()) + " in most places, where most "
                    + plain(odd.line().family()) + " "
                    + doing(odd.ofFamily()) + ".";
        }
        AtlasSurprise.NoHelp none = (AtlasSurprise.NoHelp) surprise;
        return upper(nameOf(none.treated())) + " moves no less than " + nameOf(none.plain()) + " in "
                + count(none.places(), "place") + ".";
    }

    /** What a verdict means, as the rest of a sentence. */
    private static String doing(Verdict verdict) {
        return switch (verdict) {
            case STAYS -> "stays";
            case CARE -> "needs care";
            case CHANGE -> "wants another build";
            case REFUSE -> "does not belong";
            case UNKNOWN -> "cannot be judged";
        };
    }

    private static String describing(ClimateGroup climate) {
        return switch (climate) {
            case HOT_DAMP, MILD, COOL_DRY, HOT_DRY -> "that are " + climate.words();
            case DAMP_SUMMER -> "with a hot damp summer";
            case DRY_SUMMER -> "with a hot dry summer";
            case FROSTY_WINTER -> "with a frosty winter";
            case HARD_WINTER -> "with a hard winter";
        };
    }

    private static String percent(Tally tally) {
        return Math.round(100 * tally.share(Verdict.STAYS)) + " %";
    }

    private static String upper(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
