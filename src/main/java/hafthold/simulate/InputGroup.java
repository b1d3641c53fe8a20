package hafthold.simulate;

import java.util.List;
import java.util.Locale;

/** Inputs by whose affair they are, as a claim shares them out. */
public enum InputGroup {
    /** How wet the wood really was at final sanding: the workshop's hygrometer, stock that had not settled. */
    FINISH,
    /** How the air really is where the knife lives: the place, the weather of the year, the habits of the home. */
    PLACE,
    /** This piece of wood against the book: how far it swells, how fast, how it lies. */
    MATERIAL;

    /** All in their order. */
    public static final List<InputGroup> ALL = List.of(values());

    /** The key in answers. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static InputGroup of(Input input) {
        return switch (input) {
            case HYGROMETER, STOCK -> FINISH;
            case PLACE_HUMIDITY, DRY_SEASON, DAMP_SEASON, HABITS -> PLACE;
            default -> MATERIAL;
        };
    }
}
