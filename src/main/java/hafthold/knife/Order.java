package hafthold.knife;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Whom a knife is for and what it must stand.
 *
 * @param name what the job is called; empty where it has no name
 * @param placeId id of {@code places.csv}; empty where the file names none
 * @param settingId where the knife lives there, such as heated-home; empty where the file names none
 * @param climateFile weather or logger file that stands in for the place; never together with a place
 * @param workClass class of work, a name of {@code limits.csv}
 * @param kitchen true for a knife that is washed and meets food
 */
public record Order(
        Optional<String> name,
        Optional<String> placeId,
        Optional<String> settingId,
        Optional<Path> climateFile,
        String workClass,
        boolean kitchen) {

    /** Rejects two answers to where the knife goes. */
    public Order {
        if (placeId.isPresent() && climateFile.isPresent()) {
            throw new UnfitBuildException(
                    "climate", climateFile.get().toString(), "either place or climate, not both: each says what air");
        }
        requireWord("work", workClass);
        name.ifPresent(text -> requireWord("name", text));
        placeId.ifPresent(id -> requireWord("place", id));
        settingId.ifPresent(id -> requireWord("setting", id));
    }

    /** Rejects an empty id. */
    static void requireWord(String key, String text) {
        if (text.isBlank()) {
            throw new UnfitBuildException(key, text, "a word; leave the line out to say nothing");
        }
    }
}
