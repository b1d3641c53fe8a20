package hafthold.cli;

import hafthold.air.AirSeries;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Knife;
import hafthold.knife.Pin;
import hafthold.knife.TangStackKnife;
import hafthold.material.Cut;
import hafthold.material.ScaleMaterial;
import hafthold.simulate.Destination;
import hafthold.simulate.HandleEngine;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;

/** What a note about one knife says of its own grounds, and what can hurt. */
final class FitFindings {
    private static final double DAMP = 0.65;

    private FitFindings() {}

    /** Everything in a knife that can hurt. */
    static List<ScaleMaterial> materials(Knife knife) {
        if (knife instanceof FullTangKnife full) {
            List<ScaleMaterial> materials = new ArrayList<>(List.of(full.scale(), full.adhesive()));
            materials.addAll(full.liners());
            materials.addAll(full.pinMetals());
            full.bolster().ifPresent(materials::add);
            materials.add(full.steel());
            return materials;
        }
        return ((TangStackKnife) knife).parts();
    }

    /**
     * Grounds of the answer, and what this knife has to mind in this place.
     *
     * @param hasEvents whether dishwashers and the like are reckoned too
     */
    static List<Finding> of(Knife knife, Destination destination, boolean hasEvents) {
        List<Finding> findings = new ArrayList<>();
        findings.add(destination.setting().finding());
        findings.add(new Finding(
                Finding.Kind.ESTIMATE,
                "limits",
                "How much may show is a workshop's judgement; no published tolerance for knives was found."));
        if (knife instanceof FullTangKnife full) {
            fullTang(full, destination, hasEvents, findings);
        } else {
            stack(findings);
        }
        return findings;
    }

    private static void fullTang(
            FullTangKnife knife, Destination destination, boolean hasEvents, List<Finding> findings) {
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
        if (knife.sides().stream()
                .flatMap(cut -> HandleEngine.partsOf(knife.scale(), cut).stream())
                .anyMatch(part -> part.cut() == Cut.BURL)) {
            findings.add(new Finding(
                    Finding.Kind.ESTIMATE,
                    "burl",
                    "It is taken to part where grain that lies across the pull does, which bears about half of the mean"
                            + " tension; no test of burl was found."));
        }
        if (!knife.liners().isEmpty()) {
            findings.add(new Finding(
                    Finding.Kind.ESTIMATE,
                    "liners",
                    "Between glue lines they are taken to drink by their edges only, evenly over their width."));
        }
        knife.bolster()
                .ifPresent(bolster -> findings.add(new Finding(
                        Finding.Kind.ESTIMATE,
                        "bolster",
                        "It is taken to widen with heat as if the tang did not hold it, the most that can show; how it is"
                                + " fixed, and what that bears, is left out.")));
        if (knife.cutLeft() != knife.cutRight()) {
            findings.add(new Finding(
                    Finding.Kind.ESTIMATE,
                    "two cuts",
                    "Each side is worked out as if the other were its twin. The bow of the whole handle is that of a strip of"
                            + " layers: a tang drilled, slotted or ground thinner than stated bends more."));
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
        waterTraps(knife, hasEvents, findings);
    }

    private static void waterTraps(FullTangKnife knife, boolean hasEvents, List<Finding> findings) {
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
                "Wash it by hand and dry it at once"
                        + (hasEvents ? "." : ": a dishwasher is hotter and wetter than any year reckoned here.")));
    }

    private static void stack(List<Finding> findings) {
        findings.add(new Finding(
                Finding.Kind.ESTIMATE,
                "stack",
                "Each part is taken to drink all round, sheets to lie flat on the tang, half of the load to ease within"
                        + " weeks (assumed)."));
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
