package hafthold.table;

import hafthold.knife.Scales;
import hafthold.knife.Scales.Station;
import hafthold.knife.SizeRange;
import hafthold.knife.Tang;
import hafthold.material.Cut;
import hafthold.quantity.Length;
import hafthold.source.Message;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The tables {@code [tang]} and {@code [scales]} of a full-tang build. */
final class ScaleKeys {
    static final String CUT = "cut";
    private static final String CUT_LEFT = "cut_left";
    private static final String CUT_RIGHT = "cut_right";
    static final Message AS_SOLD = Message.of("taken.cut-as-sold");
    private static final List<String> KEYS =
            List.of("material", CUT, CUT_LEFT, CUT_RIGHT, "thickness", "length", "profile", "easing", "finish");
    private static final List<String> TANG_KEYS = List.of("steel", "width", "thickness", "butt_thickness");

    private ScaleKeys() {}

    /** Reads {@code [tang]}. */
    static Tang readTang(TomlSection tang) {
        tang.allows(TANG_KEYS);
        Length width = tang.required(
                "width", tang.length("width", SizeRange.TANG_WIDTH), "the width of the tang, such as \"26 mm\"");
        String steel = tang.or("steel", UsualBuild.STEEL);
        Length thickness = tang.or("thickness", SizeRange.TANG_THICKNESS, UsualBuild.TANG_THICKNESS);
        Length butt = tang.or(
                "butt_thickness",
                tang.length("butt_thickness", SizeRange.TANG_THICKNESS),
                thickness,
                Message.of("taken.even-tang"));
        return tang.build(() -> new Tang(steel, width, thickness, butt));
    }

    /** Reads {@code [scales]}; where no profile is given they are as wide as the tang. */
    static Scales read(TomlSection scales, Length tangWidth) {
        scales.allows(KEYS);
        String material = scales.required(
                "material", scales.text("material"), "the material of the scales, such as \"walnut-black\"");
        Optional<Cut> left = cut(scales, CUT_LEFT);
        Optional<Cut> right = cut(scales, CUT_RIGHT);
        Length thickness = scales.or("thickness", SizeRange.SCALE_THICKNESS, UsualBuild.SCALE_THICKNESS);
        Length length = scales.or("length", SizeRange.HANDLE_LENGTH, UsualBuild.HANDLE_LENGTH);
        List<Station> profile = scales.or(
                "profile",
                scales.has("profile") ? Optional.of(profile(scales)) : Optional.empty(),
                List.of(new Station(new Length(0), tangWidth)),
                Message.of("taken.wide-as-tang"));
        Length easing = scales.or("easing", SizeRange.EASING, UsualBuild.EASING);
        String finish = scales.or("finish", UsualBuild.FINISH);
        return scales.build(() -> new Scales(material, left, right, thickness, length, profile, easing, finish));
    }

    /** A cut by its word. */
    static Optional<Cut> cutOf(TomlSection section, String key) {
        return section.word(key, Arrays.asList(Cut.values()), Cut::word);
    }

    /** The cut of one side: its own, or that of both. */
    private static Optional<Cut> cut(TomlSection scales, String side) {
        Optional<Cut> both = cutOf(scales, CUT);
        Optional<Cut> own = cutOf(scales, side);
        if (both.isPresent() && own.isPresent()) {
            throw scales.fault(side, "either cut for both scales, or cut_left and cut_right");
        }
        if (both.isPresent()) {
            return both;
        }
        return scales.orNone(side, own, AS_SOLD);
    }

    private static List<Station> profile(TomlSection scales) {
        return scales.sections("profile").stream().map(ScaleKeys::station).toList();
    }

    private static Station station(TomlSection place) {
        place.allows(List.of("at", "width"));
        Length at = place.required(
                "at", place.length("at", SizeRange.PLACE_ALONG), "a distance from the bolster, such as \"40 mm\"");
        Length width = place.required(
                "width", place.length("width", SizeRange.HANDLE_WIDTH), "the width there, such as \"26 mm\"");
        return place.build(() -> new Station(at, width));
    }
}
