package hafthold.transport;

import hafthold.air.AirSeries;

/** Plain means of a series of air: enough to choose a grid and a first guess by. */
record MeanAir(double temperatureCelsius, double humidity) {

    static MeanAir of(AirSeries air) {
        double temperature = 0;
        double humidity = 0;
        for (int i = 0; i < air.size(); i++) {
            temperature += air.temperatureCelsius(i);
            humidity += air.relativeHumidityFraction(i);
        }
        return new MeanAir(temperature / air.size(), humidity / air.size());
    }
}
