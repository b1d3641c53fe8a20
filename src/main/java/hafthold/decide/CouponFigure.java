package hafthold.decide;

import hafthold.material.Axis;
import hafthold.quantity.Band;
import hafthold.quantity.Length;

/**
 * One figure of a material after its coupons were measured, against the tables.
 *
 * @param kind what it is
 * @param book middle and ends of the middle 80 % by the tables
 * @param own likewise after measuring
 * @param factor on what the tables have, its ends the 5 and 95 % points: what own rows are made with
 * @param told whether the coupons themselves tell it; else it is the tables' still, or follows from another figure
 * @param apart whether the middle nine tenths after measuring lie wholly outside those of the tables
 */
public record CouponFigure(Kind kind, Band book, Band own, Band factor, boolean told, boolean apart) {

    /** The width that movement is told for: that of a usual tang. */
    public static final Length WIDTH = Length.ofMillimetres(26);

    /** What figures there are. */
    public enum Kind {
        /** Movement across the grain along the rings, or crosswise of a sheet, per moisture content. */
        ACROSS(Axis.ACROSS),
        /** Movement square to the rings, or through a sheet, per moisture content. */
        THROUGH(Axis.THROUGH),
        /** Movement along the grain, or lengthwise of a sheet, per moisture content. */
        ALONG(Axis.ALONG),
        /** Movement of a burl whichever way it is measured, per moisture content. */
        ANY_WAY(Axis.ANY),
        /** Moisture content at rest in air of 65 % and 20 C. */
        SORPTION(Axis.ANY),
        /** Diffusivity through it at no moisture, m2/s. */
        SPEED(Axis.ANY),
        /** Dry mass per volume, kg/m3. */
        DENSITY(Axis.ANY),
        /** Movement of the width as it was cut, from air of 35 % to 65 %, as a share of it. */
        WIDTH(Axis.ANY);

        private final Axis axis;

        Kind(Axis axis) {
            this.axis = axis;
        }

        /** Direction it is of. */
        public Axis axis() {
            return axis;
        }

        /** True for movement per moisture content. */
        public boolean isMovement() {
            return this == ACROSS || this == THROUGH || this == ALONG || this == ANY_WAY;
        }
    }

    /** How many times narrower the own band is than that of the tables; 1 where it is none. */
    public double timesAsSure() {
        double spread = spread(own);
        return spread > 0 ? spread(book) / spread : 1;
    }

    /** The own middle over that of the tables. */
    public double ofBook() {
        return own.value() / book.value();
    }

    private static double spread(Band band) {
        return band.low() > 0 ? Math.log(band.high() / band.low()) : (band.high() - band.low()) / band.value();
    }
}
