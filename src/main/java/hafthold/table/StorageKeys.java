package hafthold.table;

import hafthold.air.HeatedHome;
import hafthold.air.Setting;
import hafthold.air.Shed;
import hafthold.knife.RoomAir;
import hafthold.quantity.Mass;
import hafthold.quantity.MoistureContent;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.table.StockFile.Storage;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tables {@code [storage]} and {@code [for]} of a stock file. */
final class StorageKeys {
    private static final String HUMIDITY = "humidity";
    private static final String TEMPERATURE = "temperature";
    private static final String PLACE = "place";
    private static final String SETTING = "setting";
    private static final String BALANCE = "balance";
    private static final String CHECKED = "checked";
    private static final String WITHIN = "within";
    private static final Mass USUAL_BALANCE = Mass.ofGrams(1);
    private static final double MOST_BALANCE_GRAMS = 50;
    private static final MoistureContent USUAL_WITHIN = new MoistureContent(0.01);
    private static final double LEAST_WITHIN = 0.002;
    private static final double MOST_WITHIN = 0.05;
    private static final double USUAL_CELSIUS = 20;
    private static final double COLDEST = -20;
    private static final double WARMEST = 50;

    private final TableSet tables;
    private final List<Finding> findings;

    /**
     * A reader.
     *
     * @param findings takes up every default that is used
     */
    StorageKeys(TableSet tables, List<Finding> findings) {
        this.tables = tables;
        this.findings = findings;
    }

    Storage storage(TomlSection whole) {
        TomlSection storage = whole.section("storage");
        storage.allows(List.of(HUMIDITY, TEMPERATURE, PLACE, SETTING, CHECKED, BALANCE));
        Optional<RelativeHumidity> humidity = storage.quantity(
                HUMIDITY,
                QuantityForm.HUMIDITY,
                air -> air.fraction() >= 0.05 && air.fraction() <= 0.95,
                "a humidity from 5 % to 95 %");
        Optional<StockPlace> place = place(storage, Shed.usual());
        if (humidity.isEmpty() && place.isEmpty()) {
            throw whole.problem(
                    "storage",
                    "where do the blocks lie? Add a line [storage] and below it humidity = \"55 %\", or place ="
                            + " \"...\" and setting = \"shed\"");
        }
        if (humidity.isPresent() && place.isPresent()) {
            throw storage.problem(HUMIDITY, "give the humidity of the storage, or a place with its year; not both");
        }
        Temperature temperature = storage.quantity(
                        TEMPERATURE,
                        QuantityForm.TEMPERATURE,
                        air -> air.celsius() >= COLDEST && air.celsius() <= WARMEST,
                        "a temperature from -20 C to 50 C")
                .orElseGet(() -> {
                    note("note.stock.temperature");
                    return new Temperature(USUAL_CELSIUS);
                });
        boolean isChecked = storage.flag(CHECKED).orElseGet(() -> {
            if (place.isEmpty()) {
                note("note.stock.unchecked");
            }
            return false;
        });
        Mass balance = storage.quantity(
                        BALANCE,
                        QuantityForm.MASS,
                        step -> step.grams() > 0 && step.grams() <= MOST_BALANCE_GRAMS,
                        "the smallest step that the balance shows, up to 50 g")
                .orElseGet(() -> {
                    note("note.stock.balance");
                    return USUAL_BALANCE;
                });
        return new Storage(
                new RoomAir(humidity.orElse(new RelativeHumidity(0.5)), temperature), place, isChecked, balance);
    }

    /** Where the knives go. */
    Optional<StockPlace> goal(TomlSection whole, TomlSection goal) {
        goal.allows(List.of(PLACE, SETTING, WITHIN));
        if (whole.has("for") && goal.has(SETTING) && !goal.has(PLACE)) {
            throw goal.problem(SETTING, "a setting needs the place it is in: add place = \"...\"");
        }
        return place(goal, HeatedHome.usual());
    }

    MoistureContent within(TomlSection goal) {
        return goal.quantity(
                        WITHIN,
                        QuantityForm.MOISTURE,
                        points -> points.fraction() >= LEAST_WITHIN && points.fraction() <= MOST_WITHIN,
                        "points of moisture content from 0.2 % to 5 %")
                .orElseGet(() -> {
                    note("note.stock.within");
                    return USUAL_WITHIN;
                });
    }

    private Optional<StockPlace> place(TomlSection section, Setting usual) {
        Optional<Setting> setting = section.text(SETTING)
                .map(id -> Setting.find(id)
                        .orElseThrow(() -> section.fault(
                                SETTING,
                                NearestWord.oneOf(
                                        id,
                                        Setting.all().stream().map(Setting::id).toList()))));
        return section.text(PLACE).map(id -> {
            Setting lives = setting.orElseGet(() -> {
                findings.add(new Finding(
                        Finding.Kind.DEFAULT,
                        "all",
                        Message.of("note.stock.setting", Map.of("setting", Message.verbatim(usual.id())))));
                return usual;
            });
            try {
                return new StockPlace(PlaceTable.read(tables).find(id), lives);
            } catch (UnknownIdException e) {
                throw section.fault(PLACE, e.expectation());
            }
        });
    }

    private void note(String key) {
        findings.add(new Finding(Finding.Kind.DEFAULT, "all", Message.of(key)));
    }
}
