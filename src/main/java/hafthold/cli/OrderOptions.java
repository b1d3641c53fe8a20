package hafthold.cli;

import hafthold.air.Place;
import hafthold.air.Setting;
import hafthold.material.Axis;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.Conditions;
import hafthold.simulate.Destination;
import hafthold.source.Figure;
import hafthold.source.Finding;
import hafthold.table.FinishTable;
import hafthold.table.HourlyFile;
import hafthold.table.MaterialLibrary;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import hafthold.table.UnknownIdException;
import hafthold.table.UsualBuild;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where a handle goes, how it is made and how large it is. */
final class OrderOptions {
    static final String USUAL_STEEL = "steel-stainless-martensitic";
    static final String USUAL_PIN = "brass-free-cutting";

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

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
            defaultValue = "heated-home",
            description = "where it lives there: outdoors, heated-home, uncooled-home, air-conditioned, kitchen, shed,"
                    + " boat, vehicle, sheath, display-case (default: ${DEFAULT-VALUE})")
    private String setting;

    @Option(
            names = "--made-rh",
            paramLabel = "HUMIDITY",
            defaultValue = "50 %",
            description = "humidity the scales have settled to at final sanding (default: ${DEFAULT-VALUE})")
    private RelativeHumidity madeHumidity;

    @Option(
            names = "--made-temp",
            paramLabel = "TEMPERATURE",
            defaultValue = "20 C",
            description = "temperature at final sanding (default: ${DEFAULT-VALUE})")
    private Temperature madeTemperature;

    @Option(
            names = "--finish",
            paramLabel = "FINISH",
            defaultValue = "bare",
            description = "finish; 'hafthold materials --finishes' lists ids (default: ${DEFAULT-VALUE})")
    private String finish;

    @Mixin
    private HandleOptions handle;

    @Mixin
    private AirOptions air;

    /** The order in the engine's words. */
    Conditions conditions(TableSet tables, MaterialLibrary library) {
        return conditions(tables, library, destination(tables));
    }

    private Conditions conditions(TableSet tables, MaterialLibrary library, Destination destination) {
        return new Conditions(
                handle.handle(),
                madeTemperature,
                madeHumidity,
                FinishTable.read(tables).find(finish),
                destination,
                expansion(library, USUAL_STEEL),
                expansion(library, USUAL_PIN),
                Optional.of(UsualBuild.bond(library, handle.tangThickness())));
    }

    /** The same order for many places: those named, the air of a file, or all places of the tables. */
    Tour tour(TableSet tables, MaterialLibrary library) {
        if (climate != null) {
            Conditions order = conditions(tables, library);
            return new Tour(
                    order,
                    List.of(Tour.siteOf(order.destination())),
                    Map.of(order.destination().id(), order::destination));
        }
        if (isGiven("--stays")) {
            throw new WrongUsageException("an atlas is of places, each in the same setting; --stays goes with compare");
        }
        PlaceTable table = PlaceTable.read(tables);
        List<Place> places = place == null
                ? table.all()
                : Arrays.stream(place.split(",", -1))
                        .map(id -> table.find(id.strip()))
                        .distinct()
                        .toList();
        Setting lives = air.fitted(settingOf(setting));
        Conditions order = conditions(tables, library, Destination.of(places.get(0), lives));
        Map<String, Supplier<Destination>> destinations = new HashMap<>();
        places.forEach(stop -> destinations.put(stop.id(), () -> Destination.of(stop, lives)));
        return new Tour(order, places.stream().map(Tour::siteOf).toList(), destinations);
    }

    /** What was taken for want of a word, and what was done to recorded air; asked for after the conditions. */
    List<Finding> defaults() {
        List<Finding> defaults = new ArrayList<>(air.findings());
        for (String name : List.of(
                "--setting",
                "--made-rh",
                "--made-temp",
                "--finish",
                "--width",
                "--thickness",
                "--length",
                "--tang",
                "--pin",
                "--clearance")) {
            if (!isGiven(name) && !(name.equals("--setting") && isGiven("--stays"))) {
                defaults.add(new Finding(
                        Finding.Kind.DEFAULT,
                        name,
                        "Not given, so " + spec.findOption(name).defaultValue() + " was taken."));
            }
        }
        defaults.add(new Finding(
                Finding.Kind.DEFAULT,
                "metals",
                "Tang of martensitic stainless steel and brass pins; between common metals heat makes less than 0.01 mm of"
                        + " difference on a handle."));
        defaults.add(new Finding(
                Finding.Kind.DEFAULT,
                "glue",
                "Two-part epoxy, 0.1 mm thick, over the whole tang, bonded in the air of final sanding, and it is taken to"
                        + " hold."));
        return defaults;
    }

    /** The table of stays, where one was named. */
    Optional<Path> stays() {
        return air.stays();
    }

    /** Whether the air comes from a logger, which does not know what its owner calls the place. */
    boolean isOfLogger() {
        return climate != null && !climate.toString().toLowerCase(Locale.ROOT).endsWith(".epw");
    }

    private boolean isGiven(String name) {
        return spec.commandLine().getParseResult().hasMatchedOption(name);
    }

    /** What was done to recorded air; asked for after the conditions. */
    List<Finding> notes() {
        return air.findings();
    }

    private Destination destination(TableSet tables) {
        Optional<Destination> through =
                air.stays(PlaceTable.read(tables), place != null || climate != null || isGiven("--setting"));
        if (through.isPresent()) {
            return through.get();
        }
        Setting lives = air.fitted(settingOf(setting));
        if (place != null && climate != null) {
            throw new WrongUsageException("--place and --climate exclude each other: name one of them");
        }
        if (climate != null) {
            HourlyFile file = air.recorded(climate);
            if (!isGiven("--setting")) {
                air.takenAsOutdoors(climate);
            }
            return Destination.recorded(file.name(), file.name(), lives, file.air(), AirOptions.FILE_HUMIDITY_DOUBT);
        }
        if (place == null) {
            throw new WrongUsageException(
                    "where does the knife go? Name a --place (hafthold places lists them), a --climate file or a"
                            + " table of --stays");
        }
        if (place.contains(",")) {
            throw new WrongUsageException("one place at a time here, got '" + place
                    + "'; 'hafthold atlas' takes several," + " a table of --stays takes them one after another");
        }
        return Destination.of(PlaceTable.read(tables).find(place), lives);
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

    private static Figure expansion(MaterialLibrary library, String metal) {
        return library.plain(metal).thermalExpansionPerKelvin().get(Axis.ALONG);
    }
}
