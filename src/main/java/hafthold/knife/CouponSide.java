package hafthold.knife;

/** Which way a coupon was measured. */
public enum CouponSide {
    /** Across its face: tangential in a flat-sawn strip, radial in a quarter-sawn one. */
    WIDTH,
    /** Through its thickness. */
    THICKNESS,
    /** Along its length. */
    LENGTH
}
