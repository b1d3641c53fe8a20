package hafthold.report;

import hafthold.decide.StackFit;
import hafthold.knife.StackTang;
import hafthold.knife.TangStackBuild;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.simulate.StackYear;
import hafthold.simulate.StackYear.PartYear;
import hafthold.source.Evidence;
import java.util.ArrayList;
import java.util.List;

/**
 * What a stack on a tang does, row by row.
 *
 * @param style language and units
 * @param fit the knife and its year
 */
record StackWords(BenchStyle style, StackFit fit) {
    private static final double SHOWS = 0.005e-3;

    void write(FitRows rows) {
        StackYear year = fit.year();
        TangStackBuild build = fit.knife().build();
        rows.add("made", style.say("row.made"), style.say("stack.made", "state", FitText.state(build.made(), style)));
        rows.add("handle", style.say("row.handle"), handle(build));
        rows.add("stack", style.say("row.stack"), stack(year));
        year.parts().forEach(part -> rows.more(part(part)));
        if (year.parts().stream().anyMatch(StackWords::isEstimate)) {
            rows.more(style.say("stack.estimate"));
        }
        rows.add("doubt", style.say("row.doubt"), new DriverWords(style).row(fit, year.drivers(), true));
    }

    private String handle(TangStackBuild build) {
        StackTang tang = build.tang();
        return style.say(
                "stack.handle",
                "length",
                style.size(build.length()),
                "tang",
                style.named("tang", tang.kind().word()),
                "width",
                style.size(tang.width()),
                "thickness",
                style.size(tang.thickness()),
                "nut",
                tang.preload().newtons() == 0
                        ? style.say("pin.snug")
                        : Math.round(tang.preload().newtons()) + " N");
    }

    private String stack(StackYear year) {
        List<PartYear> parts = year.parts();
        List<String> text = new ArrayList<>();
        if (year.gap().value() > SHOWS) {
            text.add(style.say("stack.loose", "size", sized(year.gap()), "month", style.month(year.gapMonth())));
            if (parts.size() > 1) {
                text.add(style.say(
                        "stack.joint",
                        "one",
                        parts.get(year.firstJoint()).name(),
                        "other",
                        parts.get(year.firstJoint() + 1).name()));
            }
        } else {
            text.add(style.say("stack.tight"));
        }
        if (year.growth().value() > SHOWS) {
            text.add(style.say(
                    "stack.grows",
                    "size",
                    sized(year.growth()),
                    "load",
                    Long.toString(Math.round(year.load().value()))));
        }
        if (year.set().value() > SHOWS) {
            text.add(style.say("stack.set", "size", sized(year.set())));
        }
        return style.joined("semicolon", text);
    }

    private String part(PartYear part) {
        List<String> movement = new ArrayList<>();
        if (part.shrinks().value() > SHOWS) {
            movement.add(style.say("part.shrinks", "size", sized(part.shrinks())));
        }
        if (part.grows().value() > SHOWS) {
            movement.add(style.say("part.grows", "size", sized(part.grows())));
        }
        return style.say(
                isEstimate(part) ? "part.estimate" : "part",
                "length",
                style.size(new Length(part.length())),
                "name",
                part.name(),
                "movement",
                movement.isEmpty() ? style.say("part.stays") : style.joined("comma", movement));
    }

    private static boolean isEstimate(PartYear part) {
        return part.evidence().compareTo(Evidence.PUBLISHED) > 0;
    }

    private String sized(Band band) {
        return new BenchLength(band).sized(style);
    }
}
