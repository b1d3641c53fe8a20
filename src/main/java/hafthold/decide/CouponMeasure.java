package hafthold.decide;

import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.knife.CouponSide;
import hafthold.knife.CouponTools;
import hafthold.material.Cut;
import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.quantity.TimeSpan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What else could be measured of a coupon, each with the coupon as it would then be known. */
public enum CouponMeasure {
    /** Weigh it at all. */
    WEIGH {
        @Override
        Optional<Coupon> of(Coupon coupon, Guess guess) {
            return coupon.weights() > 0
                    ? Optional.empty()
                    : Optional.of(coupon.with(coupon.readings().stream()
                            .map(reading -> reading(reading, Optional.of(guess.weight()), reading.sizes()))
                            .toList()));
        }
    },
    /** Weigh ten alike together, or on a scale ten times as fine. */
    FINER_WEIGHT {
        @Override
        Optional<Coupon> of(Coupon coupon, Guess guess) {
            CouponTools tools = coupon.tools();
            return coupon.weights() < 2
                    ? Optional.empty()
                    : Optional.of(coupon.with(new CouponTools(
                            tools.caliper(), new Mass(tools.balance().kilograms() / TEN), tools.hygrometer())));
        }
    },
    /** Dry it in an oven and weigh it. */
    OVEN_DRY {
        @Override
        Optional<Coupon> of(Coupon coupon, Guess guess) {
            return coupon.ovenDry().isPresent() || coupon.weights() == 0 || !guess.isPlainWood()
                    ? Optional.empty()
                    : Optional.of(coupon.driedTo(guess.weight()));
        }
    },
    /** Measure its width too. */
    WIDTH_TOO {
        @Override
        Optional<Coupon> of(Coupon coupon, Guess guess) {
            return coupon.sizesOf(CouponSide.WIDTH) > 1
                    ? Optional.empty()
                    : Optional.of(coupon.with(coupon.readings().stream()
                            .map(reading -> reading(reading, reading.weight(), with(reading.sizes(), coupon.width())))
                            .toList()));
        }
    },
    /** Take a strip twice as wide. */
    WIDER {
        @Override
        Optional<Coupon> of(Coupon coupon, Guess guess) {
            return coupon.sizesOf(CouponSide.WIDTH) < 2
                    ? Optional.empty()
                    : Optional.of(new Coupon(
                            coupon.name(),
                            coupon.material(),
                            coupon.ownName(),
                            coupon.cut(),
                            coupon.endGrainSeen(),
                            twice(coupon.width()),
                            coupon.thickness(),
                            coupon.length(),
                            coupon.pieces(),
                            coupon.tools(),
                            coupon.ovenDry(),
                            coupon.readings().stream()
                                    .map(reading -> reading.sizes().containsKey(CouponSide.WIDTH)
                                            ? reading(
                                                    reading,
                                                    reading.weight(),
                                                    with(
                                                            reading.sizes(),
                                                            twice(reading.sizes()
                                                                    .get(CouponSide.WIDTH))))
                                            : reading)
                                    .toList()));
        }
    },
    /** Measure a strip of the other cut as well: quarter-sawn beside flat-sawn. */
    OTHER_CUT {
        @Override
        Optional<Coupon> of(Coupon coupon, Guess guess) {
            return guess.otherCut()
                    .map(other -> new Coupon(
                            coupon.name(),
                            coupon.material(),
                            coupon.ownName(),
                            guess.otherCut(),
                            coupon.endGrainSeen(),
                            coupon.width(),
                            coupon.thickness(),
                            coupon.length(),
                            coupon.pieces(),
                            coupon.tools(),
                            coupon.ovenDry(),
                            coupon.readings().stream()
                                    .map(reading ->
                                            reading(reading, reading.weight(), with(reading.sizes(), coupon.width())))
                                    .toList()));
        }

        @Override
        boolean isAnother() {
            return true;
        }
    },
    /** Look at the rings on its end. */
    END_GRAIN {
        @Override
        Optional<Coupon> of(Coupon coupon, Guess guess) {
            return coupon.endGrainSeen() ? Optional.empty() : Optional.of(coupon.withRingsSeen());
        }
    },
    /** Check the hygrometer over a saturated salt. */
    CHECK_HYGROMETER {
        @Override
        Optional<Coupon> of(Coupon coupon, Guess guess) {
            CouponTools tools = coupon.tools();
            boolean isGood = tools.hygrometer().fraction() <= CHECKED
                    || coupon.readings().stream().allMatch(one -> one.ownError().isPresent());
            return isGood
                    ? Optional.empty()
                    : Optional.of(coupon.with(
                            new CouponTools(tools.caliper(), tools.balance(), new RelativeHumidity(CHECKED))));
        }
    },
    /** Lay it to rest over two saturated salts, one dry, one damp. */
    TWO_SALTS {
        @Override
        Optional<Coupon> of(Coupon coupon, Guess guess) {
            List<CouponReading> readings = new ArrayList<>(coupon.readings());
            for (double salt : new double[] {DRY_SALT, DAMP_SALT}) {
                CouponReading last = fullest(coupon);
                readings.add(new CouponReading(
                        Optional.empty(),
                        Optional.empty(),
                        new RelativeHumidity(salt),
                        new Temperature(20),
                        Optional.of(new RelativeHumidity(SALT_ERROR)),
                        last.weight(),
                        last.sizes()));
            }
            return Optional.of(coupon.with(readings));
        }
    },
    /** Read it twice while it settles after a change of air. */
    WHILE_SETTLING {
        @Override
        Optional<Coupon> of(Coupon coupon, Guess guess) {
            List<CouponReading> readings = new ArrayList<>(coupon.readings());
            CouponReading last = readings.get(readings.size() - 1);
            CouponReading other = readings.stream()
                    .max(Comparator.comparingDouble(one ->
                            Math.abs(one.humidity().fraction() - last.humidity().fraction())))
                    .orElseThrow();
            if (Math.abs(other.humidity().fraction() - last.humidity().fraction()) < LEAST_CHANGE) {
                return Optional.empty();
            }
            CouponReading full = fullest(coupon);
            for (double share : new double[] {EARLY, LATE}) {
                readings.add(new CouponReading(
                        Optional.empty(),
                        Optional.of(TimeSpan.ofDays(share * guess.settlingDays())),
                        other.humidity(),
                        other.temperature(),
                        other.ownError(),
                        full.weight(),
                        full.sizes()));
            }
            return Optional.of(coupon.with(readings));
        }
    };

