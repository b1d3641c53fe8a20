package hafthold.report;

import hafthold.decide.KnifeFit;
import hafthold.knife.FullTangBuild;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Knife;
import hafthold.knife.Order;
import hafthold.knife.Pin;
import hafthold.knife.SizeRange;
import hafthold.knife.TangStackBuild;
import hafthold.knife.TangStackKnife;
import hafthold.material.Cut;
import hafthold.quantity.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a fit was reckoned with, put into words for the end of its page. */
final class FitInputs {
    private final List<Input> inputs = new ArrayList<>();

    private FitInputs() {}

    /**
     * One input.
     *
     * @param name what it is
     * @param value its value in words
     */
    record Input(String name, String value) {}

    /** Every input in the order of the file. */
    static List<Input> of(KnifeFit fit) {
        FitInputs list = new FitInputs();
        Order order = fit.knife().build().order();
        list.add("Place", fit.destination().name() + " (" + fit.destination().id() + ")");
        list.add("Lives in", fit.destination().setting().id());
        list.add("Class of work", order.workClass());
        list.add("Washed, meets food", order.kitchen() ? "yes" : "no");
        if (fit.knife() instanceof FullTangKnife full) {
            list.fullTang(full);
        } else {
            list.stack((TangStackKnife) fit.knife());
        }
        list.add("At final sanding", FitText.state(fit.knife().build().made()));
        return list.inputs;
    }

    /** Names of everything in a knife by id. */
    static Map<String, String> names(Knife knife) {
        Map<String, String> names = new LinkedHashMap<>();
        if (knife instanceof FullTangKnife full) {
            names.put(full.scale().id(), full.scale().name());
            names.put(full.adhesive().id(), full.adhesive().name());
            full.liners().forEach(liner -> names.put(liner.id(), liner.name()));
            full.bolster().ifPresent(bolster -> names.put(bolster.id(), bolster.name()));
        } else {
            ((TangStackKnife) knife).parts().forEach(part -> names.put(part.id(), part.name()));
        }
        return names;
    }

    private void fullTang(FullTangKnife knife) {
        FullTangBuild build = knife.build();
        add(
                "Tang",
                knife.steel().name() + ", " + size(build.tang().width()) + " wide, "
                        + size(build.tang().thickness()) + " thick at the bolster, "
                        + size(build.tang().buttThickness()) + " at the butt");
        add(
                "Scales",
                knife.scale().name() + ", " + cuts(knife) + ", "
                        + size(build.scales().thickness()) + " thick, "
                        + size(build.scales().length()) + " long, edges eased "
                        + size(build.scales().easing()));
        knife.bolster().ifPresent(bolster -> add("Bolster", bolster.name()));
        add(
                "Profile",
                build.scales().profile().stream()
                        .map(station -> size(station.width()) + " at " + size(station.at()))
                        .collect(Collectors.joining(", ")));
        add("Finish", knife.finish().name());
        for (int i = 0; i < knife.liners().size(); i++) {
            add(
                    "Liner " + (i + 1),
                    knife.liners().get(i).name() + ", "
                            + size(build.liners().get(i).thickness()));
        }
        for (int i = 0; i < build.pins().size(); i++) {
            add(
                    "Pin " + (i + 1),
                    pin(build.pins().get(i), knife.pinMetals().get(i).name()));
        }
        add("Glue", knife.adhesive().name() + ", " + size(build.glue().thickness()));
        add("At glue-up", FitText.state(build.glueUp()));
    }

    private void stack(TangStackKnife knife) {
        TangStackBuild build = knife.build();
        add(
                "Tang",
                build.tang().kind().word() + ", " + knife.steel().name() + ", "
                        + size(build.tang().width()) + " by "
                        + size(build.tang().thickness()) + "; nut drawn up with "
                        + Math.round(build.tang().preload().newtons()) + " N");
        add(
                "Grip",
                size(build.grip().width()) + " by " + size(build.grip().thickness()) + ", "
                        + knife.finish().name());
        for (int i = 0; i < knife.parts().size(); i++) {
            add(
                    "Part " + (i + 1),
                    size(build.parts().get(i).length()) + " "
                            + knife.parts().get(i).name()
                            + (knife.cut(i) == Cut.NONE ? "" : ", " + AdviceWords.cutWord(knife.cut(i))));
        }
    }

    private static String cuts(FullTangKnife knife) {
        return knife.cutLeft() == knife.cutRight()
                ? AdviceWords.cutWord(knife.cutLeft())
                : AdviceWords.cutWord(knife.cutLeft()) + " left and " + AdviceWords.cutWord(knife.cutRight())
                        + " right";
    }

    private static String pin(Pin pin, String metal) {
        return pin.kind().word() + ", " + metal + ", " + size(pin.diameter()) + " in a hole of " + size(pin.hole())
                + ", " + size(pin.along()) + " from the bolster, " + size(pin.up()) + " up; ring "
                + pin.fill().word();
    }

    private static String size(Length length) {
        return SizeRange.millimetres(length);
    }

    private void add(String name, String value) {
        inputs.add(new Input(name, value));
    }
}
