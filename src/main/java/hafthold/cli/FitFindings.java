package hafthold.cli;

import hafthold.air.AirSeries;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Knife;
import hafthold.knife.Pin;
import hafthold.knife.TangStackKnife;
import hafthold.material.Material;
import hafthold.simulate.Destination;
import hafthold.source.Finding;
import hafthold.table.CautionTable;
import java.util.ArrayList;
import java.util.List;

/** What a note about one knife says of its own grounds, and what can hurt. */
final class FitFindings {
    private static final double DAMP = 0.65;

    private FitFindings() {}

    /** Grounds and cautions for a knife. */
    static List<Finding> of(Knife knife, Destination destination, CautionTable cautions) {
        List<Finding> findings = new ArrayList<>();
        findings.add(destination.setting().finding());
        findings.add(new Finding(
                Finding.Kind.ESTIMATE,
                "limits",
                "How much may show is a workshop's judgement; no published tolerance for knives was found."));
        if (knife instanceof FullTangKnife full) {
            fullTang(full, destination, cautions, findings);
        } else {
            stack((TangStackKnife) knife, cautions, findings);
        }
        findings.addAll(cautions.general());
        return findings;
    }

    private static void fullTang(
            FullTangKnife knife, Destination destination, CautionTable cautions, List<Finding> findings) {
        findings.add(new Finding(
                Finding.Kind.ESTIMATE,
                "stress",
                "Half of a stress that lasts a month is taken to be gone (assumed; the range covers none to three"
                        + " quarters); quick changes are taken in full. Glue stress is the mean over the last 2 mm, from"
                        + " the moment of glue-up; steps count from sanding."));
        findings.add(new Finding(
                Finding.Kind.ESTIMATE,
                "glue in heat",
                "Its strength at room temperature is taken to fall to half at its softening point, to a fifth above"
                        + " (assumed)."));
        findings.add(new Finding(
                Finding.Kind.ESTIMATE,
                "pins",
                "Holes are taken to follow the unglued scale, pins to be rigid and without friction."));
        if (!knife.liners().isEmpty()) {
            findings.add(new Finding(
                    Finding.Kind.ESTIMATE,
                    "liners",
                    "Between glue lines they are taken to drink by their edges only, evenly over their width."));
        }
        if (knife.cutLeft() != knife.cutRight()) {
            findings.add(new Finding(
                    Finding.Kind.ESTIMATE,
                    "two cuts",
                    "Each side is worked out as if the other were its twin; a bow of the whole handle is left out."));
        }
        if (damp(destination)
                && knife.liners().stream().anyMatch(liner -> liner.water().isPresent())) {
            findings.add(new Finding(
                    Finding.Kind.CAUTION,
                    "liners",
                    "In damp air fibre liners swell before the scales do: seal their edges or leave them out."));
        }
        if (damp(destination)) {
            findings.add(new Finding(
                    Finding.Kind.CAUTION,
                    "rust",
                    "This air is damp enough to rust steel under a scale: seal the tang before you glue."));
        }
        waterTraps(knife, findings);
        findings.addAll(cautions.about(knife.scale()));
        findings.addAll(cautions.about(knife.adhesive()));
        knife.liners().stream().distinct().forEach(liner -> findings.addAll(cautions.about(liner)));
    }

    private static void waterTraps(FullTangKnife knife, List<Finding> findings) {
        if (!knife.build().order().kitchen()) {
            return;
        }
        List<Pin> pins = knife.build().pins();
        if (pins.stream().anyMatch(pin -> pin.fill() == Pin.Fill.OPEN || pin.kind() == Pin.Kind.TUBE)) {
            findings.add(new Finding(
                    Finding.Kind.CAUTION,
                    "water traps",
                    "Open rings and tubes hold water and food on a knife that is washed: fill them."));
        }
        findings.add(new Finding(
                Finding.Kind.CAUTION,
                "washing",
                "Wash it by hand and dry it at once: a dishwasher is hotter and wetter than any year reckoned here."));
    }

    private static void stack(TangStackKnife knife, CautionTable cautions, List<Finding> findings) {
        findings.add(new Finding(
                Finding.Kind.ESTIMATE,
                "stack",
                "Each part is taken to drink all round, sheets to lie flat on the tang, half of the load to ease within"
                        + " weeks (assumed)."));
        knife.parts().stream()
                .distinct()
                .filter(part -> part instanceof Material)
                .forEach(part -> cautions.about(part).stream()
                        .filter(caution -> !findings.contains(caution))
                        .forEach(findings::add));
    }

    private static boolean damp(Destination destination) {
        AirSeries air = destination.air();
        double mean = 0;
        for (int hour = 0; hour < air.size(); hour++) {
            mean += air.relativeHumidityFraction(hour) / air.size();
        }
        return mean > DAMP;
    }
}
