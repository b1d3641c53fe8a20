package hafthold.table;

import hafthold.knife.Pin;
import hafthold.knife.SizeRange;
import hafthold.quantity.Length;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
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
                    Message.of(
                            "taken.usual-pins",
                            Map.of(
                                    "pin", Message.size(UsualBuild.PIN_DIAMETER),
                                    "metal", Message.verbatim(UsualBuild.PIN_METAL),
                                    "hole", Message.size(holeFor(UsualBuild.PIN_DIAMETER)))));
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
                Message.of("taken.solid-pin"));
        String metal = pin.or("metal", UsualBuild.PIN_METAL);
        Length diameter = pin.or("diameter", SizeRange.PIN_DIAMETER, UsualBuild.PIN_DIAMETER);
        Length hole = pin.or("hole", SizeRange.HOLE_DIAMETER, holeFor(diameter));
        Length along = pin.or("along", SizeRange.PLACE_ALONG, usualAlong);
        Length up = pin.or("up", SizeRange.PLACE_UP, new Length(0));
        Pin.Fill fill = pin.or(
                "fill",
                pin.word("fill", Arrays.asList(Pin.Fill.values()), Pin.Fill::word),
                Pin.Fill.HARD_EPOXY,
                Message.verbatim(Pin.Fill.HARD_EPOXY.word()));
        return pin.build(() -> new Pin(kind, metal, diameter, hole, along, up, fill));
    }
}
