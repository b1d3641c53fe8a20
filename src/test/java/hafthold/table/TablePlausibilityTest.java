package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.ScaleMaterial;
import hafthold.material.WaterUptake;
import hafthold.source.Figure;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Figures that no material of a family can have are slips of the pen. The limits are wide ones of common knowledge (no
 * source): they find a wrong unit or a shifted decimal, not a wrong figure.
 */
class TablePlausibilityTest {
    private static final MaterialLibrary LIBRARY = MaterialLibrary.read(TableSet.builtIn());

    /** Dry mass per volume, kg/m3. */
    private static final Map<Family, double[]> DENSITY = Map.of(
            Family.WOOD, new double[] {250, 1150},
            Family.TREATED_WOOD, new double[] {250, 1150},
            Family.LAMINATE, new double[] {1000, 2100},
            Family.POLYMER, new double[] {850, 2000},
            Family.HARD_TISSUE, new double[] {500, 3000},
            Family.LINER, new double[] {700, 1500});

    /** Strain from 40 to 70 % humidity across the grain. */
    private static final Map<Family, double[]> STRAIN = Map.of(
            Family.WOOD, new double[] {0.003, 0.03},
            Family.TREATED_WOOD, new double[] {0.0005, 0.03},
            Family.LAMINATE, new double[] {0.00001, 0.01},
            Family.POLYMER, new double[] {0, 0.008},
            Family.HARD_TISSUE, new double[] {0.0001, 0.025},
            Family.LINER, new double[] {0.002, 0.03});

    /** Linear expansion in any direction, 1/K. */
    private static final Map<Family, double[]> EXPANSION = Map.of(
            Family.WOOD, new double[] {2e-6, 70e-6},
            Family.TREATED_WOOD, new double[] {2e-6, 70e-6},
            Family.LAMINATE, new double[] {-1e-6, 120e-6},
            Family.POLYMER, new double[] {15e-6, 250e-6},
            Family.HARD_TISSUE, new double[] {2e-6, 100e-6},
            Family.MINERAL, new double[] {2e-6, 30e-6},
            Family.METAL, new double[] {7e-6, 30e-6},
            Family.LINER, new double[] {5e-6, 150e-6});

    /** Woods printed with radial shrinkage as large as tangential or larger. */
    private static final Set<String> EVEN_SHRINKERS = Set.of();

    @Test
    void densitiesAreThoseOfTheirFamily() {
        water((material, uptake) ->
                within(material, "density", uptake.dryDensity().value(), DENSITY.get(material.family())));
    }

    @Test
    void movementFromDryToDampAirIsThatOfTheFamily() {
        water((material, uptake) -> {
            double dry = uptake.isotherm().moistureFraction(0.40, 20);
            double damp = uptake.isotherm().moistureFraction(0.70, 20);
            within(material, "strain", uptake.swelling().strain(Axis.ACROSS, dry, damp), STRAIN.get(material.family()));
        });
    }

    @Test
    void waterIsHeldWithinReason() {
        water((material, uptake) -> {
            double half = uptake.isotherm().moistureFraction(0.50, 20);
            double damp = uptake.isotherm().moistureFraction(0.95, 20);
            boolean wood = material.family() == Family.WOOD;
            within(material, "water at 50 %", half, wood ? new double[] {0.05, 0.11} : new double[] {0.0002, 0.16});
            within(material, "water at 95 % over that at 50 %", damp / half, new double[] {1.5, 4});
            within(material, "diffusivity", uptake.diffusivityReference().value(), new double[] {1e-14, 3e-10});
        });
    }

    @Test
    void everythingGrowsWithHeatAsItsFamilyDoes() {
        each(material -> material.thermalExpansionPerKelvin()
                .forEach((axis, figure) -> within(
                        material, "expansion " + axis.word(), figure.value(), EXPANSION.get(material.family()))));
    }

    @Test
    void woodShrinksMoreAlongTheRingsThanAcrossThemAndLeastAlongTheGrain() {
        each(material -> {
            Optional<Figure> tangential = material.sheet().figure(Property.SHRINKAGE, Axis.ACROSS);
            if (tangential.isPresent() && material.usualCut() != Cut.BURL) {
                double radial = material.sheet()
                        .figure(Property.SHRINKAGE, Axis.THROUGH)
                        .orElseThrow()
                        .value();
                double along = material.sheet()
                        .figure(Property.SHRINKAGE, Axis.ALONG)
                        .orElseThrow()
                        .value();
                double ratio = tangential.get().value() / radial;
                boolean even = EVEN_SHRINKERS.contains(material.id());
                within(material, "tangential over radial", ratio, new double[] {even ? 0.9 : 1, 3.6});
                within(
                        material,
                        "along over tangential",
                        along / tangential.get().value(),
                        new double[] {0.005, 0.2});
            }
        });
    }

    @Test
    void woodIsStiffestAlongTheGrain() {
        each(material -> {
            if (material.family() == Family.WOOD && material.usualCut() != Cut.BURL) {
                double along = modulus(material, Axis.ALONG);
                within(material, "E_R/E_L", modulus(material, Axis.THROUGH) / along, new double[] {0.05, 0.3});
                within(material, "E_T/E_L", modulus(material, Axis.ACROSS) / along, new double[] {0.02, 0.2});
            }
        });
    }

    /** The printed rankings of radial and tangential movement of ivory conflict: one band over both. */
    @Test
    void ivoryMovesAlikeAcrossItsLength() {
        for (String id : List.of("ivory-mammoth", "ivory-mammoth-bark")) {
            Material ivory = LIBRARY.plain(id);
            Figure across = ivory.sheet()
                    .figure(Property.SWELLING_COEFFICIENT, Axis.ACROSS)
                    .orElseThrow();
            Figure through = ivory.sheet()
                    .figure(Property.SWELLING_COEFFICIENT, Axis.THROUGH)
                    .orElseThrow();
            within(ivory, "radial over tangential", across.value() / through.value(), new double[] {1, 1});
            within(
                    ivory,
                    "top of band over bottom",
                    across.band().high() / across.band().low(),
                    new double[] {4, 9});
        }
    }

    private static double modulus(Material material, Axis axis) {
        return material.sheet()
                .figure(Property.YOUNGS_MODULUS, axis)
                .orElseThrow()
                .value();
    }

    private static void within(Material material, String what, double value, double[] limits) {
        assertTrue(
                value >= limits[0] && value <= limits[1],
                material.id() + ": " + what + " " + value + " outside " + limits[0] + " to " + limits[1]);
    }

    private interface OfWater {
        void check(Material material, WaterUptake water);
    }

    private static void water(OfWater check) {
        each(material -> material.water().ifPresent(uptake -> check.check(material, uptake)));
    }

    private static void each(Consumer<Material> check) {
        assertAll(LIBRARY.rows().stream()
                .filter(row -> !row.role().equals("adhesive"))
                .flatMap(row -> parts(LIBRARY.find(row.id())))
                .distinct()
                .map(material -> () -> check.accept(material)));
    }

    private static Stream<Material> parts(ScaleMaterial material) {
        return material instanceof Hybrid hybrid
                ? hybrid.parts().stream().map(Hybrid.Part::material)
                : Stream.of((Material) material);
    }
}
