package hafthold.table;

import hafthold.knife.FullTangBuild;
import hafthold.knife.Grip;
import hafthold.knife.KnifeBuild;
import hafthold.knife.Order;
import hafthold.knife.Pin;
import hafthold.knife.Scales;
import hafthold.knife.StackPart;
import hafthold.knife.StackTang;
import hafthold.knife.Tang;
import hafthold.knife.TangStackBuild;
import hafthold.knife.WorkState;
import hafthold.quantity.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.DoubleFunction;
import org.tomlj.Toml;

/** Writes a build as a file that says everything and in which every number reads back to the last bit. */
final class BuildFileText {
    private final StringBuilder text = new StringBuilder();

    private BuildFileText() {}

    static String of(KnifeBuild build) {
        BuildFileText file = new BuildFileText();
        if (build instanceof FullTangBuild full) {
            file.fullTang(full);
        } else {
            file.stack((TangStackBuild) build);
        }
        return file.text.toString();
    }

    private void fullTang(FullTangBuild build) {
        if (build.pins().isEmpty()) {
            line("pins = []");
        }
        if (build.liners().isEmpty()) {
            line("liners = []");
        }
        order(build.order(), "full-tang");
        tang(build.tang());
        scales(build.scales());
        build.liners().forEach(liner -> {
            line("[[liners]]");
            word("material", liner.materialId());
            length("thickness", liner.thickness());
        });
        build.bolsterId().ifPresent(id -> {
            line("[bolster]");
            word("material", id);
        });
        build.pins().forEach(this::pin);
        line("[glue]");
        word("adhesive", build.glue().adhesiveId());
        length("thickness", build.glue().thickness());
        line("[glue_up]");
        state(build.glueUp());
        line("[made]");
        state(build.made());
    }

    private void stack(TangStackBuild build) {
        order(build.order(), "tang-stack");
        StackTang tang = build.tang();
        line("[tang]");
        word("kind", tang.kind().word());
        word("steel", tang.steelId());
        length("width", tang.width());
        length("thickness", tang.thickness());
        double newtons = tang.preload().newtons();
        word("preload", newtons == 0 ? "snug" : plain(newtons) + " N");
        Grip grip = build.grip();
        line("[grip]");
        length("width", grip.width());
        length("thickness", grip.thickness());
        word("finish", grip.finishId());
        for (StackPart part : build.parts()) {
            line("[[parts]]");
            word("material", part.materialId());
            part.cut().ifPresent(cut -> word("cut", cut.word()));
            length("length", part.length());
        }
        line("[made]");
        state(build.made());
    }

    private void order(Order order, String kind) {
        line("[knife]");
        order.name().ifPresent(name -> word("name", name));
        word("build", kind);
        order.placeId().ifPresent(id -> word("place", id));
        order.settingId().ifPresent(id -> word("setting", id));
        order.climateFile().ifPresent(file -> word("climate", file.toString()));
        word("work", order.workClass());
        line("kitchen = " + order.kitchen());
    }

    private void tang(Tang tang) {
        line("[tang]");
        word("steel", tang.steelId());
        length("width", tang.width());
        length("thickness", tang.thickness());
        length("butt_thickness", tang.buttThickness());
    }

    private void scales(Scales scales) {
        line("[scales]");
        word("material", scales.materialId());
        if (scales.cutLeft().equals(scales.cutRight())) {
            scales.cutLeft().ifPresent(cut -> word("cut", cut.word()));
        } else {
            scales.cutLeft().ifPresent(cut -> word("cut_left", cut.word()));
            scales.cutRight().ifPresent(cut -> word("cut_right", cut.word()));
        }
        length("thickness", scales.thickness());
        length("length", scales.length());
        length("easing", scales.easing());
        word("finish", scales.finishId());
        for (Scales.Station station : scales.profile()) {
            line("[[scales.profile]]");
            length("at", station.at());
            length("width", station.width());
        }
    }

    private void pin(Pin pin) {
        line("[[pins]]");
        word("kind", pin.kind().word());
        word("metal", pin.metalId());
        length("diameter", pin.diameter());
        length("hole", pin.hole());
        length("along", pin.along());
        length("up", pin.up());
        word("fill", pin.fill().word());
    }

    private void state(WorkState state) {
        if (state instanceof WorkState.SettledAir air) {
            word("humidity", scaled(air.humidity().fraction(), 100, x -> x / 100.0) + " %");
        } else {
            double moisture = ((WorkState.MeasuredMoisture) state).moisture().fraction();
            word("moisture", scaled(moisture, 100, x -> x / 100.0) + " %");
        }
        word("temperature", plain(state.temperature().celsius()) + " C");
    }

    private void length(String key, Length length) {
        word(key, scaled(length.metres(), 1000, x -> x / 1000.0) + " mm");
    }

    /** The shortest decimal that the reader's own division turns into exactly this number. */
    private static String scaled(double value, int factor, DoubleFunction<Double> read) {
        BigDecimal exact = new BigDecimal(value).multiply(BigDecimal.valueOf(factor));
        for (int digits = 0; digits < 40; digits++) {
            BigDecimal shorter = exact.setScale(digits, RoundingMode.HALF_EVEN);
            if (read.apply(shorter.doubleValue()) == value) {
                return shorter.toPlainString();
            }
        }
        throw new AssertionError("no decimal reads back as " + value);
    }

    private static String plain(double number) {
        return new BigDecimal(Double.toString(number)).toPlainString();
    }

    private void word(String key, String value) {
        line(key + " = \"" + Toml.tomlEscape(value) + "\"");
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
