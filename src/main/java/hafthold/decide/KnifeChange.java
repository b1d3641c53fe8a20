package hafthold.decide;

import hafthold.knife.FullTangBuild;
import hafthold.knife.FullTangKnife;
import hafthold.knife.GlueLine;
import hafthold.knife.Pin;
import hafthold.knife.Scales;
import hafthold.knife.WorkState;
import hafthold.knife.WorkState.MeasuredMoisture;
import hafthold.knife.WorkState.SettledAir;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.ScaleMaterial;
import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import java.util.List;
import java.util.Optional;

/** Full-tang knives with one thing made otherwise. */
final class KnifeChange {
    private static final double DRIEST = 0.05;
    private static final double DAMPEST = 0.95;

    private KnifeChange() {}

    /** Glued and sanded after settling in other air. */
    static FullTangKnife conditioned(FullTangKnife knife, RelativeHumidity humidity) {
        FullTangBuild b = knife.build();
        WorkState glueUp = new SettledAir(humidity, b.glueUp().temperature());
        WorkState made = new SettledAir(humidity, b.made().temperature());
        return knife.with(new FullTangBuild(
                b.order(), b.tang(), b.scales(), b.liners(), b.bolsterId(), b.pins(), b.glue(), glueUp, made));
    }

    /** Both scales cut another way. */
    static FullTangKnife recut(FullTangKnife knife, Cut cut) {
        Scales s = knife.build().scales();
        return withScales(knife, scales(s, s.materialId(), Optional.of(cut)));
    }

    /** Both scales of another material, cut as it is usually sold and settled in the same air. */
    static FullTangKnife remade(FullTangKnife knife, ScaleMaterial material) {
        FullTangBuild b = knife.build();
        Scales scales = scales(b.scales(), material.id(), Optional.of(material.usualCut()));
        WorkState glueUp = settled(b.glueUp(), knife.scale());
        WorkState made = settled(b.made(), knife.scale());
        FullTangKnife recut = knife.with(new FullTangBuild(
                b.order(), b.tang(), scales, b.liners(), b.bolsterId(), b.pins(), b.glue(), glueUp, made));
        return new FullTangKnife(
                recut.build(),
                recut.steel(),
                material,
                recut.liners(),
                recut.pinMetals(),
                recut.bolster(),
                recut.adhesive(),
                recut.finish());
    }

    /** The air in which stock that was measured would be at rest: another material holds other water in it. */
    private static WorkState settled(WorkState state, ScaleMaterial measuredOn) {
        if (state instanceof MeasuredMoisture measured
                && measuredOn instanceof Material wood
                && wood.water().isPresent()) {
            double humidity = wood.water()
                    .orElseThrow()
                    .isotherm()
                    .waterActivity(
                            measured.moisture().fraction(), state.temperature().celsius());
            return new SettledAir(
                    new RelativeHumidity(Math.min(DAMPEST, Math.max(DRIEST, humidity))), state.temperature());
        }
        return state;
    }

    /** All pins of one diameter, hole and fill, in their places. */
    static FullTangKnife pinned(FullTangKnife knife, Change.Pins pins) {
        FullTangBuild b = knife.build();
        List<Pin> changed = b.pins().stream()
                .map(pin -> new Pin(
                        pin.kind(), pin.metalId(), pins.diameter(), pins.hole(), pin.along(), pin.up(), pins.fill()))
                .toList();
        return knife.with(new FullTangBuild(
                b.order(), b.tang(), b.scales(), b.liners(), b.bolsterId(), changed, b.glue(), b.glueUp(), b.made()));
    }

    /** A glue line of another thickness. */
    static FullTangKnife bonded(FullTangKnife knife, Length thickness) {
        return glued(knife, knife.adhesive(), thickness);
    }

    /** Another glue. */
    static FullTangKnife glued(FullTangKnife knife, Material adhesive) {
        return glued(knife, adhesive, knife.build().glue().thickness());
    }

    private static FullTangKnife glued(FullTangKnife knife, Material adhesive, Length thickness) {
        FullTangBuild b = knife.build();
        FullTangBuild changed = new FullTangBuild(
                b.order(),
                b.tang(),
                b.scales(),
                b.liners(),
                b.bolsterId(),
                b.pins(),
                new GlueLine(adhesive.id(), thickness),
                b.glueUp(),
                b.made());
        return new FullTangKnife(
                changed,
                knife.steel(),
                knife.scale(),
                knife.liners(),
                knife.pinMetals(),
                knife.bolster(),
                adhesive,
                knife.finish());
    }

    private static Scales scales(Scales s, String materialId, Optional<Cut> cut) {
        return new Scales(materialId, cut, cut, s.thickness(), s.length(), s.profile(), s.easing(), s.finishId());
    }

    private static FullTangKnife withScales(FullTangKnife knife, Scales scales) {
        FullTangBuild b = knife.build();
        return knife.with(new FullTangBuild(
                b.order(), b.tang(), scales, b.liners(), b.bolsterId(), b.pins(), b.glue(), b.glueUp(), b.made()));
    }
}
