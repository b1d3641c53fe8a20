package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.mechanics.LekhnitskiiHole;
import hafthold.source.Figure;
import java.util.Optional;

/**
 * Tension across the grain that a rigid pin puts into a scale which closes on it, over the strength.
 *
 * <p>The face of the scale is an infinite orthotropic plate around a rigid pin ({@link LekhnitskiiHole}); where the
 * figures for that are missing, an isotropic one, in which contact pressure and hoop tension are both E eps / (1 + nu).
 * Half of the stress is left after weeks of relaxation (assumed; a quarter to all of it).
 */
final class PinCrack {
    /** Share of the stress that is left after weeks. */
    static final double RELAXATION = 0.5;

    private static final double UNIT_SQUEEZE = 0.01;
    private static final double USUAL_POISSON = 0.35;

    private PinCrack() {}

    /**
     * Use of strength per squeeze strain (squeeze over pin diameter) across the handle; empty where stiffness or
     * strength is unknown.
     *
     * @param material what the scale is made of
     * @param cut how it lies; rift is taken as tangential
     */
    static Optional<Double> perStrain(Material material, Cut cut) {
        Axis length = leading(cut.length());
        Axis width = leading(cut.width());
        Optional<Double> stiffness = stiffness(material, cut, width);
        Optional<Double> strength = PinSplit.strength(material, cut, Doubt.NONE);
        if (stiffness.isEmpty() || strength.isEmpty()) {
            return Optional.empty();
        }
        double tension = plate(material, length, width)
                .map(hole -> hole.pinContact(0, UNIT_SQUEEZE).largestTensionAcrossPascals() / UNIT_SQUEEZE)
                .orElse(stiffness.get() / (1 + USUAL_POISSON));
        return Optional.of(RELAXATION * tension / strength.get());
    }

    /** Across the handle, Pa: of a burl that of grain in every direction. */
    private static Optional<Double> stiffness(Material material, Cut cut, Axis width) {
        Optional<Double> plain =
                material.sheet().figure(Property.YOUNGS_MODULUS, width).map(Figure::value);
        return cut == Cut.BURL
                ? plain.map(
                        known -> ScaleElasticity.of(material, cut, Doubt.NONE).widthModulusPascals())
                : plain;
    }

    /** The face of the scale as a plate; empty where a figure is missing or both directions are alike. */
    private static Optional<LekhnitskiiHole> plate(Material material, Axis length, Axis width) {
        if (length != Axis.ALONG || width == Axis.ALONG) {
            return Optional.empty();
        }
        Axis plane = width == Axis.ACROSS ? Axis.ALONG_ACROSS : Axis.ALONG_THROUGH;
        Optional<Figure> along = material.sheet().figure(Property.YOUNGS_MODULUS, length);
        Optional<Figure> across = material.sheet().figure(Property.YOUNGS_MODULUS, width);
        Optional<Figure> poisson = material.sheet().figure(Property.POISSON_RATIO, plane);
        Optional<Figure> shear = material.sheet().figure(Property.SHEAR_MODULUS, plane);
        if (along.isEmpty() || across.isEmpty() || poisson.isEmpty() || shear.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new LekhnitskiiHole(
                along.get().value(),
                across.get().value(),
                poisson.get().value(),
                shear.get().value()));
    }

    private static Axis leading(Cut.Shares shares) {
        if (shares.along() > shares.across() && shares.along() > shares.through()) {
            return Axis.ALONG;
        }
        return shares.through() > shares.across() ? Axis.THROUGH : Axis.ACROSS;
    }
}
