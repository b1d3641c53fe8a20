package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.PropertySheet;
import hafthold.mechanics.HandleAxis;
import hafthold.mechanics.OrthotropicElasticity;
import hafthold.mechanics.RosenHashinAggregate;
import hafthold.source.Figure;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Elastic constants of what a handle is made of, along the axes of the handle, from the sheets of its materials. */
final class ScaleElasticity {
    /** Taken where a sheet has no modulus at all (assumed): that of horn or a hard polymer. */
    private static final double UNKNOWN_MODULUS = 3e9;

    /** Taken where a sheet has no Poisson's ratio (assumed). */
    private static final double UNKNOWN_POISSON = 0.3;

    private ScaleElasticity() {}

    /** A scale of one or more parts: each modulus is the mean by share of width. */
    static OrthotropicElasticity of(List<Hybrid.Part> parts, Doubt doubt) {
        double[] sum = new double[9];
        for (Hybrid.Part part : parts) {
            OrthotropicElasticity own = of(part.material(), part.cut(), doubt);
            double[] constants = {
                own.lengthModulusPascals(),
                own.widthModulusPascals(),
                own.thicknessModulusPascals(),
                own.lengthWidthShearPascals(),
                own.lengthThicknessShearPascals(),
                own.widthThicknessShearPascals(),
                own.lengthWidthPoisson(),
                own.lengthThicknessPoisson(),
                own.widthThicknessPoisson()
            };
            for (int i = 0; i < sum.length; i++) {
                sum[i] += part.share().value() * constants[i];
            }
        }
        return parts.size() == 1
                ? of(parts.get(0).material(), parts.get(0).cut(), doubt)
                : new OrthotropicElasticity(sum[0], sum[1], sum[2], sum[3], sum[4], sum[5], sum[6], sum[7], sum[8]);
    }

    /** A material as it lies in the handle. */
    static OrthotropicElasticity of(Material material, Cut cut, Doubt doubt) {
        OrthotropicElasticity flat = grain(material, doubt);
        return switch (cut) {
            case FLAT, NONE -> flat;
            case RIFT -> flat.turnedAboutLength(Math.PI / 4);
            case QUARTER -> flat.turnedAboutLength(Math.PI / 2);
            case BURL -> new RosenHashinAggregate(flat).stiffness();
            case CROSS -> flat.laid(HandleAxis.WIDTH, HandleAxis.THICKNESS, HandleAxis.LENGTH);
        };
    }

    /** True where every modulus the section needs is on the sheet. */
    static boolean isKnown(Material material) {
        return material.sheet().figure(Property.YOUNGS_MODULUS, Axis.ACROSS).isPresent();
    }

    /** What was taken for stiffness that no sheet states, once a material. */
    static List<Finding> findings(List<Hybrid.Part> parts) {
        return parts.stream()
                .map(Hybrid.Part::material)
                .filter(material -> !isKnown(material))
                .map(Material::id)
                .distinct()
                .map(id -> new Finding(Finding.Kind.ESTIMATE, id, Message.of("note.no-stiffness")))
                .toList();
    }

    /** Length along, width across, thickness through: flat-sawn wood, or a sheet as it is made. */
    static OrthotropicElasticity grain(Material material, Doubt doubt) {
        PropertySheet sheet = material.sheet();
        double along = modulus(material, Axis.ALONG, doubt);
        double across = modulus(material, Axis.ACROSS, doubt);
        double through = modulus(material, Axis.THROUGH, doubt);
        double alongAcross = poisson(sheet, Axis.ALONG_ACROSS);
        double alongThrough = poisson(sheet, Axis.ALONG_THROUGH);
        // Wood tables state nu_RT, contraction across (T) under stress through (R); here it is nu_TR.
        double turned = isWood(material) ? across / through : 1;
        double acrossThrough = turned * poisson(sheet, Axis.ACROSS_THROUGH);
        return IntStream.of(5, 4, 3, 2, 1, 0)
                .mapToObj(fifths -> fitting(
                        along,
                        across,
                        through,
                        shear(material, Axis.ALONG_ACROSS, along, across, alongAcross, doubt),
                        shear(material, Axis.ALONG_THROUGH, along, through, alongThrough, doubt),
                        shear(material, Axis.ACROSS_THROUGH, across, through, acrossThrough, doubt),
                        fifths / 5.0 * alongAcross,
                        fifths / 5.0 * alongThrough,
                        fifths / 5.0 * acrossThrough))
                .flatMap(Optional::stream)
                .findFirst()
                .orElseThrow();
    }

    /** Empty where the ratios do not go with the moduli; those of mixed sources may not, smaller ones do. */
    private static Optional<OrthotropicElasticity> fitting(
            double along,
            double across,
            double through,
            double alongAcrossShear,
            double alongThroughShear,
            double acrossThroughShear,
            double alongAcross,
            double alongThrough,
            double acrossThrough) {
        try {
            return Optional.of(new OrthotropicElasticity(
                    along,
                    across,
                    through,
                    alongAcrossShear,
                    alongThroughShear,
                    acrossThroughShear,
                    alongAcross,
                    alongThrough,
                    acrossThrough));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static boolean isWood(Material material) {
        return material.family() == Family.WOOD || material.family() == Family.TREATED_WOOD;
    }

    private static double modulus(Material material, Axis axis, Doubt doubt) {
        PropertySheet sheet = material.sheet();
        return sheet.figure(Property.YOUNGS_MODULUS, axis)
                .or(() -> sheet.figure(Property.YOUNGS_MODULUS, Axis.ACROSS))
                .or(() -> sheet.figure(Property.YOUNGS_MODULUS, Axis.ALONG))
                .map(figure -> doubt.stiffness(material, figure))
                .orElse(UNKNOWN_MODULUS);
    }

    private static double poisson(PropertySheet sheet, Axis plane) {
        return sheet.figure(Property.POISSON_RATIO, plane).map(Figure::value).orElse(UNKNOWN_POISSON);
    }

    private static double shear(
            Material material, Axis plane, double first, double second, double poisson, Doubt doubt) {
        return material.sheet()
                .figure(Property.SHEAR_MODULUS, plane)
                .map(figure -> doubt.stiffness(material, figure))
                .orElse(Math.min(first, second) / (2 * (1 + poisson)));
    }
}
