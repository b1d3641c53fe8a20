package hafthold.decide;

import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.knife.CouponSide;
import hafthold.knife.CouponTools;
import hafthold.knife.OwnStock;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.quantity.TimeSpan;
import hafthold.simulate.CouponModel;
import hafthold.simulate.Sampling;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/** Coupons for tests, invented or simulated. */
final class Coupons {
    static final CouponTools FINE =
            new CouponTools(Length.ofMillimetres(0.01), Mass.ofGrams(0.01), new RelativeHumidity(0.02));

    private Coupons() {}

    static Material material(String id) {
        return MaterialLibrary.read(TableSet.builtIn()).plain(id);
    }

    static OwnStock listed(Material material) {
        return new OwnStock(material.id(), material.name(), "");
    }

    static CouponStudy study(Material material, Coupon... coupons) {
        return new CouponJudge(new Sampling(2000, 1)).judge(material, listed(material), List.of(coupons), List.of());
    }

    /** A reading of 20 C; sizes and weights of 0 are none, a time of 0 is at rest. */
    static CouponReading reading(double days, double humidity, double grams, double width) {
        Map<CouponSide, Length> sizes = new EnumMap<>(CouponSide.class);
        if (width > 0) {
            sizes.put(CouponSide.WIDTH, Length.ofMillimetres(width));
        }
        return new CouponReading(
                Optional.empty(),
                days > 0 ? Optional.of(TimeSpan.ofDays(days)) : Optional.empty(),
                new RelativeHumidity(humidity),
                new Temperature(20),
                Optional.empty(),
                grams > 0 ? Optional.of(Mass.ofGrams(grams)) : Optional.empty(),
                sizes);
    }

    static Coupon strip(
            Cut cut, double width, double thickness, CouponTools tools, double dryGrams, CouponReading... readings) {
        return new Coupon(
                "strip",
                "",
                Optional.empty(),
                Optional.of(cut),
                true,
                Length.ofMillimetres(width),
                Length.ofMillimetres(thickness),
                Length.ofMillimetres(120),
                1,
                tools,
                dryGrams > 0 ? Optional.of(Mass.ofGrams(dryGrams)) : Optional.empty(),
                List.of(readings));
    }

    /** The coupon as it would have been read if its figures lay at a point, with errors of reading. */
    static Coupon simulated(Material material, Coupon coupon, double[] truth, SplittableRandom random) {
        CouponModel.Told told = new CouponModel(material, List.of(coupon)).told(0, truth);
        CouponTools tools = coupon.tools();
        List<CouponReading> readings = new ArrayList<>();
        for (int i = 0; i < coupon.readings().size(); i++) {
            CouponReading planned = coupon.readings().get(i);
            Map<CouponSide, Length> sizes = new EnumMap<>(CouponSide.class);
            for (CouponSide side : planned.sizes().keySet()) {
                sizes.put(side, new Length(told.sizes().get(side)[i] + tools.sizeDeviationMetres() * normal(random)));
            }
            double kilograms = told.kilograms()[i] + tools.weightDeviationKilograms() * normal(random);
            readings.add(new CouponReading(
                    planned.on(),
                    planned.lay(),
                    planned.humidity(),
                    planned.temperature(),
                    planned.ownError(),
                    planned.weight().map(any -> new Mass(kilograms)),
                    sizes));
        }
        Coupon read = coupon.with(readings);
        return coupon.ovenDry().isEmpty()
                ? read
                : read.driedTo(new Mass(told.dryKilograms() + tools.weightDeviationKilograms() * normal(random)));
    }

    private static double normal(RandomGenerator random) {
        return random.nextGaussian();
    }
}
