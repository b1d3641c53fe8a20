package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.knife.FullTangBuild;
import hafthold.knife.Pin;
import hafthold.quantity.Band;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.PinYear;
import hafthold.simulate.FitYear.SideYear;
import hafthold.simulate.HandleYear;
import hafthold.simulate.Settling;
import java.util.ArrayList;
import java.util.List;

/**
 * What a full-tang knife does, row by row.
 *
 * @param style language and units
 * @param fit the knife and its year
 * @param hasEvents whether its year is the worse of that without and with events
 */
record FullTangWords(BenchStyle style, FullTangFit fit, boolean hasEvents) {
    private static final double SHOWS = 0.005e-3;
    private static final double CLOSE_TO_EDGE = 1.5;

    void write(FitRows rows) {
        FitYear year = fit.year();
        FullTangBuild build = fit.knife().build();
        if (hasEvents) {
            rows.add("counted", style.say("row.counted"), style.say("counted"));
        }
        rows.add("made", style.say("row.made"), made(build, year.whole()));
        rows.add("handle", style.say("row.handle"), handle(build));
        rows.add("edges", style.say("row.edges"), edges(year));
        if (year.sides().size() > 1) {
            year.sides()
                    .forEach(side -> rows.add("sides", "- " + style.named("of-two", side.name()), quiet(side(side))));
        }
        if (year.places().size() > 1) {
            rows.add("edges", "", quiet(style.say("edges.places", "places", places(year))));
        }
        Settling.of(fit.knife(), fit.destination())
                .ifPresent(settling ->
                        rows.add("timing", style.say("row.timing"), SettlingWords.sentence(style, settling)));
        rows.add("faces", style.say("row.faces"), faces(year));
        BentWords bent = new BentWords(style);
        year.bolster().ifPresent(bolster -> rows.add("bolster", style.say("row.bolster"), bent.bolster(bolster)));
        year.bow()
                .ifPresent(bow -> rows.add(
                        "bow",
                        style.say("row.bow"),
                        quiet(bent.bow(bow, build.scales().length()))));
        for (int i = 0; i < year.pins().size(); i++) {
            rows.add(
                    "pins",
                    style.say("row.pin", "number", Integer.toString(i + 1)),
                    pin(build.pins().get(i), year.pins().get(i)));
        }
        StrengthWords strength = new StrengthWords(style);
        rows.add("strength", style.say("row.glue"), strength.glue(year));
        rows.add("strength", style.say("row.scale"), strength.scale(year));
        rows.add("strength", style.say("row.ends"), ends(year.whole()));
        rows.add("strength", style.say("row.heat"), heat(year));
        rows.add("doubt", style.say("row.doubt"), new DriverWords(style).row(fit, year.drivers(), false));
    }

    /** Marks what is told of the year without events, where the rest counts them. */
    private String quiet(String words) {
        return hasEvents ? style.say("counted.quiet", "words", words) : words;
    }

    private String made(FullTangBuild build, HandleYear whole) {
        String glueUp = FitText.state(build.glueUp(), style);
        String made = FitText.state(build.made(), style);
        return style.say(
                "made.moisture",
                "made",
                glueUp.equals(made)
                        ? style.say("made.at-once", "state", made)
                        : style.say("made.in-turn", "glued", glueUp, "sanded", made),
                "finish",
                style.percent(whole.moisture().finish()),
                "range",
                new AnswerWords(style).moistureRange(whole));
    }

    private String handle(FullTangBuild build) {
        List<String> sizes = new ArrayList<>();
        sizes.add(style.say(
                "handle.sizes",
                "length",
                style.size(build.scales().length()),
                "width",
                style.size(build.tang().width()),
                "thickness",
                style.size(build.scales().thickness())));
        fit.knife().liners().forEach(liner -> sizes.add(style.say("handle.liner", "liner", liner.name())));
        return style.say(
                "handle",
                "sizes",
                style.joined("comma", sizes),
                "glue-line",
                style.size(build.glue().thickness()),
                "glue",
                fit.knife().adhesive().name(),
                "finish",
                fit.knife().finish().name());
    }

