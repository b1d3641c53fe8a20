package hafthold.report;

import hafthold.decide.CouponFigure;
import hafthold.decide.CouponFigure.Kind;
import hafthold.decide.CouponPlan;
import hafthold.decide.CouponStudy;
import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.quantity.Band;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A study of coupons in sentences.
 *
 * @param style language and units
 * @param study what the coupons told
 */
record CouponWords(BenchStyle style, CouponStudy study) {
    private static final double SURER = 1.15;
    private static final double SURE_IN_TENTHS = 3;
    private static final double COARSE_STEP = 0.003;
    private static final double SETTLED_AFTER = 3;

    /** Heading of the study. */
    String title() {
        return style.say("coupon.title", "material", study.material().name());
    }

    /** What to do with the figures. */
    String verdict() {
        String material = study.material().name();
        List<CouponFigure> told = told();
        if (study.isAdverse()) {
            return style.say("coupon.verdict.wait", "material", material);
        }
        if (told.isEmpty()) {
            return style.say("coupon.verdict.keep", "material", material);
        }
        String use = style.say(
                "coupon.verdict.use",
                "material",
                material,
                "figures",
                style.joined("semicolon", told.stream().map(this::sureness).toList()));
        List<String> kept = study.figures().stream()
                .filter(figure -> !figure.told() && figure.kind() != Kind.WIDTH)
                .map(figure -> name(figure.kind()))
                .toList();
        return kept.isEmpty()
                ? use
                : use + " " + style.say("coupon.verdict.rest", "figures", style.joined("semicolon", kept));
    }

    private List<CouponFigure> told() {
        return study.told().stream()
                .filter(figure -> figure.kind() != Kind.WIDTH)
                .toList();
    }

    /** A figure with how sure it is. */
    private String sureness(CouponFigure figure) {
        return style.say(
                "coupon.sureness",
                "figure",
                name(figure.kind()),
                "own",
                withUnit(figure.kind(), figure.own(), figure),
                "sure",
                sure(figure));
    }

    /** How sure a figure is against the tables. */
    String sure(CouponFigure figure) {
        double times = figure.timesAsSure();
        return times < SURER ? style.say("coupon.sure.no") : style.say("coupon.sure.times", "times", times(times));
    }

    /** So many times: tenths where there are few. */
    String times(double times) {
        return style.fixed(times, times < SURE_IN_TENTHS ? 1 : 0);
    }

    String name(Kind kind) {
        return style.tell(study.name(kind));
    }

    private String withUnit(Kind kind, Band band, CouponFigure figure) {
        return style.say("coupon.unit." + style.keyOf(kind), "value", cell(kind, band, figure), "unit", style.unit());
    }

    /** A figure with its band, in the unit of its row. */
    String cell(Kind kind, Band band, CouponFigure figure) {
        return switch (kind) {
            case ACROSS, THROUGH, ANY_WAY -> range(band, 1, 3);
            case ALONG -> range(band, 1, 4);
            case SORPTION -> range(band, 100, 1);
            case SPEED -> range(band, 1 / figure.book().value(), 2);
            case DENSITY -> range(band, 1, 0);
            case WIDTH -> range(band, style.shown(CouponFigure.WIDTH.metres()), style.isThou() ? 1 : 2);
        };
    }

    private String range(Band band, double factor, int decimals) {
        return style.say(
                "range",
                "value",
                style.fixed(factor * band.value(), decimals),
                "low",
                style.fixed(factor * band.low(), decimals),
                "high",
                style.fixed(factor * band.high(), decimals));
    }

    /** What is to be minded before the figures are used. */
    List<String> warnings() {
        return study.warnings().stream().map(style::tell).toList();
    }

