package hafthold.table;

import hafthold.knife.Pin;
import hafthold.knife.SizeRange;
import hafthold.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The tables {@code [[pins]]} of a full-tang build. */
final class PinKeys {
    static final String TABLE = "pins";
    private static final int USUAL_COUNT = 2;
    private static final List<String> KEYS = List.of("kind", "metal", "diameter", "hole", "along", "up", "fill");

    private PinKeys() {}

    /** Reads all pins; two usual ones where the file has no {@code pins} at all. */
    static List<Pin> read(TomlSection build, Length handleLength) {
        if (!build.has(TABLE)) {
            return build.or(
                    TABLE,
                    Optional.empty(),
                    List.of(usual(0, handleLength), usual(1, handleLength)),
                    "pins",
                    "a pair of 6 mm " + UsualBuild.PIN_METAL + " pins in 6.05 mm holes with hard epoxy");
        }
        List<TomlSection> sections = build.sections(TABLE);
        List<Pin> pins = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            pins.add(pin(sections.get(i), UsualBuild.pinAlong(i, sections.size(), handleLength)));
        }
        return pins;
    }

    private static Pin usual(int index, Length handleLength) {
        return new Pin(
                Pin.Kind.SOLID,
                UsualBuild.PIN_METAL,
                UsualBuild.PIN_DIAMETER,
                holeFor(UsualBuild.PIN_DIAMETER),
                UsualBuild.pinAlong(index, USUAL_COUNT, handleLength),
                new Length(0),
                Pin.Fill.HARD_EPOXY);
    }

    private static Length holeFor(Length diameter) {
        return new Length(diameter.metres() + UsualBuild.PIN_RING.metres());
    }

    private static Pin pin(TomlSection pin, Length usualAlong) {
        pin.allows(KEYS);
        Pin.Kind kind = pin.or(
                "kind",
                pin.word("kind", Arrays.asList(Pin.Kind.values()), Pin.Kind::word),
                Pin.Kind.SOLID,
                "what sort of pin it is",
                "a solid one");
        String metal =
                pin.or("metal", pin.text("metal"), UsualBuild.PIN_METAL, "the metal of the pin", UsualBuild.PIN_METAL);
        Length diameter =
                pin.or("diameter", SizeRange.PIN_DIAMETER, UsualBuild.PIN_DIAMETER, "the diameter of the pin");
        Length hole = pin.or("hole", SizeRange.HOLE_DIAMETER, holeFor(diameter), "the drilled hole");
        Length along = pin.or("along", SizeRange.PLACE_ALONG, usualAlong, "the distance from the bolster");
        Length up = pin.or("up", SizeRange.PLACE_UP, new Length(0), "the height over the centre line");
        Pin.Fill fill = pin.or(
                "fill",
                pin.word("fill", Arrays.asList(Pin.Fill.values()), Pin.Fill::word),
                Pin.Fill.HARD_EPOXY,
                "what fills the hole beside the pin",
                Pin.Fill.HARD_EPOXY.word());
        return pin.build(() -> new Pin(kind, metal, diameter, hole, along, up, fill));
    }
}