    private String edges(FitYear year) {
        HandleYear whole = year.whole();
        EdgeStep worst = EdgeStep.worst(whole);
        boolean shy = worst.side() == EdgeStep.Side.SHY;
        Band free = shy ? whole.edge().free().shy() : whole.edge().free().proud();
        if (worst.isFlush() && new BenchLength(free).isZero()) {
            return style.say("edges.flush");
        }
        AnswerWords words = new AnswerWords(style);
        String text = style.say(
                "edges",
                "step",
                words.side(worst.side(), worst.length().sized(style)),
                "month",
                style.month(whole.worstMonth()),
                "free",
                length(free),
                "tang",
                length(
                        shy
                                ? whole.edge().tangLine().shy()
                                : whole.edge().tangLine().proud()),
                "outer",
                length(shy ? year.outerShy() : year.outerProud()));
        EdgeStep other = EdgeStep.other(whole);
        return other.isFlush()
                ? text
                : text + " "
                        + style.say(
                                "edges.other",
                                "step",
                                words.side(other.side(), other.length().sized(style)));
    }

    private String places(FitYear year) {
        return style.joined(
                "semicolon",
                year.places().stream()
                        .map(place -> style.say(
                                "edges.place",
                                "along",
                                style.size(place.along()),
                                "width",
                                style.size(place.width()),
                                "step",
                                either(
                                        Band.exact(place.edgeShy()),
                                        "side.shy",
                                        Band.exact(place.edgeProud()),
                                        "side.proud",
                                        "flush")))
                        .toList());
    }

    private String side(SideYear side) {
        return style.say(
                "edges.side",
                "cut",
                style.cut(side.cut()),
                "shy",
                length(side.edgeShy()),
                "proud",
                length(side.edgeProud()),
                "free-shy",
                length(side.freeShy()),
                "free-proud",
                length(side.freeProud()));
    }

    private String faces(FitYear year) {
        HandleYear whole = year.whole();
        List<String> parts = new ArrayList<>();
        if (!year.pins().isEmpty()) {
            parts.add(style.say(
                    "faces.heads",
                    "step",
                    either(whole.pins().headProud(), "faces.above", whole.pins().headSunk(), "faces.below", "flush")));
        }
        parts.add(style.say(
                "faces.face",
                "shape",
                either(year.domeHollow(), "faces.hollow", year.domeRound(), "faces.round", "faces.flat")));
        if (shows(year.set())) {
            parts.add(style.say("faces.set", "size", length(year.set())));
        }
        return style.joined("semicolon", parts);
    }

    private String pin(Pin pin, PinYear year) {
        List<String> parts = new ArrayList<>();
        parts.add(style.say(
                "pins.size",
                "pin",
                style.size(pin.diameter()),
                "hole",
                style.size(pin.hole()),
                "fill",
                style.named("pins.fill", pin.fill().name())));
        parts.add(style.say("pins.across", "room", room(year.gapAcross(), year.squeezeAcross())));
        parts.add(style.say("pins.along", "room", room(year.gapAlong(), year.squeezeAlong())));
        new StrengthWords(style).besidePin(year).ifPresent(parts::add);
        if (year.edgeDistance().metres() < CLOSE_TO_EDGE * pin.diameter().metres()) {
            parts.add(style.say("pins.edge", "size", style.size(year.edgeDistance())));
        }
        return style.joined("semicolon", parts);
    }

    private String room(Band gap, Band squeeze) {
        List<String> parts = new ArrayList<>();
        if (shows(squeeze)) {
            parts.add(style.say("pins.tight", "size", length(squeeze)));
        }
        if (shows(gap)) {
            parts.add(style.say("pin.gap", "size", length(gap)));
        }
        return parts.isEmpty() ? style.say("pin.snug") : style.joined("comma", parts);
    }

    private String ends(HandleYear whole) {
        return style.say(
                "strength.ends",
                "step",
                either(whole.ends().shortBy(), "ends.short", whole.ends().longBy(), "ends.long", "flush"),
                "free",
                length(whole.ends().lengthMismatch()));
    }

    private String heat(FitYear year) {
        String hottest = style.fixed(year.hottestCelsius(), 0);
        String coldest = style.fixed(year.coldestCelsius(), 0);
        return year.softening()
                .map(softening -> style.say(
                        softening.kelvin().value() < 0 ? "strength.heat.above" : "strength.heat.below",
                        "hottest",
                        hottest,
                        "margin",
                        style.fixed(Math.abs(softening.kelvin().value()), 0),
                        "softens",
                        softening.material(),
                        "coldest",
                        coldest))
                .orElseGet(() -> style.say("strength.heat.unstated", "hottest", hottest, "coldest", coldest));
    }

    private String length(Band band) {
        return new BenchLength(band).hundredths(style);
    }

    private String either(Band one, String oneKey, Band other, String otherKey, String none) {
        return BentWords.either(style, one, oneKey, other, otherKey, none);
    }

    private static boolean shows(Band band) {
        return band.value() > SHOWS;
    }
}
