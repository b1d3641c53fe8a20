package hafthold.transport;

import hafthold.air.AirSeries;
import hafthold.air.HylandWexlerSaturationPressure;
import hafthold.air.SaturationPressure;
import hafthold.material.MoistureDiffusivity;
import hafthold.material.PowerIsotherm;
import java.util.Arrays;

/** A slab in the textbook's terms: straight isotherm M = H/5, one temperature, film given by its Biot number h k/D. */
final class Sheet {
    static final double CELSIUS = 20;
    static final double DENSITY = 600;
    static final double THICKNESS = 8e-3;
    static final double DIFFUSIVITY = 4e-11;
    static final double HENRY = 0.2;
    /** h^2/D: time of Fourier number 1. */
    static final double UNIT_SECONDS = THICKNESS * THICKNESS / DIFFUSIVITY;
    /** Biot number of a film that no longer shows. */
    static final double NO_FILM = 1e7;

    static final SaturationPressure SATURATION = new HylandWexlerSaturationPressure();
    /** Deep enough to see the scheme's own error vanish; air is constant, so an hour's depth is no guide to it. */
    static final Resolution FINE = new Resolution(80, 0.01, 1e-7, 0.05, 0, 1);

    private Sheet() {}

    static Slab withFilm(double biot) {
        return of(biot, 0);
    }

    /** D rises as exp(exponent M). */
    static Slab of(double biot, double exponent) {
        double resistance = SATURATION.pascals(CELSIUS) * THICKNESS / (biot * DIFFUSIVITY * DENSITY * HENRY);
        return new Slab(
                THICKNESS,
                DENSITY,
                new PowerIsotherm(HENRY, 1),
                new MoistureDiffusivity(DIFFUSIVITY, exponent, 0, CELSIUS),
                resistance);
    }

    static AirSeries constantAir(double humidity, double stepSeconds, int samples) {
        double[] temperature = new double[samples];
        double[] humidities = new double[samples];
        Arrays.fill(temperature, CELSIUS);
        Arrays.fill(humidities, humidity);
        return new AirSeries(stepSeconds, temperature, humidities);
    }
}
