package hafthold.transport.coupled;

import hafthold.air.SaturationPressure;

/** What a face loses at one state and time, and how that changes with water content and temperature there. */
final class FaceFlow {
    private final Face face;
    private final PointFunction vapourPressure;
    private final PointFunction missingPressure;
    private final SaturationPressure saturation;
    private final double latentHeat;
    private boolean condensing;

    /** Water lost, kg/(m2 s). */
    double water;

    /** Heat lost, W/m2. */
    double heat;

    /** Slope of the water lost with water content. */
    double waterByWater;

    /** Slope of the water lost with temperature. */
    double waterByTemperature;

    /** Slope of the heat lost with water content. */
    double heatByWater;

    /** Slope of the heat lost with temperature. */
    double heatByTemperature;

    FaceFlow(Face face, MoistureStorage storage, SaturationPressure saturation, double latentHeat) {
        this.face = face;
        this.saturation = saturation;
        this.latentHeat = latentHeat;
        vapourPressure = (w, t) -> storage.relativeHumidityFraction(w, t) * saturation.pascals(t);
        missingPressure = (w, t) -> (storage.relativeHumidityFraction(w, t) - 1) * saturation.pascals(t);
    }

    void evaluate(double w, double t, double seconds) {
        if (face instanceof OpenFace open) {
            double airPressure = open.surroundings().vapourPascals(seconds);
            double kelvin = t - open.surroundings().temperatureCelsius(seconds);
            double resistance = open.vapourResistanceSquareMetreSecondPascalsPerKilogram();
            double arriving = (airPressure - vapourPressure.at(w, t)) / resistance;
            condensing = airPressure > saturation.pascals(t);
            water = condensing ? missingPressure.at(w, t) / resistance : -arriving;
            heat = open.heatTransferWattsPerSquareMetreKelvin() * kelvin - latentHeat * arriving;
        } else if (face instanceof WetFace wet) {
            water = missingPressure.at(w, t) / wet.resistanceSquareMetreSecondPascalsPerKilogram();
            heat = wet.heatTransferWattsPerSquareMetreKelvin() * (t - wet.waterCelsius());
        }
    }

    void evaluateSlopes(double w, double t) {
        if (face instanceof OpenFace open) {
            double resistance = open.vapourResistanceSquareMetreSecondPascalsPerKilogram();
            PointFunction held = condensing ? missingPressure : vapourPressure;
            waterByWater = held.slopeWithWater(w, t) / resistance;
            waterByTemperature = held.slopeWithTemperature(w, t) / resistance;
            heatByWater = latentHeat * vapourPressure.slopeWithWater(w, t) / resistance;
            heatByTemperature = open.heatTransferWattsPerSquareMetreKelvin()
                    + latentHeat * vapourPressure.slopeWithTemperature(w, t) / resistance;
        } else if (face instanceof WetFace wet) {
            double resistance = wet.resistanceSquareMetreSecondPascalsPerKilogram();
            waterByWater = missingPressure.slopeWithWater(w, t) / resistance;
            waterByTemperature = missingPressure.slopeWithTemperature(w, t) / resistance;
            heatByTemperature = wet.heatTransferWattsPerSquareMetreKelvin();
        }
    }

    double nextBendSeconds(double seconds) {
        return face instanceof OpenFace open ? open.surroundings().nextBendSeconds(seconds) : Double.POSITIVE_INFINITY;
    }

    /** What the face stores, J/(m2 K). */
    double heatCapacity() {
        return face instanceof SealedFace sealed ? sealed.heatCapacityJoulesPerSquareMetreKelvin() : 0;
    }
}
