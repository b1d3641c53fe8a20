package hafthold.decide;

import hafthold.decide.CouponFigure.Kind;
import hafthold.knife.Coupon;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.material.Material;
import hafthold.numeric.NormalMode;
import hafthold.quantity.Mass;
import hafthold.simulate.CouponModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleBiFunction;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Which further measurement would tell most of each figure: each is tried on the model as if it had read what the best point
 * foretells, and the bands that the normal distribution about that point then has are held against those of now.
 */
final class CouponPlanner {
    private static final double WORTH_TELLING = 1.2;

    /** Along the grain next to nothing moves, so that little is worth the trouble. */
    private static final double WORTH_TELLING_ALONG = 2;

    private static final int MOST = 2;
    private static final double WATER_DENSITY = 1000;

    private final Cut usualCut;
    private final boolean isPlainWood;
    private final CouponModel model;
    private final CouponPosterior posterior;

    CouponPlanner(Material material, CouponModel model, CouponPosterior posterior) {
        usualCut = material.usualCut();
        isPlainWood = material.family() == Family.WOOD;
        this.model = model;
        this.posterior = posterior;
    }

    /** The best few for each figure, the best first. */
    List<CouponPlan> plans(Map<Kind, ToDoubleBiFunction<CouponModel, double[]>> figures) {
        List<CouponPlan> all = new ArrayList<>();
        for (int c = 0; c < model.coupons().size(); c++) {
            for (CouponMeasure measure : CouponMeasure.values()) {
                int number = c;
                measured(number, measure).ifPresent(then -> tried(number, measure, then, figures, all));
            }
        }
        List<CouponPlan> best = new ArrayList<>();
        figures.keySet()
                .forEach(kind -> all.stream()
                        .filter(plan -> plan.figure() == kind)
                        .sorted(Comparator.comparingDouble(CouponPlan::timesNarrower)
                                .reversed())
                        .filter(distinct())
                        .limit(MOST)
                        .forEach(best::add));
        return best;
    }

    /** Lets each kind of measuring pass once. */
    private static Predicate<CouponPlan> distinct() {
        Set<CouponMeasure> seen = EnumSet.noneOf(CouponMeasure.class);
        return plan -> seen.add(plan.measure());
    }

    private Optional<CouponModel> measured(int number, CouponMeasure measure) {
        Coupon coupon = model.coupons().get(number);
        double volume = coupon.width().metres()
                * coupon.thickness().metres()
                * coupon.length().metres()
                * coupon.pieces();
        double weight = model.told(number, posterior.best()).dryKilograms();
        CouponMeasure.Guess guess = new CouponMeasure.Guess(
                new Mass(weight > 0 ? weight : WATER_DENSITY * volume / 2),
                model.settlingDays(number, posterior.best()),
                otherCut(coupon),
                isPlainWood);
        return measure.of(coupon, guess).map(then -> {
            List<Coupon> coupons = new ArrayList<>(model.coupons());
            if (measure.isAnother()) {
                coupons.add(then);
            } else {
                coupons.set(number, then);
            }
            return model.reading(coupons);
        });
    }

    /** Quarter-sawn beside flat-sawn and the other way round, where no coupon is cut so. */
    private Optional<Cut> otherCut(Coupon coupon) {
        Cut cut = coupon.cut().orElse(usualCut);
        Optional<Cut> other = cut == Cut.FLAT
                ? Optional.of(Cut.QUARTER)
                : cut == Cut.QUARTER ? Optional.of(Cut.FLAT) : Optional.empty();
        return other.filter(
                wanted -> model.coupons().stream().noneMatch(one -> one.cut().orElse(usualCut) == wanted));
    }

    private void tried(
            int number,
            CouponMeasure measure,
            CouponModel then,
            Map<Kind, ToDoubleBiFunction<CouponModel, double[]>> figures,
            List<CouponPlan> all) {
        double[] at = model.carriedTo(then, posterior.best());
        RealMatrix covariance = NormalMode.covariance(at, then.residuals());
        figures.forEach((kind, figure) -> {
            double now = CouponPosterior.spread(
                    point -> figure.applyAsDouble(model, point), posterior.best(), posterior.covariance());
            double later = CouponPosterior.spread(point -> figure.applyAsDouble(then, point), at, covariance);
            if (now > (kind == Kind.ALONG ? WORTH_TELLING_ALONG : WORTH_TELLING) * later) {
                all.add(new CouponPlan(kind, number, measure, now / later));
            }
        });
    }
}
