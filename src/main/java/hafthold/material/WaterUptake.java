package hafthold.material;

import hafthold.source.Figure;

/**
 * How a material takes up water and what it does with it.
 *
 * @param dryDensity dry mass per volume, kg/m3
 * @param isotherm water held at rest, sorption factor already applied
 * @param sorptionFactor band of moisture content about the isotherm, relative (value 1 unless the material states one)
 * @param diffusivity through the scale, at the value of {@code diffusivityReference}
 * @param diffusivityReference D0 with its range, m2/s
 * @param alongRatio diffusivity along the grain or lengthwise of the sheet over that through it
 * @param acrossRatio diffusivity in the tangential direction or crosswise of the sheet over that through it
 * @param swelling free movement with moisture
 */
public record WaterUptake(
        Figure dryDensity,
        SorptionIsotherm isotherm,
        Figure sorptionFactor,
        MoistureDiffusivity diffusivity,
        Figure diffusivityReference,
        Figure alongRatio,
        Figure acrossRatio,
        Swelling swelling) {}
