package hafthold.transport;

import hafthold.material.MoistureDiffusivity;
import java.util.ArrayList;
import java.util.List;

/** The different ways in which the diffusivities of some slabs rise with temperature, each once. */
final class TemperatureLaws {
    private final List<MoistureDiffusivity> laws = new ArrayList<>();

    static TemperatureLaws of(List<Slab> slabs) {
        TemperatureLaws laws = new TemperatureLaws();
        for (Slab slab : slabs) {
            if (laws.indexOf(slab) < 0) {
                laws.laws.add(slab.diffusivity());
            }
        }
        return laws;
    }

    int size() {
        return laws.size();
    }

    /** Which law a slab follows, or -1. */
    int indexOf(Slab slab) {
        MoistureDiffusivity wanted = slab.diffusivity();
        for (int i = 0; i < laws.size(); i++) {
            MoistureDiffusivity law = laws.get(i);
            if (law.activationJoulesPerMole() == wanted.activationJoulesPerMole()
                    && law.referenceCelsius() == wanted.referenceCelsius()) {
                return i;
            }
        }
        return -1;
    }

    /** How much faster than at its reference temperature. */
    double speed(int law, double temperatureCelsius) {
        return laws.get(law).temperatureFactor(temperatureCelsius);
    }
}
