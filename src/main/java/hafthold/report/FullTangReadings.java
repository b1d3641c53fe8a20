package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.knife.SizeRange;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.PinYear;
import hafthold.simulate.FitYear.SideYear;
import hafthold.simulate.SectionPose;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The sentence that reads each picture of a full-tang knife. */
final class FullTangReadings {
    private static final double SHOWS = 0.005e-3;
    private static final double HARDLY = 0.01;
    private static final int HOURS_A_DAY = 24;

    private FullTangReadings() {}

    static String section(FullTangFit fit) {
        List<SideYear> sides = fit.year().sides();
        String where = "Cut across at its widest place, "
                + SizeRange.millimetres(new Length(2 * sides.get(0).dryPose().halfWidth())) + ". ";
        if (sides.size() == 1) {
            return where + side("the edge", sides.get(0)) + ".";
        }
        return where
                + sides.stream()
                        .map(side ->
                                side("the " + side.name() + " edge, " + AdviceWords.cutWord(side.cut()) + ",", side))
                        .collect(Collectors.joining(". "))
                + ". Each scale is drawn at its own worst hours.";
    }

    private static String side(String subject, SideYear side) {
        SectionPose dry = side.dryPose();
        SectionPose wet = side.wetPose();
        if (Math.max(Math.abs(dry.edgeMid()), Math.abs(wet.edgeMid())) < SHOWS) {
            return subject.substring(0, 1).toUpperCase(Locale.ROOT) + subject.substring(1)
                    + " stays where it was sanded all year: nothing to see or feel half way up the scale";
        }
        return "On " + DayWord.ofHour(dry.hour()) + " " + subject + " stands lowest: " + step(dry.edgeMid())
                + " half way up the scale, " + step(dry.tangLine()) + " by the tang, " + step(dry.edgeOuter())
                + " at the outer face; it stands highest on " + DayWord.ofHour(wet.hour()) + ", "
                + step(wet.edgeMid()) + " half way up";
    }

    private static String step(double metres) {
        if (Math.abs(metres) < SHOWS) {
            return "flush";
        }
        return String.format(Locale.ROOT, "%.2f mm %s", Math.abs(1000 * metres), metres < 0 ? "shy" : "proud");
    }

    static String edge(FitYear year) {
        boolean opens = year.days().freeEdge().stream().anyMatch(day -> Math.abs(day.value()) > SHOWS);
        return ChartReadings.edge(year.whole())
                + (opens ? " The shade runs from there to where the edge would stand if nothing held it." : "");
    }

    static String pins(FullTangFit fit) {
        List<PinYear> pins = fit.year().pins();
        List<String> parts = new ArrayList<>();
        int tight = largest(pins.stream().map(PinYear::squeezeAcross).toList());
        int tightAlong = largest(pins.stream().map(PinYear::squeezeAlong).toList());
        boolean along = pins.get(tightAlong).squeezeAlong().value()
                > pins.get(tight).squeezeAcross().value();
        Band squeeze =
                along ? pins.get(tightAlong).squeezeAlong() : pins.get(tight).squeezeAcross();
        if (squeeze.value() > SHOWS) {
            parts.add("the hole closes most on pin " + ((along ? tightAlong : tight) + 1) + ", by " + length(squeeze)
                    + (along ? " along" : " across") + " the handle");
        }
        Band gap = fit.year().whole().pins().gap();
        if (gap.value() > SHOWS) {
            parts.add("the widest ring that shows is " + length(gap));
        }
        if (parts.isEmpty()) {
            return "The pins stay snug all year: neither gap nor squeeze is worth speaking of.";
        }
        String text = String.join("; ", parts) + ".";
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static int largest(List<Band> bands) {
        int largest = 0;
        for (int i = 1; i < bands.size(); i++) {
            largest = bands.get(i).value() > bands.get(largest).value() ? i : largest;
        }
        return largest;
    }

    static String stress(FullTangFit fit) {
        return StrengthUse.isScaleKnown(fit)
                ? hardest(fit)
                : hardest(fit) + " " + Wording.english().say("bench.open.not-drawn");
    }

    private static String hardest(FullTangFit fit) {
        StrengthUse worst = StrengthUse.worst(fit);
        if (worst.worst().value() < HARDLY) {
            return StrengthUse.isScaleKnown(fit)
                    ? "Neither glue nor scale is worked to speak of."
                    : "The glue is not worked to speak of.";
        }
        return String.format(
                Locale.ROOT,
                "Hardest worked is the %s: %.0f %% of what it bears on %s (%.0f to %.0f %%, for all that is in"
                        + " doubt).",
                worst.name(),
                100 * worst.worst().value(),
                DayWord.ofHour(HOURS_A_DAY * worst.worstDay()),
                100 * worst.worst().low(),
                100 * worst.worst().high());
    }

    private static String length(Band band) {
        return new BenchLength(band).hundredths(LengthUnits.MM);
    }
}
