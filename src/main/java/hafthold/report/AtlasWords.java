package hafthold.report;

import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas;
import hafthold.decide.Atlas.Line;
import hafthold.decide.Tally;
import hafthold.decide.Verdict;
import hafthold.material.Family;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Plain words about an atlas, shared by terminal and page.
 *
 * @param style language and units
 */
record AtlasWords(BenchStyle style) {

    /** Title of page and text. */
    String title(Atlas atlas) {
        return style.say(
                "atlas.title",
                "materials",
                style.counted("material", atlas.lines().size()),
                "places",
                style.counted("place", atlas.sites().size()),
                "setting",
                style.named("setting", atlas.setting()));
    }

    /** How all answers divide. */
    String lead(Atlas atlas) {
        Tally all = Tally.of(
                atlas.lines().stream().flatMap(line -> line.cells().stream()).toList());
        long everywhere = atlas.lines().stream()
                .filter(line -> Tally.of(line.cells()).of(Verdict.STAYS)
                        == atlas.sites().size())
                .count();
        return style.say(
                everywhere == 1 ? "atlas.lead.one" : "atlas.lead.many",
                "pairs",
                style.counted("pair", all.all()),
                "counts",
                new VerdictSign(style).counts(all),
                "everywhere",
                Long.toString(everywhere),
                "materials",
                style.counted("material", atlas.lines().size()));
    }

    /** A family as a heading, such as "Hard tissue". */
    String heading(Family family) {
        return BenchStyle.capital(style.family(family));
    }

    /** A climate in words. */
    String climate(ClimateGroup climate) {
        return style.named("climate", climate.id());
    }

    /** What places of a climate have in common. */
    String rule(ClimateGroup climate) {
        return style.named("climate-rule", climate.id());
    }

    /** A climate with the number of its places. */
    String places(Atlas atlas, ClimateGroup climate) {
        return style.joined(
                "comma",
                List.of(
                        climate(climate),
                        style.counted("place", atlas.placesOf(climate).size())));
    }

    /** A material with its cut inside a sentence, such as "quarter-sawn teak". */
    String nameOf(Line line) {
        return new AnswerWords(style).plainNameOf(line.cells().get(0).year());
    }

    /** Answers of a family in a climate. */
    static Tally tally(Atlas atlas, Family family, ClimateGroup climate) {
        return Tally.of(lines(atlas, family)
                .flatMap(line -> atlas.cells(line, climate).stream())
                .toList());
    }

    /** The material of a family that moves least in a climate. */
    private static Line best(Atlas atlas, Family family, ClimateGroup climate) {
        return lines(atlas, family)
                .min(Comparator.comparingDouble(line -> Atlas.meanUse(atlas.cells(line, climate))))
                .orElseThrow();
    }

    /** The best of a family in a climate with its verdict and its steps, such as "teak: stays, 0.02-0.05 mm". */
    String bestWords(Atlas atlas, Family family, ClimateGroup climate) {
        Line best = best(atlas, family, climate);
        return style.say(
                "atlas.best-of",
                "material",
                nameOf(best),
                "verdict",
                style.verdict(Tally.of(atlas.cells(best, climate)).usual()),
                "edge",
                style.withUnit(new WhereItStays(atlas, style).edgeRange(atlas.cells(best, climate))));
    }

    private static Stream<Line> lines(Atlas atlas, Family family) {
        return atlas.lines().stream().filter(line -> line.family() == family);
    }
}
