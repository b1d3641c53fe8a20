package hafthold.mechanics;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Supplier;

/** Prints accuracy by refinement and time to solve; a program to run by hand, not a test. */
final class SectionTimings {
    private SectionTimings() {}

    public static void main(String[] arguments) {
        OrthotropicElasticity wood = Handles.WALNUT_FLAT;
        Layup layup = Handles.layup(wood);
        BondedSection section = BondedSection.acrossWidth(13e-3, layup);
        for (int refinement = 0; refinement < 4; refinement++) {
            SectionInfluence influence = section.influence(OutOfSection.HELD, refinement);
            SectionGrid grid = SectionGrading.grid(section, refinement);
            System.out.printf(
                    Locale.ROOT,
                    "%d: %d x %d, %d unknowns, half bandwidth %d%n",
                    refinement,
                    grid.columns(),
                    grid.rows(),
                    grid.unknowns(),
                    grid.halfBandwidth());
            double[] swelling = influence.evenScaleStrain(0, 0.010, 0.008);
            for (SectionOutput output : SectionOutput.values()) {
                System.out.printf(Locale.ROOT, " %s %.7g", output, influence.value(output, swelling));
            }
            System.out.println();
        }
        SectionLayer liner = new SectionLayer(1e-3, OrthotropicElasticity.isotropic(5e9, 0.3));
        BondedSection lined =
                BondedSection.acrossWidth(13e-3, new Layup(layup.tang(), layup.glue(), List.of(liner), layup.scale()));
        BondedSection along = BondedSection.alongLength(55e-3, layup);
        LekhnitskiiHole hole = LekhnitskiiHole.throughScale(wood);
        for (int round = 0; round < 3; round++) {
            time("across the width", section::influence);
            time("with a liner", lined::influence);
            time("along the length", along::influence);
            time("pin touching all round", () -> hole.pinContact(0, 0.01).largestTensionAcrossPascals());
            time("pin touching partly", () -> hole.pinContact(-0.008, 0.002).largestTensionAcrossPascals());
        }
    }

    private static void time(String what, Supplier<?> work) {
        double[] millis = new double[200];
        for (int i = 0; i < millis.length; i++) {
            long start = System.nanoTime();
            Objects.requireNonNull(work.get());
            millis[i] = (System.nanoTime() - start) * 1e-6;
        }
        Arrays.sort(millis);
        System.out.printf(
                Locale.ROOT, "%s: median %.2f ms, best %.2f ms%n", what, millis[millis.length / 2], millis[0]);
    }
}
