package hafthold.simulate;

import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.material.Material;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What an answer rests on and may be in doubt. */
enum Input {
    /** Humidity of the place all year round. */
    PLACE_HUMIDITY(Reach.ORDER, "place_humidity"),
    /** A driest season drier or damper than the normal one. */
    DRY_SEASON(Reach.ORDER, "weather"),
    /** A dampest season drier or damper than the normal one. */
    DAMP_SEASON(Reach.ORDER, "weather"),
    /** What a household does to its air. */
    HABITS(Reach.ORDER, "habits"),
    /** Error of the hygrometer, or of the meter where the stock was measured. */
    HYGROMETER(Reach.ORDER, "hygrometer"),
    /** Share of a stress that is left after weeks. */
    RELAXATION(Reach.ORDER, "relaxation"),
    /** Movement with moisture in the tangential direction or the width of a sheet. */
    SWELLING_ACROSS(Reach.WATER, "swelling"),
    /** Movement with moisture in the radial direction or the thickness of a sheet. */
    SWELLING_THROUGH(Reach.WATER, "swelling"),
    /** Movement with moisture along the grain or the length of a sheet. */
    SWELLING_ALONG(Reach.WATER, "swelling"),
    /** Water held at rest. */
    SORPTION(Reach.WATER, "sorption"),
    /** Speed of water. */
    DIFFUSIVITY(Reach.WATER, "diffusivity"),
    /** How far the stock has settled to the air of the workshop. */
    STOCK(Reach.WATER, "stock"),
    /** Movement with heat. */
    THERMAL_EXPANSION(Reach.MATERIAL, "thermal_expansion"),
    /** Rings turned away from the stated cut; of a burl, how its grain lies. */
    CUT(Reach.GRAIN, "cut"),
    /** Grain running out of the handle's direction. */
    RUN_OUT(Reach.GRAIN, "run_out"),
    /** Stiffness. */
    STIFFNESS(Reach.MATERIAL, "stiffness"),
    /** Strength. */
    STRENGTH(Reach.MATERIAL, "strength"),
    /** Temperature of softening. */
    SOFTENING(Reach.MATERIAL, "softening");

    /** What an input belongs to. */
    private enum Reach {
        ORDER,
        MATERIAL,
        WATER,
        GRAIN
    }

    /** Inputs of an order: one draw for whatever the knife is made of. */
    static final List<Input> OF_ORDER =
            Arrays.stream(values()).filter(input -> input.reach == Reach.ORDER).toList();

    /** Inputs of a material: drawn for each by itself. */
    static final List<Input> OF_MATERIAL =
            Arrays.stream(values()).filter(input -> input.reach != Reach.ORDER).toList();

    private static final Map<Input, Integer> PLACES = new EnumMap<>(Input.class);

    static {
        for (List<Input> inputs : List.of(OF_ORDER, OF_MATERIAL)) {
            inputs.forEach(input -> PLACES.put(input, inputs.indexOf(input)));
        }
    }

    private final Reach reach;
    private final String word;

    Input(Reach reach, String word) {
        this.reach = reach;
        this.word = word;
    }

    boolean isOfOrder() {
        return reach == Reach.ORDER;
    }

    /** Its number in {@link #OF_ORDER} or in {@link #OF_MATERIAL}. */
    int place() {
        return PLACES.get(this);
    }

    /** The word used in answers; inputs that one measurement settles share it. */
    String word() {
        return word;
    }

    /** False where it plays no part for a material in a cut. */
    boolean matters(Material material, Cut cut) {
        return switch (reach) {
            case MATERIAL -> true;
            case ORDER -> this == RELAXATION || material.water().isPresent();
            case WATER -> material.water().isPresent();
            case GRAIN -> hasGrain(material) && cut != Cut.NONE && (this == CUT || cut != Cut.BURL);
        };
    }

    /** True for what has grown in rings. */
    static boolean hasGrain(Material material) {
        return material.family() == Family.WOOD || material.family() == Family.TREATED_WOOD;
    }
}