    /** Saturated magnesium chloride at 20 C, sodium chloride likewise, and how well they hold it. */
    public static final double DRY_SALT = 0.33;

    /** See {@link #DRY_SALT}. */
    public static final double DAMP_SALT = 0.755;

    /** How far a hygrometer may be off that was checked over a salt (common practice, no source). */
    public static final double CHECKED = 0.02;

    private static final double SALT_ERROR = 0.01;
    private static final double LEAST_CHANGE = 0.1;
    private static final double EARLY = 0.4;
    private static final double LATE = 0.8;
    private static final double TEN = 10;

    /**
     * What is guessed of a coupon before it is measured again.
     *
     * @param weight about
     * @param settlingDays days in which about two thirds of a change are done
     * @param otherCut the other cut across the grain; empty where it was measured too, or makes no sense
     * @param isPlainWood whether it may go into an oven
     */
    record Guess(Mass weight, double settlingDays, Optional<Cut> otherCut, boolean isPlainWood) {}

    /** Whether it is another strip that is measured besides. */
    boolean isAnother() {
        return false;
    }

    /** The coupon as it would then be known; empty where it is so already, or cannot be. */
    abstract Optional<Coupon> of(Coupon coupon, Guess guess);

    private static CouponReading fullest(Coupon coupon) {
        return coupon.readings().stream()
                .max(Comparator.comparingInt(
                        one -> one.sizes().size() + (one.weight().isPresent() ? 1 : 0)))
                .orElseThrow();
    }

    private static CouponReading reading(CouponReading reading, Optional<Mass> weight, Map<CouponSide, Length> sizes) {
        return new CouponReading(
                reading.on(),
                reading.lay(),
                reading.humidity(),
                reading.temperature(),
                reading.ownError(),
                weight,
                sizes);
    }

    private static Map<CouponSide, Length> with(Map<CouponSide, Length> sizes, Length width) {
        Map<CouponSide, Length> all = new EnumMap<>(CouponSide.class);
        all.putAll(sizes);
        all.put(CouponSide.WIDTH, width);
        return all;
    }

    private static Length twice(Length length) {
        return new Length(2 * length.metres());
    }
}
