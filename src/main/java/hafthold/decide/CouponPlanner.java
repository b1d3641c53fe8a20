package hafthold.decide;

import hafthold.decide.CouponFigure.Kind;
import hafthold.knife.Coupon;
import hafthold.numeric.NormalMode;
import hafthold.quantity.Mass;
import hafthold.simulate.CouponModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Which further measurement would tell most of each figure: each is tried on the model as if it had read what the best point
 * foretells, and the bands that the normal distribution about that point then has are held against those of now.
 */
final class CouponPlanner {
    private static final double WORTH_TELLING = 1.15;
    private static final int MOST = 2;
    private static final double WATER_DENSITY = 1000;

    private final CouponModel model;
    private final CouponPosterior posterior;

    CouponPlanner(CouponModel model, CouponPosterior posterior) {
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
                        .limit(MOST)
                        .forEach(best::add));
        return best;
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
                model.settlingDays(number, posterior.best()));
        return measure.of(coupon, guess).map(then -> {
            List<Coupon> coupons = new ArrayList<>(model.coupons());
            coupons.set(number, then);
            return model.reading(coupons);
        });
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
            if (now > WORTH_TELLING * later) {
                all.add(new CouponPlan(kind, number, measure, now / later));
            }
        });
    }
}
