package hafthold.simulate;

import hafthold.knife.FullTangKnife;
import hafthold.knife.GlueLine;
import hafthold.knife.Handle;
import hafthold.knife.Pin;
import hafthold.knife.Scales;
import hafthold.material.Axis;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.mechanics.BondedSection;
import hafthold.mechanics.HandleAxis;
import hafthold.mechanics.Layup;
import hafthold.mechanics.OrthotropicElasticity;
import hafthold.mechanics.SectionLayer;
import hafthold.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Where a handle is cut through in thought, and what lies on what there. */
final class SectionPlan {
    private static final int MOST_POSITIONS = 3;
    private static final double SAME_WIDTH = 0.5e-3;
    private static final List<Double> EQUAL_LAYERS = IntStream.rangeClosed(0, LayerMoisture.LAYERS)
            .mapToObj(k -> (double) k / LayerMoisture.LAYERS)
            .toList();

    private final FullTangKnife knife;
    private final OrthotropicElasticity scale;

    SectionPlan(FullTangKnife knife, List<Hybrid.Part> parts, Doubt doubt) {
        this.knife = knife;
        this.scale = ScaleElasticity.of(parts, doubt);
    }

    /** The section across the width at a distance from the bolster. */
    BondedSection acrossWidth(Length along) {
        return new BondedSection(
                HandleAxis.WIDTH,
                knife.build().tangWidthAt(along).metres() / 2,
                layup(tangThicknessAt(along)),
                EQUAL_LAYERS);
    }

    /** The section along the blade. */
    BondedSection alongLength() {
        double length = knife.build().scales().length().metres();
        return new BondedSection(
                HandleAxis.LENGTH, length / 2, layup(tangThicknessAt(new Length(length / 2))), EQUAL_LAYERS);
    }

    private Layup layup(double tangThickness) {
        GlueLine glue = knife.build().glue();
        List<SectionLayer> liners = new ArrayList<>();
        for (int i = 0; i < knife.liners().size(); i++) {
            liners.add(new SectionLayer(
                    knife.build().liners().get(i).thickness().metres(),
                    plain(knife.liners().get(i))));
        }
        return new Layup(
                new SectionLayer(tangThickness, plain(knife.steel())),
                new SectionLayer(glue.thickness().metres(), plain(knife.adhesive())),
                liners,
                new SectionLayer(knife.build().scales().thickness().metres(), scale));
    }

    private static OrthotropicElasticity plain(Material material) {
        return ScaleElasticity.of(material, hafthold.material.Cut.NONE, Doubt.NONE);
    }

    private double tangThicknessAt(Length along) {
        return tangThicknessAt(knife, along.metres());
    }

    /** Thickness of a tang that tapers from bolster to butt, m, at a distance from the bolster, m. */
    static double tangThicknessAt(FullTangKnife knife, double along) {
        double share = along / knife.build().scales().length().metres();
        return knife.build().tang().thickness().metres() * (1 - share)
                + knife.build().tang().buttThickness().metres() * share;
    }

    /** Distances from the bolster, that of the widest tang first. */
    static List<Length> positions(FullTangKnife knife) {
        Scales scales = knife.build().scales();
        List<Length> stations = new ArrayList<>();
        scales.profile().forEach(station -> stations.add(station.at()));
        stations.add(scales.length());
        stations.sort(Comparator.comparingDouble(
                        (Length at) -> -knife.build().tangWidthAt(at).metres())
                .thenComparingDouble(Length::metres));
        List<Length> distinct = new ArrayList<>();
        for (Length at : stations) {
            double width = knife.build().tangWidthAt(at).metres();
            boolean isNew = distinct.stream()
                    .allMatch(other -> Math.abs(knife.build().tangWidthAt(other).metres() - width) > SAME_WIDTH);
            if (isNew) {
                distinct.add(at);
            }
        }
        if (distinct.size() <= MOST_POSITIONS) {
            return distinct;
        }
        return List.of(distinct.get(0), distinct.get(distinct.size() / 2), distinct.get(distinct.size() - 1));
    }

    /** The handle in the few sizes that free movement and water uptake need: its widest tang, its first pin. */
    static Handle handle(FullTangKnife knife) {
        Scales scales = knife.build().scales();
        Length widest = knife.build().tangWidthAt(positions(knife).get(0));
        List<Pin> pins = knife.build().pins();
        Length diameter = pins.isEmpty() ? new Length(1e-3) : pins.get(0).diameter();
        Length clearance = pins.isEmpty() ? new Length(0) : pins.get(0).openClearance();
        double first =
                pins.stream().mapToDouble(pin -> pin.along().metres()).min().orElse(0);
        double last =
                pins.stream().mapToDouble(pin -> pin.along().metres()).max().orElse(0);
        double spacing = last > first ? last - first : scales.length().metres() / 2;
        return new Handle(scales.length(), widest, scales.thickness(), diameter, clearance, new Length(spacing));
    }

    /** Linear thermal expansion of something that is alike in the plane of the handle, 1/K. */
    static double expansion(Material material) {
        return material.thermalExpansionPerKelvin().get(Axis.ALONG).value();
    }
}
