package hafthold.report;

import hafthold.decide.KnifeFit;
import hafthold.knife.FullTangBuild;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Knife;
import hafthold.knife.Order;
import hafthold.knife.Pin;
import hafthold.knife.TangStackBuild;
import hafthold.knife.TangStackKnife;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.quantity.Length;
import hafthold.simulate.Destination;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a fit was reckoned with, put into words for the end of its page. */
final class FitInputs {
    private final BenchStyle style;
    private final List<Input> inputs = new ArrayList<>();

    private FitInputs(BenchStyle style) {
        this.style = style;
    }

    /**
     * One input.
     *
     * @param name what it is
     * @param value its value in words
     */
    record Input(String name, String value) {}

    /** Every input in the order of the file. */
    static List<Input> of(KnifeFit fit, BenchStyle style) {
        return of(fit.knife(), fit.destination(), style);
    }

    /** Likewise, of a knife and where it lives. */
    static List<Input> of(Knife knife, Destination destination, BenchStyle style) {
        FitInputs list = new FitInputs(style);
        Order order = knife.build().order();
        list.add("place", style.tell(destination.name()) + " (" + destination.id() + ")");
        list.add("setting", style.named("setting", destination.setting().id()));
        list.add("work", order.workClass());
        list.add("kitchen", style.say(order.kitchen() ? "yes" : "no"));
        if (knife instanceof FullTangKnife full) {
            list.fullTang(full);
        } else {
            list.stack((TangStackKnife) knife);
        }
        list.add("made", FitText.state(knife.build().made(), style));
        return list.inputs;
    }

    /** Names of everything in a knife by id. */
    static Map<String, String> names(Knife knife) {
        Map<String, String> names = new LinkedHashMap<>();
        if (knife instanceof FullTangKnife full) {
            names.put(full.scale().id(), full.scale().name());
            names.put(full.adhesive().id(), full.adhesive().name());
            full.liners().forEach(liner -> names.put(liner.id(), liner.name()));
            full.pinMetals().forEach(metal -> names.put(metal.id(), metal.name()));
            names.put(full.steel().id(), full.steel().name());
            if (full.scale() instanceof Hybrid hybrid) {
                hybrid.parts()
                        .forEach(part ->
                                names.put(part.material().id(), part.material().name()));
            }
            full.bolster().ifPresent(bolster -> names.put(bolster.id(), bolster.name()));
        } else {
            ((TangStackKnife) knife).parts().forEach(part -> names.put(part.id(), part.name()));
        }
        return names;
    }

    private void fullTang(FullTangKnife knife) {
        FullTangBuild build = knife.build();
        add(
                "tang",
                style.say(
                        "input.tang.value",
                        "steel",
                        knife.steel().name(),
                        "width",
                        size(build.tang().width()),
                        "thickness",
                        size(build.tang().thickness()),
                        "butt",
                        size(build.tang().buttThickness())));
        add(
                "scales",
                style.say(
                        "input.scales.value",
                        "material",
                        knife.scale().name(),
                        "cut",
                        cuts(knife),
                        "thickness",
                        size(build.scales().thickness()),
                        "length",
                        size(build.scales().length()),
                        "easing",
                        size(build.scales().easing())));
        add(
                "profile",
                style.joined(
                        "comma",
                        build.scales().profile().stream()
                                .map(station -> style.say(
                                        "input.profile.value",
                                        "width",
                                        size(station.width()),
                                        "at",
                                        size(station.at())))
                                .toList()));
        add("finish", knife.finish().name());
        for (int i = 0; i < knife.liners().size(); i++) {
            addOne(
                    "liner",
                    i,
                    knife.liners().get(i).name(),
                    size(build.liners().get(i).thickness()));
        }
        knife.bolster().ifPresent(bolster -> add("bolster", bolster.name()));
        for (int i = 0; i < build.pins().size(); i++) {
            addOne("pin", i, pin(build.pins().get(i), knife.pinMetals().get(i).name()));
        }
        add(
                "glue",
                style.joined(
                        "comma",
                        List.of(knife.adhesive().name(), size(build.glue().thickness()))));
        add("glue-up", FitText.state(build.glueUp(), style));
    }

    private void stack(TangStackKnife knife) {
        TangStackBuild build = knife.build();
        add(
                "tang",
                style.say(
                        "input.stack-tang.value",
                        "kind",
                        style.named("tang", build.tang().kind().word()),
                        "steel",
                        knife.steel().name(),
                        "width",
                        size(build.tang().width()),
                        "thickness",
                        size(build.tang().thickness()),
                        "newtons",
                        Long.toString(Math.round(build.tang().preload().newtons()))));
        add(
                "grip",
                style.say(
                        "input.grip.value",
                        "width",
                        size(build.grip().width()),
                        "thickness",
                        size(build.grip().thickness()),
                        "finish",
                        knife.finish().name()));
        for (int i = 0; i < knife.parts().size(); i++) {
            String part = size(build.parts().get(i).length()) + " "
                    + knife.parts().get(i).name();
            if (knife.cut(i) == Cut.NONE) {
                addOne("part", i, part);
            } else {
                addOne("part", i, part, style.cut(knife.cut(i)));
            }
        }
    }

    private String cuts(FullTangKnife knife) {
        return knife.cutLeft() == knife.cutRight()
                ? style.cut(knife.cutLeft())
                : style.say("input.two-cuts", "left", style.cut(knife.cutLeft()), "right", style.cut(knife.cutRight()));
    }

    private String pin(Pin pin, String metal) {
        return style.say(
                "input.pin.value",
                "kind",
                style.named("pin-kind", pin.kind().word()),
                "metal",
                metal,
                "pin",
                size(pin.diameter()),
                "hole",
                size(pin.hole()),
                "along",
                size(pin.along()),
                "up",
                size(pin.up()),
                "fill",
                style.named("pin-fill", pin.fill().word()));
    }

    private String size(Length length) {
        return style.size(length);
    }

    private void add(String key, String value) {
        inputs.add(new Input(style.say("input." + key), value));
    }

    private void addOne(String key, int index, String... values) {
        inputs.add(new Input(
                style.say("input." + key, "number", Integer.toString(index + 1)),
                style.joined("comma", List.of(values))));
    }
}
