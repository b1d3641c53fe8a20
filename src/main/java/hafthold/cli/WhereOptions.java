package hafthold.cli;

import hafthold.air.Place;
import hafthold.air.Setting;
import hafthold.simulate.Destination;
import hafthold.source.Finding;
import hafthold.table.HourlyFile;
import hafthold.table.HourlyReading;
import hafthold.table.PlaceTable;
import hafthold.table.UnknownIdException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where a knife goes and lives: a place, the air of a file, or several stays. */
final class WhereOptions {
    /** Where a knife is taken to live when nobody says. */
    static final String USUAL_SETTING = "heated-home";

    @Option(names = "--place", paramLabel = "PLACE", description = "where the knife goes; 'hafthold places' lists ids")
    private String place;

    @Option(
            names = "--climate",
            paramLabel = "FILE",
            description = "instead of a place, a year of recorded outdoor air: EPW, or a logger's CSV with hour or"
                    + " time, temperature_c (or _f), rh_percent")
    private Path climate;

    @Option(
            names = "--setting",
            paramLabel = "SETTING",
            description = "where it lives there: outdoors, heated-home, uncooled-home, air-conditioned, kitchen, shed,"
                    + " boat, vehicle, sheath, display-case (default: " + USUAL_SETTING
                    + "; fit: what the knife's file says)")
    private String setting;

    @Mixin
    private AirOptions air;

    /**
     * The destination that was named.
     *
     * @param usual where it lives when nobody says here
     * @param isUsualSaid whether somebody said that elsewhere
     * @return empty where neither place nor air nor stays were named
     */
    Optional<Destination> destination(PlaceTable places, Supplier<Setting> usual, boolean isUsualSaid) {
        Optional<Destination> through = air.stays(places, place != null || climate != null || setting != null);
        if (through.isPresent()) {
            return through;
        }
        if (place != null && climate != null) {
            throw new WrongUsageException("--place and --climate exclude each other: name one of them");
        }
        if (climate != null) {
            Setting lives = lives(usual);
            HourlyFile file = air.recorded(climate);
            if (setting == null && !isUsualSaid) {
                air.takenAsOutdoors(climate);
            }
            return Optional.of(recorded(file, lives));
        }
        if (place == null) {
            return Optional.empty();
        }
        if (place.contains(",")) {
            throw new WrongUsageException("one place at a time here, got '" + place
                    + "'; 'hafthold atlas' takes several," + " a table of --stays takes them one after another");
        }
        Setting lives = lives(usual);
        return Optional.of(Destination.of(places.find(place), lives));
    }

    /** The setting that was named, else the usual one, with what its home has. */
    Setting lives(Supplier<Setting> usual) {
        return air.fitted(setting == null ? usual.get() : settingOf(setting));
    }

    /** Recorded air in a setting. */
    static Destination recorded(HourlyFile file, Setting lives) {
        return Destination.recorded(file.name(), file.name(), lives, file.air(), AirOptions.FILE_HUMIDITY_DOUBT);
    }

    /** Reads recorded air other than the customer's, and keeps what is to be said of it. */
    HourlyFile recorded(Path file) {
        return air.recorded(file);
    }

    /** The places that were named, all of the table where none was. */
    List<Place> places(PlaceTable table) {
        return place == null
                ? table.all()
                : Arrays.stream(place.split(",", -1))
                        .map(id -> table.find(id.strip()))
                        .distinct()
                        .toList();
    }

    boolean isRecorded() {
        return climate != null;
    }

    /** Whether the air comes from a logger, which does not know what its owner calls the place. */
    boolean isOfLogger() {
        return climate != null && !climate.toString().toLowerCase(Locale.ROOT).endsWith(".epw");
    }

    /** The table of stays, where one was named. */
    Optional<Path> stays() {
        return air.stays();
    }

    /** How much recorded air may lack. */
    HourlyReading reading() {
        return air.reading();
    }

    /** What was taken for want of a word, and what was done to recorded air; asked for after the destination. */
    List<Finding> findings() {
        return air.findings();
    }

    /** The setting of an id. */
    static Setting settingOf(String id) {
        return Setting.find(id)
                .orElseThrow(() -> new UnknownIdException(
                        "setting",
                        id,
                        Setting.all().stream().map(Setting::id).toList(),
                        "hafthold compare --help lists them all"));
    }
}
