package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.source.Figure;
import java.util.Optional;

/**
 * Tension that a rigid pin puts into a scale that closes on it, over the strength across the grain.
 *
 * <p>Rigid disc in an infinite isotropic plate that shrinks by eps: contact pressure and hoop tension are both 2 G eps =
 * E eps / (1 + nu) (Lame's solution for the bore). E and nu are taken across the grain, and half of the stress is left
 * after weeks of relaxation (assumed, a quarter to all of it).
 */
final class PinCrack {
    /** Share of the stress that is left after weeks. */
    static final double RELAXATION = 0.5;

    private PinCrack() {}

    /**
     * Use of strength per squeeze strain (squeeze over pin diameter); empty where stiffness or strength is unknown.
     *
     * @param material what the scale is made of
     */
    static Optional<Double> perStrain(Material material) {
        Optional<Figure> stiffness = material.sheet().figure(Property.YOUNGS_MODULUS, Axis.ACROSS);
        Optional<Figure> strength = material.sheet().figure(Property.TENSION_STRENGTH, Axis.ACROSS);
        if (stiffness.isEmpty() || strength.isEmpty()) {
            return Optional.empty();
        }
        double poisson = material.sheet()
                .figure(Property.POISSON_RATIO, Axis.ACROSS_THROUGH)
                .map(Figure::value)
                .orElse(0.35);
        double tensionPerStrain = stiffness.get().value() / (1 + poisson);
        return Optional.of(RELAXATION * tensionPerStrain / strength.get().value());
    }
}
