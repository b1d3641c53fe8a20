package hafthold.mechanics;

import java.util.Arrays;
import java.util.Locale;

/** Prints accuracy by refinement and time to solve; a program to run by hand, not a test. */
final class SectionTimings {
    private SectionTimings() {}

    public static void main(String[] arguments) {
        OrthotropicElasticity wood =
                new OrthotropicElasticity(12700e6, 710e6, 1350e6, 790e6, 1080e6, 270e6, 0.632, 0.495, 0.378);
        Layup layup = new Layup(
                new SectionLayer(4e-3, OrthotropicElasticity.isotropic(200e9, 0.29)),
                new SectionLayer(0.1e-3, OrthotropicElasticity.isotropic(2e9, 0.38)),
                new SectionLayer(7e-3, wood));
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
        for (int round = 0; round < 5; round++) {
            double[] millis = new double[200];
            for (int i = 0; i < millis.length; i++) {
                long start = System.nanoTime();
                section.influence();
                millis[i] = (System.nanoTime() - start) * 1e-6;
            }
            Arrays.sort(millis);
            System.out.printf(Locale.ROOT, "median %.2f ms, best %.2f ms%n", millis[100], millis[0]);
        }
    }
}
