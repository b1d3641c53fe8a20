package hafthold.decide;

/**
 * What a further measurement would be worth for one figure.
 *
 * @param figure which
 * @param coupon number of the coupon to measure
 * @param measure what to do
 * @param timesNarrower how many times narrower the band is then expected to be than now, above 1
 */
public record CouponPlan(CouponFigure.Kind figure, int coupon, CouponMeasure measure, double timesNarrower) {}
