package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.transport.MoistureHistory;
import java.util.List;
import java.util.Optional;

/** One scale hour by hour: air, moisture, strain since finish and the step at the edge, glued and unglued. */
public final class ScaleTrace {
    private static final double HOUR_SECONDS = 3600;

    private final Conditions conditions;
    private final List<PartMotion> parts;
    private final Optional<MoistureHistory> moisture;
    private final Optional<double[]> glued;

    /**
     * A trace of a scale.
     *
     * @param parts motions of all parts, all at their values
     * @param moisture moisture of the leading part; empty where it takes up none
     * @param glued offset of the glued edge hour by hour, m; empty where it is not glued
     */
    ScaleTrace(
            Conditions conditions,
            List<PartMotion> parts,
            Optional<MoistureHistory> moisture,
            Optional<double[]> glued) {
        this.conditions = conditions;
        this.parts = parts;
        this.moisture = moisture;
        this.glued = glued;
    }

    /** Whether the scale is glued; if not, both offsets are the same. */
    public boolean isGlued() {
        return glued.isPresent();
    }

    /** Number of samples in an hour: one, unless the air was asked for at more. */
    public int samplesAnHour() {
        return (int) Math.round(HOUR_SECONDS / air().stepSeconds());
    }

    /** Number of hours, or of the parts of hours that the air was asked for at. */
    public int hours() {
        return air().size();
    }

    /**
     * One hour, or part of one.
     *
     * @param hour of the year, or since final sanding where there are stays, from 0
     */
    public Hour hour(int hour) {
        double warmer =
                air().temperatureCelsius(hour) - conditions.madeTemperature().celsius();
        double width = 0;
        double thickness = 0;
        double length = 0;
        for (PartMotion part : parts) {
            double wetter = part.moistureChange(hour);
            width += part.share() * part.width().strain(wetter, warmer);
            thickness += part.share() * part.thickness().strain(wetter, warmer);
            length += part.share() * part.length().strain(wetter, warmer);
        }
        double offset = conditions.handle().tangWidth().metres()
                / 2
                * (width - conditions.tangExpansion().value() * warmer);
        return new Hour(
                air().temperatureCelsius(hour),
                air().relativeHumidityFraction(hour),
                moisture.map(history -> history.meanFraction(hour)).orElse(0.0),
                moisture.map(history -> history.surfaceFraction(hour)).orElse(0.0),
                moisture.map(history -> history.backFraction(hour)).orElse(0.0),
                width,
                thickness,
                length,
                glued.map(edge -> edge[hour]).orElse(offset),
                offset);
    }

    private AirSeries air() {
        return conditions.destination().air();
    }

    /**
     * State of a scale at one hour.
     *
     * @param temperatureCelsius air about the knife
     * @param relativeHumidityFraction air about the knife
     * @param meanFraction mean moisture content, kg/kg
     * @param surfaceFraction moisture content at the open face, kg/kg
     * @param backFraction moisture content at the tang, kg/kg
     * @param widthStrain strain across the tang since finish
     * @param thicknessStrain strain away from the tang since finish
     * @param lengthStrain strain along the handle since finish
     * @param edgeOffsetMetres edge of the glued scale at mid-thickness against the tang, a side, positive proud
     * @param freeOffsetMetres edge of the unglued scale against the tang, a side, positive proud
     */
    public record Hour(
            double temperatureCelsius,
            double relativeHumidityFraction,
            double meanFraction,
            double surfaceFraction,
            double backFraction,
            double widthStrain,
            double thicknessStrain,
            double lengthStrain,
            double edgeOffsetMetres,
            double freeOffsetMetres) {}
}
