package hafthold.table;

import hafthold.knife.Grip;
import hafthold.knife.Order;
import hafthold.knife.SizeRange;
import hafthold.knife.StackPart;
import hafthold.knife.StackTang;
import hafthold.knife.TangStackBuild;
import hafthold.knife.WorkState;
import hafthold.material.Cut;
import hafthold.quantity.Force;
import hafthold.quantity.Length;
import hafthold.source.Message;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A build file of a stack of parts on a tang. */
final class StackKeys {
    static final List<String> TABLES = List.of(OrderKeys.TABLE, "tang", "grip", "parts", "made");
    private static final String SNUG = "snug";

    private StackKeys() {}

    /** Reads all tables but {@code [knife]}. */
    static TangStackBuild read(TomlSection build, Order order) {
        StackTang tang = tang(build.section("tang"));
        Grip grip = grip(build.section("grip"));
        List<StackPart> parts =
                build.sections("parts").stream().map(StackKeys::part).toList();
        WorkState made = StateKeys.read(build.section("made"), UsualBuild.AIR);
        return build.build(() -> new TangStackBuild(order, tang, grip, parts, made));
    }

    private static StackTang tang(TomlSection tang) {
        tang.allows(List.of("kind", "steel", "width", "thickness", "preload"));
        Length width = tang.required(
                "width", tang.length("width", SizeRange.STACK_TANG_WIDTH), "the width of the tang, such as \"8 mm\"");
        StackTang.Kind kind = tang.or(
                "kind",
                tang.word("kind", Arrays.asList(StackTang.Kind.values()), StackTang.Kind::word),
                StackTang.Kind.THROUGH,
                Message.of("taken.through-tang"));
        String steel = tang.or("steel", UsualBuild.STEEL);
        Length thickness = tang.or("thickness", SizeRange.TANG_THICKNESS, UsualBuild.STACK_TANG_THICKNESS);
        Force preload = tang.or("preload", preload(tang), UsualBuild.SNUG, Message.of("taken.snug-nut"));
        return tang.build(() -> new StackTang(kind, steel, width, thickness, preload));
    }

    private static Optional<Force> preload(TomlSection tang) {
        boolean snug = tang.has("preload") && tang.text("preload").equals(Optional.of(SNUG));
        return snug ? Optional.of(UsualBuild.SNUG) : tang.quantity("preload", QuantityForm.FORCE);
    }

    private static Grip grip(TomlSection grip) {
        grip.allows(List.of("width", "thickness", "finish"));
        Length width = grip.or("width", SizeRange.HANDLE_WIDTH, UsualBuild.GRIP_WIDTH);
        Length thickness = grip.or("thickness", SizeRange.HANDLE_THICKNESS, UsualBuild.GRIP_THICKNESS);
        String finish = grip.or("finish", UsualBuild.FINISH);
        return grip.build(() -> new Grip(width, thickness, finish));
    }

    private static StackPart part(TomlSection part) {
        part.allows(List.of("material", ScaleKeys.CUT, "length"));
        String material =
                part.required("material", part.text("material"), "the material of the part, such as \"antler\"");
        Length length = part.required(
                "length",
                part.length("length", SizeRange.PART_LENGTH),
                "the length of the part along the tang, such as \"35 mm\"");
        Optional<Cut> cut = part.orNone(ScaleKeys.CUT, ScaleKeys.cutOf(part, ScaleKeys.CUT), ScaleKeys.AS_SOLD);
        return part.build(() -> new StackPart(material, cut, length));
    }
}
