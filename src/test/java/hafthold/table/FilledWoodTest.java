package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import hafthold.material.Axis;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.WaterUptake;
import hafthold.transport.MoistureHistory;
import hafthold.transport.Slab;
import hafthold.transport.TransientMoisture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Wood filled with methyl methacrylate against plain wood in damp air. Rosen (1970s, Wood and Fiber), yellow-poplar and
 * silver maple at 97 % RH and 24 C: 9 to 21 % of the swelling taken away, swelling and uptake 60 to 90 % slower. The
 * tables hold the middle of these ranges, so that the equilibrium is no independent check; that the solver turns the
 * early ratio into an early ratio is one.
 */
class FilledWoodTest {
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TableSet.builtIn());
    private static final double DRY = 0.30;
    private static final double DAMP = 0.97;
    private static final double CELSIUS = 24;
    private static final double THICKNESS = 4e-3;
    private static final int HOURS = 7;
    private static final double OPEN_SURFACE = 1e6;

    @ParameterizedTest
    @ValueSource(strings = {"yellow-poplar", "maple-silver"})
    void itSwellsNearlyAsFarAsPlainWood(String species) {
        double ratio = swelling(wood(species + "+lumen-resin")) / swelling(wood(species));
        assertTrue(ratio >= 0.79 && ratio <= 0.91, species + " " + ratio);
    }

    @ParameterizedTest
    @ValueSource(strings = {"yellow-poplar", "maple-silver"})
    void butStartsAtATenthToTwoFifthsOfTheRate(String species) {
        double ratio = uptake(wood(species + "+lumen-resin")) / uptake(wood(species));
        assertTrue(ratio >= 0.10 && ratio <= 0.40, species + " " + ratio);
    }

    /** More filling, slower and no worse: an order that holds for every figure chosen by judgement. */
    @ParameterizedTest
    @ValueSource(strings = {"walnut-black", "maple-burl"})
    void moreResinIsSlowerAndNeverSwellsMore(String species) {
        double last = swelling(wood(species));
        double lastRate = uptake(wood(species));
        for (String filling : new String[] {"+lumen-resin-light", "+lumen-resin", "+lumen-resin-full"}) {
            Material filled = wood(species + filling);
            assertTrue(swelling(filled) < last && uptake(filled) < lastRate, filling);
            last = swelling(filled);
            lastRate = uptake(filled);
        }
    }

    /** What the treatment weighs is in the density, and water per kilogram of block is so much less. */
    @ParameterizedTest
    @ValueSource(strings = {"yellow-poplar", "walnut-black"})
    void weightGainIsInTheDensityAndInTheMoistureContent(String species) {
        WaterUptake plain = wood(species).water().orElseThrow();
        WaterUptake filled = wood(species + "+lumen-resin").water().orElseThrow();
        double heavier = 1 + gain(species, "+lumen-resin");
        double kept = 0.85;
        assertEquals(heavier, filled.dryDensity().value() / plain.dryDensity().value(), 1e-12);
        assertEquals(
                kept / heavier,
                filled.isotherm().moistureFraction(0.6, CELSIUS)
                        / plain.isotherm().moistureFraction(0.6, CELSIUS),
                1e-12);
        assertEquals(kept, swelling(wood(species + "+lumen-resin")) / swelling(wood(species)), 0.01);
    }

    /** Half its weight in walnut (common practice, no source), and no block heavier than wall and resin together. */
    @Test
    void aLightWoodTakesUpMoreForItsWeight() {
        assertEquals(0.5, gain("walnut-black", "+lumen-resin"), 0.01);
        assertTrue(gain("basswood-american", "+lumen-resin") > 0.8);
        assertTrue(gain("rosewood-indian", "+lumen-resin") < 0.35);
        for (String species : new String[] {"basswood-american", "walnut-black", "ebony-gaboon"}) {
            double full = wood(species + "+lumen-resin-full")
                    .water()
                    .orElseThrow()
                    .dryDensity()
                    .value();
            assertTrue(full > 1000 && full < 1300, species + " " + full);
        }
    }

    /** Table 19-5 of the Wood Handbook, basswood in bending: 9.3 to 11.6 GPa along the grain. */
    @Test
    void resinMakesItStifferAlongByWhatTheTableSays() {
        assertEquals(11.6 / 9.3, stiffer("maple-sugar", "+lumen-resin", Axis.ALONG), 0.01);
        assertTrue(stiffer("maple-sugar", "+peg", Axis.ACROSS) < stiffer("maple-sugar", "+peg", Axis.ALONG));
    }

    /** Six tropical woods filled with resin were less unlike in their directions (abstract, tropical-wood-plastic). */
    @ParameterizedTest
    @ValueSource(strings = {"yellow-poplar", "walnut-black", "maple-sugar", "rosewood-indian"})
    void itGainsMostWhereItWasWeakest(String species) {
        double last = 1;
        for (Axis axis : new Axis[] {Axis.ALONG, Axis.THROUGH, Axis.ACROSS}) {
            double next = stiffer(species, "+lumen-resin-full", axis);
            assertTrue(next > last, species + " " + axis + " " + next);
            last = next;
        }
    }

    @Test
    void aLightWoodGainsMoreAcrossTheGrain() {
        double last = Double.POSITIVE_INFINITY;
        for (String species : new String[] {"basswood-american", "walnut-black", "maple-sugar", "rosewood-indian"}) {
            double next = stiffer(species, "+lumen-resin", Axis.ACROSS);
            assertTrue(next > 1.4 && next < last, species + " " + next);
            last = next;
        }
    }

    /**
     * Stiffness and strength across rise together, strength half as far as the direction that gains less: filled wood
     * parts at a smaller strain than plain wood, at a larger one than if strength had stayed. That is assumed; along the
     * grain strength gained more than stiffness (Table 19-5: 1.78 in bending against 1.25).
     */
    @ParameterizedTest
    @ValueSource(strings = {"basswood-american", "walnut-black", "beech-european", "rosewood-indian"})
    void strengthFollowsStiffnessPartOfTheWay(String species) {
        double stronger = strength(species + "+lumen-resin") / strength(species);
        double radial = stiffer(species, "+lumen-resin", Axis.THROUGH);
        double tangential = stiffer(species, "+lumen-resin", Axis.ACROSS);
        assertEquals((1 + Math.min(radial, tangential)) / 2, stronger, 1e-9);
        assertTrue(stronger > 1 && stronger < radial && stronger < tangential, species + " " + stronger);
    }

    @Test
    void ownWeighingSpeaksBeforeTheTable(@TempDir Path own) throws IOException {
        Files.writeString(own.resolve("treatments.csv"), """
                treatment,name,property,low,value,high,unit,condition,source,locator,evidence
                lumen-resin,weighed,weight_gain,95,100,105,%,own block,workshop-judgement,weighed,measured
                """);
        MaterialLibrary library = MaterialLibrary.read(TableSet.with(own));
        Material weighed = (Material) library.find("walnut-black+lumen-resin");
        assertEquals(
                2,
                weighed.water().orElseThrow().dryDensity().value()
                        / wood("walnut-black")
                                .water()
                                .orElseThrow()
                                .dryDensity()
                                .value(),
                1e-9);
        double ownModulus = weighed.sheet()
                .figure(Property.YOUNGS_MODULUS, Axis.ACROSS)
                .orElseThrow()
                .value();
        assertTrue(ownModulus > modulus("walnut-black+lumen-resin", Axis.ACROSS));
    }

    /** nu_RT nu_TR = nu_RT^2 E_T / E_R stays: resin brings the directions together and makes none bulge more. */
    @Test
    void theDirectionsHoldEachOtherAsTheyDid() {
        for (String species : new String[] {"walnut-black", "maple-sugar"}) {
            assertEquals(coupling(species), coupling(species + "+lumen-resin"), 1e-9);
        }
    }

    private static double coupling(String id) {
        double radialTangential = wood(id).sheet()
                .figure(Property.POISSON_RATIO, Axis.ACROSS_THROUGH)
                .orElseThrow()
                .value();
        return radialTangential * radialTangential * modulus(id, Axis.ACROSS) / modulus(id, Axis.THROUGH);
    }

    private static double stiffer(String species, String treatment, Axis axis) {
        return modulus(species + treatment, axis) / modulus(species, axis);
    }

    private static double gain(String species, String treatment) {
        return wood(species + treatment).water().orElseThrow().dryDensity().value()
                        / wood(species).water().orElseThrow().dryDensity().value()
                - 1;
    }

    private static double strength(String id) {
        return wood(id).sheet()
                .figure(Property.TENSION_STRENGTH, Axis.ACROSS)
                .orElseThrow()
                .value();
    }

    private static double modulus(String id, Axis axis) {
        return wood(id).sheet()
                .figure(Property.YOUNGS_MODULUS, axis)
                .orElseThrow()
                .value();
    }

    private static double swelling(Material material) {
        WaterUptake water = material.water().orElseThrow();
        return water.swelling()
                .strain(
                        Axis.ACROSS,
                        water.isotherm().moistureFraction(DRY, CELSIUS),
                        water.isotherm().moistureFraction(DAMP, CELSIUS));
    }

    /** Water taken up in the first hours by a slab open on one side, kg/m3: the filled wood is heavier. */
    private static double uptake(Material material) {
        WaterUptake water = material.water().orElseThrow();
        double start = water.isotherm().moistureFraction(DRY, CELSIUS);
        double[] celsius = new double[HOURS];
        double[] humidity = new double[HOURS];
        Arrays.fill(celsius, CELSIUS);
        Arrays.fill(humidity, DAMP);
        Slab slab =
                new Slab(THICKNESS, water.dryDensity().value(), water.isotherm(), water.diffusivity(), OPEN_SURFACE);
        MoistureHistory history = TransientMoisture.from(slab, start, new AirSeries(3600, celsius, humidity));
        return water.dryDensity().value() * (history.meanFraction(HOURS - 1) - start);
    }

    private static Material wood(String id) {
        return (Material) LIBRARY.find(id);
    }
}
