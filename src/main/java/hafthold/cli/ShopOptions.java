package hafthold.cli;

import hafthold.air.Place;
import hafthold.air.SeasonalSine;
import hafthold.air.Setting;
import hafthold.decide.ShopAir;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.source.Message;
import hafthold.table.HourlyFile;
import hafthold.table.PlaceTable;
import java.nio.file.Path;
import java.util.Map;
import picocli.CommandLine.Option;

/** The air of the workshop itself: two readings of a hygrometer, a place, or recorded air. */
final class ShopOptions {
    private static final Temperature USUAL_TEMPERATURE = new Temperature(20);

    @Option(
            names = "--shop-rh-january",
            paramLabel = "HUMIDITY",
            description = "humidity in your workshop in the middle of January, as your hygrometer says, such as"
                    + " \"35 %%\"; goes with --shop-rh-july, and the year runs between them as a sine")
    private RelativeHumidity january;

    @Option(names = "--shop-rh-july", paramLabel = "HUMIDITY", description = "the same in the middle of July")
    private RelativeHumidity july;

    @Option(
            names = "--shop-temp",
            paramLabel = "TEMPERATURE",
            description = "temperature of your workshop, with those two (default: 20 C)")
    private Temperature temperature;

    @Option(
            names = "--shop-place",
            paramLabel = "PLACE",
            description = "instead of readings, where your workshop is; 'hafthold places' lists ids")
    private String place;

    @Option(
            names = "--shop-climate",
            paramLabel = "FILE",
            description = "instead of readings, a year of recorded air: of a logger in the workshop, or with"
                    + " --shop-setting of the air outdoors; files as for --climate")
    private Path climate;

    @Option(
            names = "--shop-setting",
            paramLabel = "SETTING",
            description = "what the workshop is, with --shop-place or outdoor air: heated-home, shed and so on as for"
                    + " --setting (default with --shop-place: " + WhereOptions.USUAL_SETTING + ")")
    private String setting;

    /**
     * The workshop's air.
     *
     * @param where reads recorded air and keeps what is to be said of it
     */
    ShopAir air(PlaceTable places, WhereOptions where) {
        boolean isRead = january != null || july != null;
        int ways = (isRead ? 1 : 0) + (place != null ? 1 : 0) + (climate != null ? 1 : 0);
        if (ways == 0) {
            throw new WrongUsageException("in what air does your stock lie? Give two readings of your hygrometer,"
                    + " --shop-rh-january and --shop-rh-july, or a --shop-place, or a logger's --shop-climate file");
        }
        if (ways > 1) {
            throw new WrongUsageException("--shop-rh-january and -july, --shop-place and --shop-climate exclude each"
                    + " other: each says what air your workshop has");
        }
        if (!isRead && temperature != null) {
            throw new WrongUsageException("--shop-temp goes with --shop-rh-january and --shop-rh-july: a place or a"
                    + " recorded year has its own temperatures");
        }
        if (isRead) {
            return ofReadings();
        }
        return place != null ? ofPlace(places) : recorded(where);
    }

    private ShopAir ofReadings() {
        if (january == null || july == null) {
            throw new WrongUsageException("a workshop's year wants both its readings: "
                    + (january == null ? "--shop-rh-january is missing" : "--shop-rh-july is missing"));
        }
        if (setting != null) {
            throw new WrongUsageException("--shop-setting goes with --shop-place or --shop-climate: your hygrometer"
                    + " hangs in the workshop already");
        }
        double celsius = (temperature == null ? USUAL_TEMPERATURE : temperature).celsius();
        try {
            SeasonalSine sine = new SeasonalSine(celsius, january.fraction(), july.fraction());
            return new ShopAir(
                    Message.of(
                            "note.shop.readings",
                            Map.of(
                                    "january", Message.number(january.percent(), 0),
                                    "july", Message.number(july.percent(), 0),
                                    "celsius", Message.number(celsius, 1))),
                    sine.year(),
                    ShopAir.HYGROMETER_FRACTION);
        } catch (IllegalArgumentException e) {
            throw new WrongUsageException("--shop-rh-january, --shop-rh-july, --shop-temp: " + e.getMessage());
        }
    }

    private ShopAir ofPlace(PlaceTable places) {
        Place town = places.find(place);
        Setting kept = WhereOptions.settingOf(setting == null ? WhereOptions.USUAL_SETTING : setting);
        return ShopAir.in(
                kept,
                Message.of("note.shop.place", Map.of("place", Message.verbatim(town.fullName()), "rule", kept.rule())),
                town.referenceYear(),
                town.humidityUncertaintyPoints() / 100);
    }

    private ShopAir recorded(WhereOptions where) {
        HourlyFile file = where.recorded(climate);
        if (setting == null) {
            return new ShopAir(
                    Message.of("note.shop.recorded", Map.of("file", Message.verbatim(file.name()))),
                    file.air(),
                    AirOptions.FILE_HUMIDITY_DOUBT);
        }
        Setting kept = WhereOptions.settingOf(setting);
        return ShopAir.in(
                kept,
                Message.of(
                        "note.shop.recorded-outdoors",
                        Map.of("file", Message.verbatim(file.name()), "rule", kept.rule())),
                file.air(),
                AirOptions.FILE_HUMIDITY_DOUBT);
    }
}
