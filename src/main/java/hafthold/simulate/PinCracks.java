package hafthold.simulate;

import hafthold.material.Cut;
import hafthold.material.Material;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** {@link PinCrack} of each material as it lies, worked out once, whatever the place. */
final class PinCracks {
    private final Map<Cut, Map<String, Double>> byCut = new EnumMap<>(Cut.class);

    PinCracks() {
        for (Cut cut : Cut.values()) {
            byCut.put(cut, new ConcurrentHashMap<>());
        }
    }

    /** Use of strength per squeeze strain on a pin; 0 where it is not known. */
    double perStrain(Material material, Cut cut) {
        return byCut.get(cut)
                .computeIfAbsent(
                        material.id(), id -> PinCrack.perStrain(material, cut).orElse(0.0));
    }
}
