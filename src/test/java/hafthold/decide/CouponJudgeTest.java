package hafthold.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.decide.CouponFigure.Kind;
import hafthold.knife.Coupon;
import hafthold.knife.CouponTools;
import hafthold.knife.OwnStock;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.quantity.RelativeHumidity;
import hafthold.simulate.CouponModel;
import hafthold.simulate.Sampling;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CouponJudgeTest {
    private static final Material WALNUT = Coupons.material("walnut-black");

    /** Walnut by the tables, at rest in two airs: what each reading would be. */
    private static double[] byTheBook(Axis axis, double width, double from, double to) {
        double low = WALNUT.water().orElseThrow().isotherm().moistureFraction(from, 20);
        double high = WALNUT.water().orElseThrow().isotherm().moistureFraction(to, 20);
        return new double[] {
            low, high, width * (1 + WALNUT.water().orElseThrow().swelling().strain(axis, low, high))
        };
    }

    private static boolean warns(CouponStudy study, String key) {
        return study.warnings().stream()
                .anyMatch(warning ->
                        warning instanceof Message.Text text && text.key().equals(key));
    }

    /** A single pair of scales on a kitchen scale of 1 g: a point of moisture is a fifth of a gram. It cannot tell. */
    @Test
    void aKitchenScaleTellsNothingAndItIsSaidWhatWould() {
        CouponTools kitchen = new CouponTools(Length.ofMillimetres(0.05), Mass.ofGrams(1), new RelativeHumidity(0.05));
        CouponStudy study = Coupons.study(
                WALNUT,
                Coupons.strip(
                        Cut.FLAT, 26, 8, kitchen, 0, Coupons.reading(0, 0.35, 13, 0), Coupons.reading(0, 0.7, 14, 0)));
        assertTrue(study.told().isEmpty(), study.told().toString());
        assertTrue(warns(study, "coupon.warning.nothing"));
        assertTrue(study.plans().stream()
                .anyMatch(plan -> plan.figure() == Kind.ACROSS && plan.measure() == CouponMeasure.WIDTH_TOO));
        assertFalse(study.isAdverse());
    }

    /** 40 mm of flat-sawn width move 0.11 mm a point (the bench's own insight); a caliper of 0.01 mm sees that. */
    @Test
    void fortyMillimetresOfWidthTell() {
        double[] book = byTheBook(Axis.ACROSS, 40, 0.35, 0.65);
        CouponStudy study = Coupons.study(
                WALNUT,
                Coupons.strip(
                        Cut.FLAT,
                        40,
                        8,
                        Coupons.FINE,
                        20,
                        Coupons.reading(0, 0.35, 20 * (1 + book[0]), 40),
                        Coupons.reading(0, 0.65, 20 * (1 + book[1]), book[2])));
        CouponFigure across = study.figure(Kind.ACROSS).orElseThrow();
        assertTrue(across.told());
        assertTrue(across.timesAsSure() > 2, "times as sure: " + across.timesAsSure());
        assertFalse(study.figure(Kind.THROUGH).orElseThrow().told(), "what only goes with it is not told");
        assertFalse(study.figure(Kind.SPEED).orElseThrow().told(), "at rest nothing is seen of the speed");
    }

    /** A reading a day after the change of air is on its way; how far is what the tables' speed makes of it, in doubt. */
    @Test
    void aCouponOnItsWayIsToldSoAndTellsItsSpeed() {
        CouponModel model = new CouponModel(WALNUT, List.of(onItsWay(0)));
        double[] value = new double[model.unknowns()];
        Coupon read = Coupons.simulated(WALNUT, onItsWay(0), value, new SplittableRandom(1));
        CouponStudy study = Coupons.study(WALNUT, read);
        CouponStudy.Settling first = study.settlings().get(0);
        assertFalse(first.isAtRest());
        double way = model.told(0, value).atRest()[1] - model.told(0, value).moisture()[0];
        double left = (model.told(0, value).atRest()[1] - model.told(0, value).moisture()[1]) / way;
        assertEquals(left, first.left().value(), 0.05);
        assertTrue(study.figure(Kind.SPEED).orElseThrow().told());
        assertEquals(1, study.figure(Kind.SPEED).orElseThrow().ofBook(), 0.3);
        assertTrue(study.settlings().get(2).isAtRest(), study.settlings().toString());
    }

    private static Coupon onItsWay(double dry) {
        return Coupons.strip(
                Cut.FLAT,
                50,
                8,
                Coupons.FINE,
                dry,
                Coupons.reading(0, 0.33, 25, 50),
                Coupons.reading(0.7, 0.75, 25.6, 50.4),
                Coupons.reading(1, 0.75, 26, 50.7),
                Coupons.reading(25, 0.75, 26.6, 51));
    }

    /** Quarter-sawn beech measured as flat-sawn: it moves half as much as it should. */
    @Test
    void theWrongCutIsNoticed() {
        Material beech = Coupons.material("beech-european");
        double low = beech.water().orElseThrow().isotherm().moistureFraction(0.33, 20);
        double high = beech.water().orElseThrow().isotherm().moistureFraction(0.75, 20);
        double radial = beech.water().orElseThrow().swelling().strain(Axis.THROUGH, low, high);
        CouponStudy study = Coupons.study(
                beech,
                Coupons.strip(
                        Cut.FLAT,
                        50,
                        8,
                        Coupons.FINE,
                        30,
                        Coupons.reading(0, 0.33, 30 * (1 + low), 50),
                        Coupons.reading(0, 0.75, 30 * (1 + high), 50 * (1 + radial))));
        assertTrue(study.isAdverse());
        assertTrue(warns(study, "coupon.warning.other-cut"), study.warnings().toString());
    }

    @Test
    void swappedReadingsAreNoticed() {
        CouponStudy study = Coupons.study(
                WALNUT,
                Coupons.strip(
                        Cut.FLAT,
                        60,
                        6,
                        Coupons.FINE,
                        0,
                        Coupons.reading(0, 0.75, 0, 60),
                        Coupons.reading(0, 0.33, 0, 61)));
        assertTrue(study.isAdverse());
        assertTrue(warns(study, "coupon.warning.backwards"), study.warnings().toString());
    }

    /** A hygrometer 12 points off that is said to be off by 2 at most: dry weight and two airs show it. */
    @Test
    void aHygrometerFarOffIsNoticed() {
        double[] real = byTheBook(Axis.ACROSS, 60, 0.47, 0.80);
        CouponStudy study = Coupons.study(
                WALNUT,
                Coupons.strip(
                        Cut.FLAT,
                        60,
                        8,
                        Coupons.FINE,
                        30,
                        Coupons.reading(0, 0.35, 30 * (1 + real[0]), 60),
                        Coupons.reading(0, 0.68, 30 * (1 + real[1]), real[2])));
        assertTrue(study.isAdverse(), "fits: " + study.fits());
    }

    /** A stock that goes by a name of its own may move as it likes; the readings must still go together. */
    @Test
    void aStockOfItsOwnNameMayLieFarFromTheBook() {
        double[] book = byTheBook(Axis.ACROSS, 60, 0.33, 0.75);
        Coupon strip = Coupons.strip(
                Cut.FLAT,
                60,
                8,
                Coupons.FINE,
                30,
                Coupons.reading(0, 0.33, 30 * (1 + book[0]), 60),
                Coupons.reading(0, 0.75, 30 * (1 + book[1]), 60 + 2 * (book[2] - 60)));
        assertTrue(Coupons.study(WALNUT, strip).isAdverse());
        CouponStudy own = new CouponJudge(new Sampling(2000, 1))
                .judge(WALNUT, new OwnStock("barn-walnut", "barn walnut", "walnut-black"), List.of(strip), List.of());
        assertFalse(own.isAdverse(), own.warnings().toString());
        assertTrue(warns(own, "coupon.warning.apart-own"));
        assertEquals(2, own.figure(Kind.ACROSS).orElseThrow().ofBook(), 0.1);
    }

    /** Two strips of one stock, flat and quarter, tell both directions. */
    @Test
    void twoStripsOfOneStockTellBothDirections() {
        double[] flat = byTheBook(Axis.ACROSS, 50, 0.33, 0.75);
        double[] quarter = byTheBook(Axis.THROUGH, 50, 0.33, 0.75);
        CouponStudy study = Coupons.study(
                WALNUT,
                Coupons.strip(
                        Cut.FLAT,
                        50,
                        8,
                        Coupons.FINE,
                        30,
                        Coupons.reading(0, 0.33, 30 * (1 + flat[0]), 50),
                        Coupons.reading(0, 0.75, 30 * (1 + flat[1]), flat[2])),
                Coupons.strip(
                        Cut.QUARTER,
                        50,
                        8,
                        Coupons.FINE,
                        0,
                        Coupons.reading(0, 0.33, 0, 50),
                        Coupons.reading(0, 0.75, 0, quarter[2])));
        assertTrue(study.figure(Kind.ACROSS).orElseThrow().told());
        assertTrue(study.figure(Kind.THROUGH).orElseThrow().told());
    }

    /** What the plan expects of a strip twice as wide is what such strips come to, over a dozen of them. */
    @Test
    void thePlanKeepsItsWord() {
        List<Double> expected = new ArrayList<>();
        List<Double> found = new ArrayList<>();
        CouponTools tools = new CouponTools(Length.ofMillimetres(0.05), Mass.ofGrams(0.01), new RelativeHumidity(0.02));
        for (int number = 0; number < 12; number++) {
            Coupon narrow = strip(20, tools);
            Coupon wide = strip(40, tools);
            double[] truth = new double[new CouponModel(WALNUT, List.of(narrow)).unknowns()];
            SplittableRandom random = new SplittableRandom(number);
            for (int i = 0; i < truth.length; i++) {
                truth[i] = 0.5 * random.nextGaussian();
            }
            CouponStudy now = Coupons.study(WALNUT, Coupons.simulated(WALNUT, narrow, truth, random));
            CouponStudy then = Coupons.study(WALNUT, Coupons.simulated(WALNUT, wide, truth, random));
            now.plans().stream()
                    .filter(plan -> plan.figure() == Kind.ACROSS && plan.measure() == CouponMeasure.WIDER)
                    .forEach(plan -> {
                        expected.add(plan.timesNarrower());
                        found.add(then.figure(Kind.ACROSS).orElseThrow().timesAsSure()
                                / now.figure(Kind.ACROSS).orElseThrow().timesAsSure());
                    });
        }
        assertTrue(expected.size() > 8, "plans: " + expected.size());
        assertEquals(mean(expected), mean(found), 0.2 * mean(expected));
    }

    private static Coupon strip(double width, CouponTools tools) {
        return Coupons.strip(
                Cut.FLAT,
                width,
                8,
                tools,
                15,
                Coupons.reading(0, 0.33, 16, width),
                Coupons.reading(0, 0.75, 17, width * 1.02));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    @Test
    void theSameSeedTellsTheSame() {
        double[] book = byTheBook(Axis.ACROSS, 60, 0.33, 0.75);
        Coupon strip = Coupons.strip(
                Cut.FLAT,
                60,
                8,
                Coupons.FINE,
                0,
                Coupons.reading(0, 0.33, 0, 60),
                Coupons.reading(0, 0.75, 0, book[2]));
        assertEquals(
                Coupons.study(WALNUT, strip).figures(),
                Coupons.study(WALNUT, strip).figures());
    }
}
