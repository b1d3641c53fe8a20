package hafthold.material;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How a scale lies in its material: the share that each principal strain has in each direction of the handle.
 *
 * <p>A strain tensor with principal values e_j along unit vectors has the normal strain sum_j c_ij^2 e_j in a direction
 * with cosines c_ij; each cut holds the squared cosines of the handle's length, width and thickness.
 */
public enum Cut {
    /** Flat-sawn: growth rings lie parallel to the wide face; width moves tangentially. */
    FLAT(new Shares(1, 0, 0), new Shares(0, 1, 0), new Shares(0, 0, 1)),
    /** Rift-sawn: rings at 45 degrees to the wide face. */
    RIFT(new Shares(1, 0, 0), new Shares(0, 0.5, 0.5), new Shares(0, 0.5, 0.5)),
    /** Quarter-sawn: rings stand upright on the wide face; width moves radially. */
    QUARTER(new Shares(1, 0, 0), new Shares(0, 0, 1), new Shares(0, 1, 0)),
    /** Burl: grain in every direction; each axis gets the average. */
    BURL(Shares.EVEN, Shares.EVEN, Shares.EVEN),
    /** Cross-cut, the end-grain look: the grain runs through the scale, the handle's length is across the grain. */
    CROSS(new Shares(0, 1, 0), new Shares(0, 0, 1), new Shares(1, 0, 0)),
    /** No cut to speak of: sheet and cast goods lie as they are made. */
    NONE(new Shares(1, 0, 0), new Shares(0, 1, 0), new Shares(0, 0, 1));

    /**
     * Squared cosines of one direction of the handle with the principal axes of the material; they add up to 1.
     *
     * @param along with the grain or the length of the sheet
     * @param across with the tangential direction or the width of the sheet
     * @param through with the radial direction or the thickness of the sheet
     */
    public record Shares(double along, double across, double through) {
        private static final Shares EVEN = new Shares(1 / 3.0, 1 / 3.0, 1 / 3.0);

        /** Value in this direction of a tensor with these principal values: normal strain, diffusivity. */
        public double mean(double alongValue, double acrossValue, double throughValue) {
            return along * alongValue + across * acrossValue + through * throughValue;
        }

        /**
         * The shares after the rings are turned about the grain: of the part that lies across the grain, cos^2 of the
         * new angle goes to the tangential and sin^2 to the radial direction.
         *
         * @param radians angle, positive away from tangential
         */
        public Shares turned(double radians) {
            double acrossGrain = across + through;
            if (radians == 0 || acrossGrain == 0) {
                return this;
            }
            double angle = Math.acos(Math.sqrt(across / acrossGrain)) + radians;
            double cosine = Math.cos(angle);
            return new Shares(along, acrossGrain * cosine * cosine, acrossGrain * (1 - cosine * cosine));
        }
    }

    private static final Pattern SAWN = Pattern.compile("[- ]sawn$");
    private static final String OTHER_FLAT = "plain";

    private final Shares length;
    private final Shares width;
    private final Shares thickness;

    Cut(Shares length, Shares width, Shares thickness) {
        this.length = length;
        this.width = width;
        this.thickness = thickness;
    }

    /** The handle's length, from bolster to butt. */
    public Shares length() {
        return length;
    }

    /** The handle's width, edge to edge across the tang. */
    public Shares width() {
        return width;
    }

    /** The scale's thickness, from the tang outwards. */
    public Shares thickness() {
        return thickness;
    }

    /** The word used by options and answers. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The cut of a word, also of "flat-sawn" and of "plain-sawn", which is the same. */
    public static Optional<Cut> ofWord(String word) {
        String bare = SAWN.matcher(word).replaceFirst("");
        String meant = bare.equals(OTHER_FLAT) ? FLAT.word() : bare;
        return Arrays.stream(values()).filter(cut -> cut.word().equals(meant)).findFirst();
    }
}
