package hafthold.transport.coupled;

/**
 * A material as heat and moisture see it. Water may move as vapour, as liquid and by diffusion along its content at
 * once; name {@code NONE} for what it does not do.
 *
 * @param storage water held at rest
 * @param vapour flow down vapour pressure
 * @param liquid flow towards suction
 * @param diffusivity flow down water content
 * @param conductivity flow of heat
 * @param capacity heat held
 */
public record PorousMaterial(
        MoistureStorage storage,
        VapourPermeability vapour,
        LiquidConductivity liquid,
        WaterDiffusivity diffusivity,
        HeatConductivity conductivity,
        HeatCapacity capacity) {}
