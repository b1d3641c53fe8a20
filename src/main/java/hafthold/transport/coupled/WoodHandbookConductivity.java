package hafthold.transport.coupled;

import hafthold.source.PublishedModel;

/**
 * Conductivity of wood across the grain after the Wood Handbook:
 *
 * <pre>
 * k = G (0.1941 + 0.004064 M%) + 0.01864        W/(m K), G ovendry mass over volume
 * </pre>
 *
 * <p>Fitted at 24 C for G above 0.3 and moisture below 25 %; evaluated outside too. We take G from the volume our density is
 * counted by, so that G M% = w/10 with w in kg/m3. The constants are from memory.
 *
 * @param dryDensityKilogramsPerCubicMetre 1000 G, positive
 */
@PublishedModel(
        source = "wood-handbook-2010",
        locator = "chapter 4, conductivity equation 4-7; constants from memory",
        validity = "across the grain, G above 0.3, moisture content below 25 %, 24 C")
public record WoodHandbookConductivity(double dryDensityKilogramsPerCubicMetre) implements HeatConductivity {
    private static final double WATER_DENSITY = 1000;

    /** Rejects a density that is not positive. */
    public WoodHandbookConductivity {
        if (!(dryDensityKilogramsPerCubicMetre > 0)) {
            throw new IllegalArgumentException(
                    "wood needs a positive density, got " + dryDensityKilogramsPerCubicMetre + " kg/m3");
        }
    }

    @Override
    public double wattsPerMetreKelvin(double waterKilogramsPerCubicMetre, double temperatureCelsius) {
        double g = dryDensityKilogramsPerCubicMetre / WATER_DENSITY;
        return 0.1941 * g + 0.4064 * waterKilogramsPerCubicMetre / WATER_DENSITY + 0.01864;
    }
}
