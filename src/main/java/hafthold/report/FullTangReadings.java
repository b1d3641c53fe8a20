package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.PinYear;
import hafthold.simulate.FitYear.SideYear;
import hafthold.simulate.SectionPose;
import java.util.ArrayList;
import java.util.List;

/**
 * The sentence that reads each picture of a full-tang knife.
 *
 * @param style language and units
 */
record FullTangReadings(BenchStyle style) {
    private static final double SHOWS = 0.005e-3;
    private static final double HARDLY = 0.01;
    private static final int HOURS_A_DAY = 24;

    String section(FullTangFit fit) {
        List<SideYear> sides = fit.year().sides();
        List<String> said = new ArrayList<>();
        said.add(style.say(
                "section.where",
                "size",
                style.size(new Length(2 * sides.get(0).dryPose().halfWidth()))));
        for (SideYear side : sides) {
            String edge = sides.size() == 1
                    ? style.say("section.edge")
                    : style.say(
                            "section.edge-of",
                            "side",
                            style.named("of-two", side.name()),
                            "cut",
                            style.cut(side.cut()));
            said.add(side(edge, side));
        }
        if (sides.size() > 1) {
            said.add(style.say("section.own-hours"));
        }
        return String.join(" ", said);
    }

    private String side(String edge, SideYear side) {
        SectionPose dry = side.dryPose();
        SectionPose wet = side.wetPose();
        if (Math.max(Math.abs(dry.edgeMid()), Math.abs(wet.edgeMid())) < SHOWS) {
            return style.say("section.still", "edge", BenchStyle.capital(edge));
        }
        return style.say(
                "section.moves",
                "edge",
                edge,
                "dry",
                style.dayOfHour(dry.hour()),
                "middle",
                step(dry.edgeMid()),
                "tang",
                step(dry.tangLine()),
                "outer",
                step(dry.edgeOuter()),
                "wet",
                style.dayOfHour(wet.hour()),
                "highest",
                step(wet.edgeMid()));
    }

    private String step(double metres) {
        return Paragraph.plain(new StayWords(style, false).stepOf(metres));
    }

    String edge(FitYear year) {
        boolean opens = year.days().freeEdge().stream().anyMatch(day -> Math.abs(day.value()) > SHOWS);
        String edge = new ChartReadings(style).edge(year.whole());
        return opens ? edge + " " + style.say("fit-edge.shade") : edge;
    }

    String pins(FullTangFit fit) {
        List<PinYear> pins = fit.year().pins();
        List<String> parts = new ArrayList<>();
        int tight = largest(pins.stream().map(PinYear::squeezeAcross).toList());
        int tightAlong = largest(pins.stream().map(PinYear::squeezeAlong).toList());
        boolean along = pins.get(tightAlong).squeezeAlong().value()
                > pins.get(tight).squeezeAcross().value();
        Band squeeze =
                along ? pins.get(tightAlong).squeezeAlong() : pins.get(tight).squeezeAcross();
        if (squeeze.value() > SHOWS) {
            parts.add(style.say(
                    along ? "pins.closes-along" : "pins.closes-across",
                    "number",
                    Integer.toString((along ? tightAlong : tight) + 1),
                    "size",
                    length(squeeze)));
        }
        Band gap = fit.year().whole().pins().gap();
        if (gap.value() > SHOWS) {
            parts.add(style.say("pins.widest", "size", length(gap)));
        }
        return parts.isEmpty()
                ? style.say("pins.all-snug")
                : style.say("sentence", "text", BenchStyle.capital(style.joined("semicolon", parts)));
    }

    private static int largest(List<Band> bands) {
        int largest = 0;
        for (int i = 1; i < bands.size(); i++) {
            largest = bands.get(i).value() > bands.get(largest).value() ? i : largest;
        }
        return largest;
    }

    String stress(FullTangFit fit) {
        StrengthUse worst = StrengthUse.worst(fit, style);
        boolean isKnown = StrengthUse.isScaleKnown(fit);
        if (worst.worst().value() < HARDLY) {
            return isKnown
                    ? style.say("stress.none")
                    : style.say("stress.none.glue") + " " + style.say("open.not-drawn");
        }
        String hardest = style.say(
                "stress.reading",
                "part",
                worst.name(),
                "use",
                style.fixed(100 * worst.worst().value(), 0),
                "day",
                style.dayOfHour(HOURS_A_DAY * worst.worstDay()),
                "low",
                style.fixed(100 * worst.worst().low(), 0),
                "high",
                style.fixed(100 * worst.worst().high(), 0));
        return isKnown ? hardest : hardest + " " + style.say("open.not-drawn");
    }

    private String length(Band band) {
        return new BenchLength(band).hundredths(style);
    }
}
