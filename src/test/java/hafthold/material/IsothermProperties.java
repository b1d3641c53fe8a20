package hafthold.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class IsothermProperties {

    @Provide
    Arbitrary<SorptionIsotherm> isotherms() {
        Arbitrary<SorptionIsotherm> wood = Arbitraries.doubles()
                .between(0.5, 1.5)
                .ofScale(4)
                .map(factor -> new ScaledIsotherm(new HailwoodHorrobinIsotherm(), factor));
        Arbitrary<SorptionIsotherm> power = Combinators.combine(
                        Arbitraries.doubles().between(0.001, 0.3).ofScale(4),
                        Arbitraries.doubles().between(0.7, 3).ofScale(3))
                .as(PowerIsotherm::new);
        Arbitrary<SorptionIsotherm> gab = Combinators.combine(
                        Arbitraries.doubles().between(0.01, 0.1).ofScale(4),
                        Arbitraries.doubles().between(0.5, 50).ofScale(3),
                        Arbitraries.doubles().between(0.3, 0.95).ofScale(3))
                .as(GuggenheimAndersonDeBoerIsotherm::new);
        return Arbitraries.oneOf(wood, power, gab);
    }

    @Property
    void theInverseReturnsTheHumidity(
            @ForAll("isotherms") SorptionIsotherm isotherm,
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.999) double humidity,
            @ForAll @Scale(4) @DoubleRange(min = -20, max = 60) double celsius) {
        assertEquals(humidity, isotherm.waterActivity(isotherm.moistureFraction(humidity, celsius), celsius), 1e-9);
    }

    @Property
    void moreHumidityMeansMoreWater(
            @ForAll("isotherms") SorptionIsotherm isotherm,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 0.99) double humidity,
            @ForAll @Scale(4) @DoubleRange(min = -20, max = 60) double celsius) {
        assertTrue(isotherm.moistureFraction(humidity + 0.01, celsius) > isotherm.moistureFraction(humidity, celsius));
    }

    @Property
    void theSlopeIsThatOfTheInverse(
            @ForAll("isotherms") SorptionIsotherm isotherm,
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.95) double humidity,
            @ForAll @Scale(4) @DoubleRange(min = -20, max = 60) double celsius) {
        double moisture = isotherm.moistureFraction(humidity, celsius);
        double step = 1e-5 * moisture;
        double numeric =
                (isotherm.waterActivity(moisture + step, celsius) - isotherm.waterActivity(moisture - step, celsius))
                        / (2 * step);
        assertEquals(numeric, isotherm.waterActivitySlope(moisture, celsius), 1e-4 * numeric);
    }
}
