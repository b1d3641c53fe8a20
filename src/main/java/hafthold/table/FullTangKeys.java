package hafthold.table;

import hafthold.knife.FullTangBuild;
import hafthold.knife.GlueLine;
import hafthold.knife.Liner;
import hafthold.knife.Order;
import hafthold.knife.Pin;
import hafthold.knife.Scales;
import hafthold.knife.SizeRange;
import hafthold.knife.Tang;
import hafthold.knife.WorkState;
import hafthold.quantity.Length;
import hafthold.source.Message;
import java.util.List;
import java.util.Optional;

/** A build file of a full-tang knife. */
final class FullTangKeys {
    static final List<String> TABLES =
            List.of(OrderKeys.TABLE, "tang", "scales", "liners", "bolster", PinKeys.TABLE, "glue", "glue_up", "made");

    private FullTangKeys() {}

    /** Reads all tables but {@code [knife]}. */
    static FullTangBuild read(TomlSection build, Order order) {
        Tang tang = ScaleKeys.readTang(build.section("tang"));
        Scales scales = ScaleKeys.read(build.section("scales"), tang.width());
        List<Liner> liners = build.or(
                "liners",
                build.has("liners") ? Optional.of(liners(build)) : Optional.empty(),
                List.of(),
                Message.of("taken.none"));
        Optional<String> bolster = bolster(build);
        List<Pin> pins = PinKeys.read(build, scales.length());
        GlueLine glue = glue(build.section("glue"));
        WorkState made = StateKeys.read(build.section("made"), UsualBuild.AIR);
        WorkState glueUp = StateKeys.read(build.section("glue_up"), made);
        return build.build(() -> new FullTangBuild(order, tang, scales, liners, bolster, pins, glue, glueUp, made));
    }

    private static List<Liner> liners(TomlSection build) {
        return build.sections("liners").stream().map(FullTangKeys::liner).toList();
    }

    private static Liner liner(TomlSection liner) {
        liner.allows(List.of("material", "thickness"));
        String material = liner.or("material", UsualBuild.LINER);
        Length thickness = liner.or("thickness", SizeRange.LINER_THICKNESS, UsualBuild.LINER_THICKNESS);
        return liner.build(() -> new Liner(material, thickness));
    }

    private static Optional<String> bolster(TomlSection build) {
        TomlSection bolster = build.section("bolster");
        bolster.allows(List.of("material"));
        return bolster.orNone("material", bolster.text("material"), Message.of("taken.none"));
    }

    private static GlueLine glue(TomlSection glue) {
        glue.allows(List.of("adhesive", "thickness"));
        String adhesive = glue.or("adhesive", UsualBuild.ADHESIVE);
        Length thickness = glue.or("thickness", SizeRange.BOND_LINE, UsualBuild.BOND_LINE);
        return glue.build(() -> new GlueLine(adhesive, thickness));
    }
}
