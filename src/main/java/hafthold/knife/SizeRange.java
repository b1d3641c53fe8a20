package hafthold.knife;

import hafthold.quantity.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Sizes that parts of a knife can have, so that inches typed as millimetres are noticed (assumed: wide enough for any
 * knife we could think of).
 */
public enum SizeRange {
    TANG_WIDTH(5, 80),
    STACK_TANG_WIDTH(2, 40),
    TANG_THICKNESS(0.5, 12),
    SCALE_THICKNESS(0.8, 40),
    HANDLE_LENGTH(30, 400),
    HANDLE_WIDTH(5, 90),
    HANDLE_THICKNESS(3, 80),
    LINER_THICKNESS(0.05, 6),
    PIN_DIAMETER(0.8, 20),
    HOLE_DIAMETER(0.8, 22),
    BOND_LINE(0.005, 2),
    EASING(0, 5),
    PART_LENGTH(0.05, 300),
    PLACE_ALONG(0, 400),
    PLACE_UP(-45, 45),
    MEASURING_ERROR(0.002, 1),
    COUPON_THICKNESS(0.3, 60),
    COUPON_WIDTH(2, 400),
    COUPON_LENGTH(2, 1200);

    private final Length least;
    private final Length most;

    SizeRange(double leastMillimetres, double mostMillimetres) {
        this.least = Length.ofMillimetres(leastMillimetres);
        this.most = Length.ofMillimetres(mostMillimetres);
    }

    /** True where a part can have this size. */
    public boolean allows(Length size) {
        return size.metres() >= least.metres() && size.metres() <= most.metres();
    }

    /** The largest size. */
    Length most() {
        return most;
    }

    /** The range for people. */
    public String words() {
        return "a length from " + millimetres(least) + " to " + millimetres(most);
    }

    /** Rejects a size no knife has, naming the part. */
    void check(String key, Length size) {
        if (!allows(size)) {
            throw new UnfitBuildException(key, millimetres(size), words());
        }
    }

    /** A length for people, to the nearest 0.001 mm. */
    public static String millimetres(Length length) {
        BigDecimal rounded = new BigDecimal(length.metres() * 1000.0).setScale(3, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0 mm" : rounded.stripTrailingZeros().toPlainString() + " mm";
    }
}
