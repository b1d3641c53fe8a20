package hafthold.table;

import hafthold.knife.Order;
import hafthold.source.Message;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The table {@code [knife]}: whom it is for. */
final class OrderKeys {
    static final String TABLE = "knife";
    static final String BUILD = "build";
    private static final String CLIMATE = "climate";
    private static final List<String> KEYS = List.of("name", BUILD, "place", "setting", CLIMATE, "work", "kitchen");

    private OrderKeys() {}

    /** Reads the table; a climate file is sought from the folder of the build file. */
    static Order read(TomlSection knife, Path folder) {
        knife.allows(KEYS);
        Optional<Boolean> kitchen = knife.flag("kitchen");
        Optional<Path> climate = knife.text(CLIMATE).map(text -> resolve(knife, folder, text));
        String workClass = knife.or("work", UsualBuild.WORK_CLASS);
        boolean inKitchen = knife.or("kitchen", kitchen, false, Message.of("taken.not-washed"));
        return knife.build(() -> new Order(
                knife.text("name"), knife.text("place"), knife.text("setting"), climate, workClass, inKitchen));
    }

    private static Path resolve(TomlSection knife, Path folder, String text) {
        try {
            return folder.resolve(text);
        } catch (InvalidPathException e) {
            throw knife.fault(CLIMATE, "the name of a file");
        }
    }
}
