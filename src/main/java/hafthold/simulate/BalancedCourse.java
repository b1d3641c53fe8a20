package hafthold.simulate;

import hafthold.air.HeldAir;
import hafthold.material.Material;
import java.util.Arrays;

/** Moisture of what has come to rest in air that is held. */
final class BalancedCourse {
    private static final int HALVINGS = 30;

    private BalancedCourse() {}

    /** Moisture content in balance with the air, kg/kg; 0 for what takes up no water. */
    static double fraction(Material material, Doubt doubt, HeldAir air) {
        return material.water()
                .map(water -> doubt.sorptionFactor(material)
                        * water.isotherm().moistureFraction(air.humidityFraction(), air.celsius()))
                .orElse(0.0);
    }

    /**
     * Humidity of the air, fraction, in which a moisture content is in balance, found by halving; its nearest where no air
     * holds so much or so little.
     */
    static double humidity(Material material, Doubt doubt, double moistureFraction, double celsius) {
        double low = 0;
        double high = 1;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            boolean tooDry = fraction(material, doubt, new HeldAir(celsius, middle)) < moistureFraction;
            low = tooDry ? middle : low;
            high = tooDry ? high : middle;
        }
        return (low + high) / 2;
    }

    /** One moment of it. */
    static LayeredCourse of(Material material, Doubt doubt, HeldAir air, int layers) {
        double[] even = {fraction(material, doubt, air)};
        double[][] layer = new double[layers][];
        Arrays.fill(layer, even);
        return new LayeredCourse(layer, new MoistureCourse(even, new double[] {0}));
    }
}
