package hafthold.table;

import hafthold.knife.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what a workshop says of itself: a TOML file with [shop], [promise] and [price]. */
public final class WorkshopFile {
    private static final List<String> PROMISES = List.of("stays", "care", "change", "refuse", "unknown");

    private WorkshopFile() {}

    /**
     * Reads the file.
     *
     * @throws InvalidTableException at the first fault, naming file, line, key, value and what would be right
     */
    public static Workshop read(Path file) {
        TomlSection all = TomlText.parse(file.toString(), TomlText.read(file), new ArrayList<>());
        all.allows(List.of("shop", "promise", "price"));
        TomlSection shop = all.section("shop");
        shop.allows(List.of("name", "contact"));
        Optional<String> name = Optional.of(shop.required("name", shop.text("name"), "the name of the shop in quotes"));
        TomlSection promise = all.section("promise");
        promise.allows(PROMISES);
        return new Workshop(name, shop.text("contact"), texts(promise, PROMISES), prices(all.section("price")));
    }

    private static Map<String, String> prices(TomlSection section) {
        return texts(section, section.keys());
    }

    private static Map<String, String> texts(TomlSection section, List<String> keys) {
        Map<String, String> texts = new LinkedHashMap<>();
        keys.forEach(key -> section.text(key).ifPresent(text -> texts.put(key, text)));
        return texts;
    }

    /** A commented example, invented. */
    public static String example() {
        return BuildFile.resource("workshop.toml");
    }
}
