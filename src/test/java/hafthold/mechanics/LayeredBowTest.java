package hafthold.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class LayeredBowTest {
    private static LayeredBow strip(double t1, double e1, double f1, double t2, double e2, double f2) {
        return new LayeredBow(List.of(new LayeredBow.Layer(t1, e1, f1), new LayeredBow.Layer(t2, e2, f2)));
    }

    /** Timoshenko 1925, Analysis of bi-metal thermostats: equal layers bend by 3/2 of the mismatch over the height. */
    @Test
    void equalLayersOfOneMaterial() {
        assertEquals(1.5 * 0.001 / 2e-3, strip(1e-3, 1e11, 0, 1e-3, 1e11, 0.001).curvaturePerMetre(), 1e-12);
    }

    /** Timoshenko's equation worked out: steel 200 GPa on brass 105 GPa, 1 mm each, 8e-6 per kelvin apart, 100 K. */
    @Test
    void steelOnBrass() {
        LayeredBow strip = strip(1e-3, 200e9, 0, 1e-3, 105e9, 100 * 8e-6);
        assertEquals(0.58430549, strip.curvaturePerMetre(), 5e-9);
        assertEquals(2.9215274e-3, strip.sagMetres(0.2), 5e-11);
    }

    /** The same equation, handle sizes: steel 4 mm with one scale of 7 mm. */
    @Test
    void oneScaleBowsTheHandle() {
        assertEquals(
                -0.086439479e-3, strip(4e-3, 200e9, 0, 7e-3, 12.7e9, -0.0005).sagMetres(0.11), 5e-13);
        LayeredBow acrylic = strip(4e-3, 200e9, -40 * 11e-6, 7e-3, 3.2e9, -40 * 70e-6);
        assertEquals(-0.23539855e-3, acrylic.sagMetres(0.11), 5e-12);
    }

    @Test
    void twinScalesKeepItStraight() {
        LayeredBow.Layer scale = new LayeredBow.Layer(7e-3, 12.7e9, -0.0005);
        LayeredBow.Layer tang = new LayeredBow.Layer(4e-3, 200e9, 0);
        assertEquals(0, new LayeredBow(List.of(scale, tang, scale)).curvaturePerMetre(), 1e-15);
    }

    @Test
    void refusesEmptyStrips() {
        assertThrows(IllegalArgumentException.class, () -> new LayeredBow(List.of()));
        assertThrows(IllegalArgumentException.class, () -> new LayeredBow.Layer(0, 1e9, 0));
    }
}
