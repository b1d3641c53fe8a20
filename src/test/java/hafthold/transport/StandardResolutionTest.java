package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.AirSeries;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the standard resolution promises, kept against a run that is finer in depth and time. */
class StandardResolutionTest {
    private static final AirSeries AIR = RoughYear.hourly(20260101);
    private static final int LAYERS = 8;

    static Stream<Arguments> slabs() {
        return Stream.of(
                Arguments.of("hardwood 8 mm, bare", Rack.hardwood(8e-3, 0)),
                Arguments.of("hardwood 4 mm, bare", Rack.hardwood(4e-3, 0)),
                Arguments.of("hardwood 12 mm, bare", Rack.hardwood(12e-3, 0)),
                Arguments.of("hardwood 20 mm, bare", Rack.hardwood(20e-3, 0)),
                Arguments.of("hardwood 8 mm, varnished", Rack.hardwood(8e-3, 1e9)),
                Arguments.of("cotton laminate", Rack.laminate(5e-13, 0.08, 1.3)),
                Arguments.of("glass laminate", Rack.laminate(1e-14, 0.02, 1)),
                Arguments.of("fibre liner", Rack.fibreLiner()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("slabs")
    void theStandardYearKeepsToTheConvergedOne(String name, Slab slab) {
        PeriodicMoisture standard = PeriodicMoisture.of(slab, AIR, LAYERS);
        PeriodicMoisture converged = PeriodicMoisture.of(slab, AIR, LAYERS, Sheet.SATURATION, Resolution.CONVERGED);
        assertTrue(standard.repeats() && converged.repeats(), name);
        MoistureHistory year = standard.history();
        MoistureHistory finer = converged.history();
        assertTrue(finer.steps() > 2 * year.steps(), "the converged year must have worked harder");
        for (int i = 0; i < AIR.size(); i++) {
            assertEquals(finer.meanFraction(i), year.meanFraction(i), 1e-4);
            assertEquals(finer.surfaceFraction(i), year.surfaceFraction(i), 1e-3);
            assertEquals(finer.backFraction(i), year.backFraction(i), 5e-4);
            assertEquals(finer.firstMomentFraction(i), year.firstMomentFraction(i), 1e-3);
            for (int layer = 0; layer < LAYERS; layer++) {
                assertEquals(finer.layerFraction(layer, i), year.layerFraction(layer, i), 1e-3);
            }
        }
        assertTrue(year.waterBalanceResidual() < 1e-12, "balance " + year.waterBalanceResidual());
    }
}
