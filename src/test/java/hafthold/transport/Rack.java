package hafthold.transport;

import hafthold.material.HailwoodHorrobinIsotherm;
import hafthold.material.MoistureDiffusivity;
import hafthold.material.PowerIsotherm;

/** Slabs like those of handles, from quick to very slow; figures are of the right size, none is a product's. */
final class Rack {
    private static final MoistureDiffusivity HARDWOOD = new MoistureDiffusivity(1.6e-11, 12, 38_500, 20);
    private static final double FILM = StillAirFilm.RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM;

    private Rack() {}

    static Slab hardwood(double thicknessMetres, double finishResistance) {
        return new Slab(thicknessMetres, 550, new HailwoodHorrobinIsotherm(), HARDWOOD, FILM + finishResistance);
    }

    static Slab laminate(double diffusivity, double saturation, double exponent) {
        return new Slab(
                6e-3,
                1350,
                new PowerIsotherm(saturation, exponent),
                new MoistureDiffusivity(diffusivity, 0, 35_000, 23),
                FILM);
    }

    static Slab fibreLiner() {
        return new Slab(
                0.8e-3, 1200, new PowerIsotherm(0.10, 1.5), new MoistureDiffusivity(2e-11, 0, 35_000, 23), FILM);
    }
}
