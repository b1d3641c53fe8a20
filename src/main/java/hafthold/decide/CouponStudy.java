package hafthold.decide;

import hafthold.knife.Coupon;
import hafthold.knife.CouponSide;
import hafthold.knife.OwnStock;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.quantity.Band;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What coupons of one material tell of it.
 *
 * @param material as the tables have it
 * @param own under what name its figures are kept
 * @param coupons what was measured
 * @param figures before and after
 * @param settlings of each reading that had time to settle, how far it had
 * @param settlingDays days in which about two thirds of a change are done, by coupon: 10, 50, 90 %
 * @param readings what was read beside what tables and own figures say
 * @param plans what would tell more, by figure
 * @param warnings what does not go together, most weighty first
 * @param fits chance that readings and tables lie so far apart if both are right within their ranges
 * @param samples draws before and after
 * @param effectiveSamples how many of those after count
 * @param findings what it rests on
 */
public record CouponStudy(
        Material material,
        OwnStock own,
        List<Coupon> coupons,
        List<CouponFigure> figures,
        List<Settling> settlings,
        List<Band> settlingDays,
        List<ReadingRow> readings,
        List<CouponPlan> plans,
        List<Message> warnings,
        double fits,
        int samples,
        double effectiveSamples,
        List<Finding> findings) {

    /** Readings and tables that go together less often than this are warned of (ours). */
    public static final double UNLIKELY = 0.01;

    /** Keeps its own copies. */
    public CouponStudy {
        coupons = List.copyOf(coupons);
        figures = List.copyOf(figures);
        settlings = List.copyOf(settlings);
        settlingDays = List.copyOf(settlingDays);
        readings = List.copyOf(readings);
        plans = List.copyOf(plans);
        warnings = List.copyOf(warnings);
        findings = List.copyOf(findings);
    }

    /**
     * How far a coupon had settled at a reading.
     *
     * @param coupon its number
     * @param reading its number
     * @param left share of the way that was still to go: 10, 50, 90 %
     */
    public record Settling(int coupon, int reading, Band left) {
        private static final double AT_REST = 0.05;

        /** Whether it is as good as at rest. */
        public boolean isAtRest() {
            return left.value() < AT_REST;
        }
    }

    /**
     * One figure that was read.
     *
     * @param coupon number of the coupon
     * @param reading number of the reading
     * @param side which size; empty for a weight
     * @param measured m or kg
     * @param book what the tables say, the first size or weight fitted: 10, 50, 90 %
     * @param own what the own figures say, likewise
     */
    public record ReadingRow(
            int coupon, int reading, Optional<CouponSide> side, double measured, Band book, Band own) {}

    /** Figures that the coupons tell. */
    public List<CouponFigure> told() {
        return figures.stream().filter(CouponFigure::told).toList();
    }

    /** Name of a figure in a sentence. */
    public Message name(CouponFigure.Kind kind) {
        String word = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
        boolean isSheet = material.usualCut() == Cut.NONE && kind.isMovement();
        return Message.of(
                (isSheet ? "coupon.figure.sheet." : "coupon.figure.") + word,
                Map.of("width", Message.size(CouponFigure.WIDTH)));
    }

    /** A figure. */
    public Optional<CouponFigure> figure(CouponFigure.Kind kind) {
        return figures.stream().filter(figure -> figure.kind() == kind).findFirst();
    }

    /**
     * Whether something does not go together. A speed of its own is no reason, since the other figures do not hang on it;
     * nor are figures far from the book's in a stock that has a name of its own.
     */
    public boolean isAdverse() {
        return fits < UNLIKELY || (!own.isNew() && told().stream().anyMatch(CouponStudy::isFarFromBook));
    }

    private static boolean isFarFromBook(CouponFigure figure) {
        return figure.apart() && figure.kind() != CouponFigure.Kind.SPEED;
    }
}
