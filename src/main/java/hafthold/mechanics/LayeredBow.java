package hafthold.mechanics;

import hafthold.source.PublishedModel;
import java.util.List;

/**
 * Bow of a long strip of bonded layers that want different lengths: a handle with one scale, or two unlike ones.
 *
 * <p>Plane sections stay plane and neither force nor moment is left: sum E t (e0 + k y - free) = 0 and the same times y.
 * For two layers this is Timoshenko's bimetal, 1/r = 6 df (1 + m)^2 / (h (3 (1 + m)^2 + (1 + m n) (m^2 + 1 / (m n)))).
 * Away from the ends; the glue is a layer like any other.
 *
 * @param layers from one face to the other, at least one
 */
@PublishedModel(
        source = "timoshenko-1925",
        locator = "equation for the curvature of a bimetal strip, here for any number of layers",
        validity = "long thin strip, elastic, far from its ends")
public record LayeredBow(List<Layer> layers) {

    /** Keeps its own list. */
    public LayeredBow {
        layers = List.copyOf(layers);
        if (layers.isEmpty()) {
            throw new IllegalArgumentException("a strip needs at least one layer");
        }
    }

    /** Curvature, 1/m; positive where the last layer is on the outside of the bend, that is, wants to be longer. */
    public double curvaturePerMetre() {
        double a = 0;
        double b = 0;
        double d = 0;
        double force = 0;
        double moment = 0;
        double bottom = 0;
        for (Layer layer : layers) {
            double top = bottom + layer.thicknessMetres();
            double first = layer.modulusPascals() * (top - bottom);
            double second = layer.modulusPascals() * (top * top - bottom * bottom) / 2;
            a += first;
            b += second;
            d += layer.modulusPascals() * (top * top * top - bottom * bottom * bottom) / 3;
            force += first * layer.freeStrain();
            moment += second * layer.freeStrain();
            bottom = top;
        }
        return (a * moment - b * force) / (a * d - b * b);
    }

    /** Height of the arc over a straight-edge, m, over a span in metres. */
    public double sagMetres(double spanMetres) {
        return curvaturePerMetre() * spanMetres * spanMetres / 8;
    }

    /**
     * One layer of the strip.
     *
     * @param thicknessMetres m, positive
     * @param modulusPascals Young's modulus along the strip, Pa, positive
     * @param freeStrain strain the layer would take alone
     */
    public record Layer(double thicknessMetres, double modulusPascals, double freeStrain) {

        /** Checks thickness and modulus. */
        public Layer {
            if (!(thicknessMetres > 0) || !(modulusPascals > 0)) {
                throw new IllegalArgumentException("a layer needs positive thickness and modulus, got "
                        + 1000 * thicknessMetres + " mm, " + modulusPascals + " Pa");
            }
        }
    }
}
