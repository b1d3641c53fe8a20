package hafthold.knife;

import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.quantity.Length;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A block on the shelf.
 *
 * @param name what it is called
 * @param material what it is of; takes up water
 * @param wood the plain wood that it is of; the material itself where nothing was put into it
 * @param cut how its grain lies, as if it were a scale: length along the grain unless cross-cut
 * @param size its size as measured
 * @param sealed what covers its faces
 * @param bought the day it came into the storage, or that of the first reading
 * @param soldAs what the seller said of it
 * @param readings what was read on it, oldest first
 * @param coupon a slice dried in the oven
 * @param stabilised what was tried on stock with resin in it
 */
public record StockBlock(
        String name,
        Material material,
        Material wood,
        Cut cut,
        Size size,
        Sealed sealed,
        LocalDate bought,
        SoldAs soldAs,
        List<StockReading> readings,
        Optional<StockCoupon> coupon,
        Optional<FillTrial> stabilised) {
    private static final long MOST_DAYS = 3653;

    /** Puts readings in order, and rejects those from before it was bought or ten years later. */
    public StockBlock {
        readings =
                readings.stream().sorted(Comparator.comparing(StockReading::on)).toList();
        for (StockReading reading : readings) {
            if (reading.on().isBefore(bought)) {
                throw new UnfitBuildException(
                        "bought", bought.toString(), "a day not after the first reading, " + reading.on());
            }
            if (ChronoUnit.DAYS.between(bought, reading.on()) > MOST_DAYS) {
                throw new UnfitBuildException(
                        "bought", bought.toString(), "a day within ten years of the reading on " + reading.on());
            }
        }
        for (int i = 1; i < readings.size(); i++) {
            if (readings.get(i).on().equals(readings.get(i - 1).on())) {
                throw new UnfitBuildException(
                        "reading", readings.get(i).on().toString(), "one reading a day; put them into one");
            }
        }
        if (coupon.filter(slice -> slice.on().isBefore(bought)).isPresent()) {
            throw new UnfitBuildException(
                    "coupon.on", coupon.get().on().toString(), "a day not before it was bought, " + bought);
        }
    }

    /**
     * Size of a block.
     *
     * @param length along the grain unless cross-cut
     * @param width across
     * @param thickness through
     */
    public record Size(Length length, Length width, Length thickness) {
        /** Volume, m3. */
        public double cubicMetres() {
            return length.metres() * width.metres() * thickness.metres();
        }

        /** Surface, m2. */
        public double squareMetres() {
            return 2
                    * (length.metres() * width.metres()
                            + length.metres() * thickness.metres()
                            + width.metres() * thickness.metres());
        }
    }

    /** What covers the faces of a block. */
    public enum Sealed {
        /** Nothing. */
        NONE,
        /** Wax or paint on the ends. */
        ENDS,
        /** Dipped in wax all over. */
        ALL;

        /** The word of files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What a seller says of a block. */
    public enum SoldAs {
        /** Nothing. */
        UNKNOWN,
        /** Dried in a kiln. */
        KILN_DRIED,
        /** Dried in the open. */
        AIR_DRIED,
        /** Fresh. */
        GREEN;

        /** The word of files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** The last day that something is known of: what counts as today. */
    public LocalDate today() {
        return Stream.of(
                        Stream.of(bought),
                        readings.stream().map(StockReading::on),
                        coupon.stream().map(StockCoupon::on))
                .flatMap(days -> days)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** How many weighings there are. */
    public long weighings() {
        return readings.stream().filter(reading -> reading.weight().isPresent()).count();
    }

    /** True where something tells its moisture. */
    public boolean isRead() {
        return !readings.isEmpty() || coupon.isPresent();
    }
}
