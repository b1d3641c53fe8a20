package hafthold.cli;

import hafthold.air.AirSeries;
import hafthold.knife.FullTangKnife;
import hafthold.knife.Knife;
import hafthold.knife.Pin;
import hafthold.knife.TangStackKnife;
import hafthold.material.Cut;
import hafthold.material.ScaleMaterial;
import hafthold.simulate.Destination;
import hafthold.simulate.FitYear;
import hafthold.simulate.HandleEngine;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

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
        findings.add(new Finding(Finding.Kind.ESTIMATE, "limits", Message.of("note.limits")));
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
                Message.of("note.stress", Map.of("end", Message.size(FitYear.GLUE_END)))));
        findings.add(new Finding(Finding.Kind.ESTIMATE, "glue in heat", Message.of("note.glue-in-heat")));
        findings.add(new Finding(Finding.Kind.ESTIMATE, "pins", Message.of("note.pins")));
        if (knife.sides().stream()
                .flatMap(cut -> HandleEngine.partsOf(knife.scale(), cut).stream())
                .anyMatch(part -> part.cut() == Cut.BURL)) {
            findings.add(new Finding(Finding.Kind.ESTIMATE, "burl", Message.of("note.burl")));
        }
        if (!knife.liners().isEmpty()) {
            findings.add(new Finding(Finding.Kind.ESTIMATE, "liners", Message.of("note.liners")));
        }
        knife.bolster()
                .ifPresent(bolster ->
                        findings.add(new Finding(Finding.Kind.ESTIMATE, "bolster", Message.of("note.bolster"))));
        if (knife.cutLeft() != knife.cutRight()) {
            findings.add(new Finding(Finding.Kind.ESTIMATE, "two cuts", Message.of("note.two-cuts")));
        }
        if (damp(destination)
                && knife.liners().stream().anyMatch(liner -> liner.water().isPresent())) {
            findings.add(new Finding(Finding.Kind.CAUTION, "liners", Message.of("note.fibre-liners")));
        }
        if (damp(destination)) {
            findings.add(new Finding(Finding.Kind.CAUTION, "rust", Message.of("note.rust")));
        }
        waterTraps(knife, hasEvents, findings);
    }

    private static void waterTraps(FullTangKnife knife, boolean hasEvents, List<Finding> findings) {
        if (!knife.build().order().kitchen()) {
            return;
        }
        List<Pin> pins = knife.build().pins();
        if (pins.stream().anyMatch(pin -> pin.fill() == Pin.Fill.OPEN || pin.kind() == Pin.Kind.TUBE)) {
            findings.add(new Finding(Finding.Kind.CAUTION, "water traps", Message.of("note.water-traps")));
        }
        findings.add(new Finding(
                Finding.Kind.CAUTION, "washing", Message.of(hasEvents ? "note.washing.events" : "note.washing")));
    }

    private static void stack(List<Finding> findings) {
        findings.add(new Finding(Finding.Kind.ESTIMATE, "stack", Message.of("note.stack")));
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