    /** How far each coupon had settled. */
    List<String> settling() {
        List<String> sentences = new ArrayList<>();
        for (int c = 0; c < study.coupons().size(); c++) {
            Band days = study.settlingDays().get(c);
            sentences.add(style.say(
                    "coupon.settling.needs",
                    "coupon",
                    study.coupons().get(c).name(),
                    "days",
                    days(days.value(), days),
                    "low",
                    days(days.low(), days),
                    "high",
                    days(days.high(), days),
                    "rest",
                    style.fixed(Math.ceil(SETTLED_AFTER * days.high()), 0)));
        }
        for (CouponStudy.Settling settling : study.settlings()) {
            sentences.add(style.say(
                    settling.isAtRest() ? "coupon.settling.at-rest" : "coupon.settling.on-its-way",
                    "reading",
                    reading(settling.coupon(), settling.reading()),
                    "left",
                    style.fixed(100 * settling.left().value(), 0),
                    "low",
                    style.fixed(100 * settling.left().low(), 0),
                    "high",
                    style.fixed(100 * settling.left().high(), 0)));
        }
        return sentences;
    }

    private String days(double days, Band shown) {
        return style.fixed(days, shown.low() < SURE_IN_TENTHS ? 1 : 0);
    }

    /** How the own figures come to use; empty where they should not. */
    Optional<String> use() {
        return study.isAdverse() || told().isEmpty()
                ? Optional.empty()
                : Optional.of(style.say(
                                study.own().isNew() ? "coupon.use.new" : "coupon.use.listed",
                                "id",
                                study.own().id(),
                                "material",
                                study.material().name())
                        + " "
                        + style.say("coupon.use.rest"));
    }

    /** What would tell more. */
    List<String> plans() {
        List<String> sentences = new ArrayList<>();
        for (int c = 0; c < study.coupons().size(); c++) {
            coarseScale(study.coupons().get(c), sentences);
        }
        for (CouponFigure figure : study.figures()) {
            List<CouponPlan> plans = study.plans().stream()
                    .filter(plan -> plan.figure() == figure.kind())
                    .toList();
            if (!plans.isEmpty()) {
                sentences.add(style.say(
                        figure.told() ? "coupon.plan.better" : "coupon.plan.blind",
                        "figure",
                        name(figure.kind()),
                        "measures",
                        style.joined("coupon.or", plans.stream().map(this::plan).toList())));
            }
        }
        return sentences;
    }

    private void coarseScale(Coupon coupon, List<String> sentences) {
        double weight = coupon.ovenDry()
                .or(() -> coupon.readings().stream()
                        .flatMap(one -> one.weight().stream())
                        .findFirst())
                .map(mass -> mass.kilograms())
                .orElse(0.0);
        double step = weight > 0 ? coupon.tools().balance().kilograms() / weight : 0;
        if (step > COARSE_STEP) {
            sentences.add(
                    style.say("coupon.coarse-scale", "coupon", coupon.name(), "points", style.fixed(100 * step, 1)));
        }
    }

    private String plan(CouponPlan plan) {
        Coupon coupon = study.coupons().get(plan.coupon());
        return style.say(
                study.coupons().size() > 1 ? "coupon.plan.of" : "coupon.plan",
                "coupon",
                coupon.name(),
                "measure",
                style.say(
                        "coupon.measure." + style.keyOf(plan.measure()),
                        "width",
                        style.dimension(coupon.width()),
                        "twice",
                        style.dimension(new hafthold.quantity.Length(
                                2 * study.coupons().get(plan.coupon()).width().metres()))),
                "times",
                times(plan.timesNarrower()));
    }

    /** A reading by its day, or its number, with its air. */
    String reading(int coupon, int number) {
        Coupon one = study.coupons().get(coupon);
        String name = study.coupons().size() > 1 ? one.name() + ", " : "";
        if (number == one.readings().size()) {
            return name + style.say("coupon.reading.oven");
        }
        CouponReading reading = one.readings().get(number);
        String humidity = style.plain(reading.humidity().percent());
        return name
                + reading.on()
                        .map(day -> style.say(
                                "coupon.reading.day",
                                "day",
                                style.tell(Message.day(day.getMonthValue(), day.getDayOfMonth())),
                                "humidity",
                                humidity))
                        .orElseGet(() -> style.say(
                                "coupon.reading", "number", Integer.toString(number + 1), "humidity", humidity));
    }
}
