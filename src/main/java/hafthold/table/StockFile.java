package hafthold.table;

import hafthold.knife.RoomAir;
import hafthold.knife.StockBlock;
import hafthold.quantity.Mass;
import hafthold.quantity.MoistureContent;
import hafthold.source.Finding;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Blocks on the shelf as their owner wrote them down.
 *
 * @param blocks one or more, with what is noted of each by its place in the list
 * @param storage where they lie
 * @param goesTo where the knives go; empty where the file does not say
 * @param within how near to rest is near enough, of the dry mass
 * @param findings one for every default that was taken for all of them
 */
public record StockFile(
        Map<StockBlock, List<Finding>> blocks,
        Storage storage,
        Optional<StockPlace> goesTo,
        MoistureContent within,
        List<Finding> findings) {
    private static final List<String> TABLES = List.of("storage", "for", "block");

    /** Keeps its own copies, in order. */
    public StockFile {
        blocks = new LinkedHashMap<>(blocks);
        findings = List.copyOf(findings);
    }

    /**
     * Where blocks lie.
     *
     * @param air air as read there, which a box is taken to have until another is asked for
     * @param place a place whose year it has instead; empty where the air is the same all year
     * @param isChecked whether the hygrometer is known to be right
     * @param balance smallest step that the balance shows
     */
    public record Storage(RoomAir air, Optional<StockPlace> place, boolean isChecked, Mass balance) {}

    /**
     * Reads a file.
     *
     * @throws InvalidTableException at the first fault, naming file, line, key, value and what would be right
     */
    public static StockFile read(Path path, TableSet tables, MaterialLibrary library) {
        String file = path.toString();
        List<Finding> findings = new ArrayList<>();
        TomlSection whole = TomlText.parse(file, TomlText.read(path), findings);
        whole.allows(TABLES);
        StorageKeys keys = new StorageKeys(tables, findings);
        Storage storage = keys.storage(whole);
        TomlSection goal = whole.section("for");
        Optional<StockPlace> goesTo = keys.goal(whole, goal);
        MoistureContent within = keys.within(goal);
        Map<StockBlock, List<Finding>> blocks = new LinkedHashMap<>();
        int number = 0;
        for (TomlSection one : whole.oneOrMore("block")) {
            number++;
            List<Finding> own = new ArrayList<>();
            blocks.put(new BlockKeys(library, own).read(one, number), own);
        }
        if (blocks.isEmpty()) {
            throw whole.problem(
                    "block", "which block? Add a line [[block]] and below it material, length, width and thickness");
        }
        return new StockFile(blocks, storage, goesTo, within, findings);
    }

    /** A commented file that is accepted, invented. */
    public static String example() {
        return BuildFile.resource("stock.toml");
    }
}
