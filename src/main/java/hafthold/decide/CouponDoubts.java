package hafthold.decide;

import hafthold.decide.CouponFigure.Kind;
import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.quantity.Band;
import hafthold.simulate.CouponModel;
import hafthold.simulate.CouponModel.Datum;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What does not go together in a study, and what a maker must not read out of it.
 *
 * @param study without its warnings
 * @param model what it was worked out with
 * @param posterior likewise
 */
record CouponDoubts(CouponStudy study, CouponModel model, CouponPosterior posterior) {
    private static final double FAR_OFF = 3;
    private static final double FEW = 100;
    private static final double FAR_TURN = 25;
    private static final double NEAR_AIRS = 0.15;
    private static final double BEYOND_ITS_RANGE = 1;

    /** The study with its warnings. */
    CouponStudy told() {
        List<Message> warnings = new ArrayList<>();
        farReading().ifPresent(warnings::add);
        backwards().ifPresent(warnings::add);
        if (study.fits() < CouponStudy.UNLIKELY) {
            warnings.add(Message.of("coupon.warning.misfit"));
        }
        study.told().stream()
                .filter(figure -> figure.apart() && figure.kind() != Kind.WIDTH)
                .forEach(figure ->
                        warnings.add(Message.of(warning(figure), Map.of("figure", study.name(figure.kind())))));
        rings().ifPresent(warnings::add);
        hygrometer().ifPresent(warnings::add);
        nearAirs().ifPresent(warnings::add);
        if (study.told().isEmpty()) {
            warnings.add(Message.of("coupon.warning.nothing"));
        }
        if (study.effectiveSamples() < FEW) {
            warnings.add(Message.of(
                    "coupon.warning.few-draws",
                    Map.of("count", Message.number(Math.floor(study.effectiveSamples()), 0))));
        }
        return new CouponStudy(
                study.material(),
                study.own(),
                study.coupons(),
                study.figures(),
                study.settlings(),
                study.settlingDays(),
                study.readings(),
                study.plans(),
                warnings,
                study.fits(),
                study.samples(),
                study.effectiveSamples(),
                study.findings());
    }

    /** The reading that lies furthest from what even the best figures say, where that is too far. */
    private Optional<Message> farReading() {
        double[] left = posterior.left();
        int furthest = 0;
        for (int i = 1; i < left.length; i++) {
            furthest = Math.abs(left[i]) > Math.abs(left[furthest]) ? i : furthest;
        }
        if (left.length == 0 || Math.abs(left[furthest]) < FAR_OFF) {
            return Optional.empty();
        }
        Datum datum = model.data().get(furthest);
        Coupon coupon = study.coupons().get(datum.coupon());
        boolean isDry = datum.reading() == coupon.readings().size();
        String what =
                datum.side().map(side -> side.name().toLowerCase(Locale.ROOT)).orElse(isDry ? "oven-dry" : "weight");
        return Optional.of(Message.of(
                isDry ? "coupon.warning.oven" : "coupon.warning.reading",
                Map.of(
                        "coupon", Message.verbatim(coupon.name()),
                        "number", Message.number(datum.reading() + 1.0, 0),
                        "what", Message.of("coupon.read." + what))));
    }

    /** A coupon that was smaller or lighter in its dampest air than in its driest. */
    private Optional<Message> backwards() {
        Comparator<CouponReading> byHumidity =
                Comparator.comparingDouble(one -> one.humidity().fraction());
        for (Coupon coupon : study.coupons()) {
            CouponReading dry = coupon.readings().stream().min(byHumidity).orElseThrow();
            CouponReading damp = coupon.readings().stream().max(byHumidity).orElseThrow();
            boolean shrank = dry.sizes().entrySet().stream()
                    .anyMatch(size -> damp.sizes().containsKey(size.getKey())
                            && damp.sizes().get(size.getKey()).metres()
                                    < size.getValue().metres()
                                            - FAR_OFF * coupon.tools().sizeDeviationMetres());
            boolean lightened = dry.weight().isPresent()
                    && damp.weight().isPresent()
                    && damp.weight().get().kilograms()
                            < dry.weight().get().kilograms()
                                    - FAR_OFF * coupon.tools().weightDeviationKilograms();
            if (shrank || lightened) {
                return Optional.of(
                        Message.of("coupon.warning.backwards", Map.of("coupon", Message.verbatim(coupon.name()))));
            }
        }
        return Optional.empty();
    }

    /** A coupon whose rings must lie far from how it is said to be cut. */
    private Optional<Message> rings() {
        for (int c = 0; c < study.coupons().size(); c++) {
            int number = c;
            Band turn = posterior.after(
                    point -> model.ringTurnDegrees(number, point), CouponPosterior.LOW, CouponPosterior.HIGH);
            if (turn.value() > FAR_TURN) {
                return Optional.of(Message.of(
                        "coupon.warning.rings",
                        Map.of(
                                "coupon",
                                Message.verbatim(study.coupons().get(c).name()),
                                "degrees",
                                Message.number(turn.value(), 0))));
            }
        }
        return Optional.empty();
    }

    private String warning(CouponFigure figure) {
        if (figure.kind() == Kind.SPEED) {
            return "coupon.warning.apart-speed";
        }
        if (study.own().isNew()) {
            return "coupon.warning.apart-own";
        }
        return otherCut(figure) ? "coupon.warning.other-cut" : "coupon.warning.apart";
    }

    /** Whether the own movement is what the tables say of the other direction across the grain. */
    private boolean otherCut(CouponFigure figure) {
        Kind other = figure.kind() == Kind.ACROSS ? Kind.THROUGH : Kind.ACROSS;
        return (figure.kind() == Kind.ACROSS || figure.kind() == Kind.THROUGH)
                && study.figure(other)
                        .map(CouponFigure::book)
                        .filter(book -> figure.own().value() > book.low()
                                && figure.own().value() < book.high())
                        .isPresent();
    }

    private Optional<Message> hygrometer() {
        Band position = posterior.after(model::hygrometerPosition, CouponPosterior.LOW, CouponPosterior.HIGH);
        boolean isOff = position.low() > BEYOND_ITS_RANGE / 2 || position.high() < -BEYOND_ITS_RANGE / 2;
        return isOff && Math.abs(position.value()) > BEYOND_ITS_RANGE
                ? Optional.of(
                        Message.of(position.value() > 0 ? "coupon.warning.reads-dry" : "coupon.warning.reads-damp"))
                : Optional.empty();
    }

    private Optional<Message> nearAirs() {
        double driest = 1;
        double dampest = 0;
        for (Coupon coupon : study.coupons()) {
            for (CouponReading reading : coupon.readings()) {
                driest = Math.min(driest, reading.humidity().fraction());
                dampest = Math.max(dampest, reading.humidity().fraction());
            }
        }
        return dampest - driest < NEAR_AIRS
                ? Optional.of(Message.of(
                        "coupon.warning.near-airs", Map.of("points", Message.number(100 * (dampest - driest), 0))))
                : Optional.empty();
    }
}
