package hafthold.cli;

import hafthold.air.HeldAir;
import hafthold.air.Place;
import hafthold.air.Setting;
import hafthold.air.StayChain;
import hafthold.material.Axis;
import hafthold.quantity.Band;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.Conditions;
import hafthold.simulate.Destination;
import hafthold.source.Figure;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.table.FinishTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import hafthold.table.UsualBuild;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where a handle goes, how it is made and how large it is. */
final class OrderOptions {
    static final String USUAL_STEEL = "steel-stainless-martensitic";
    static final String USUAL_PIN = "brass-free-cutting";

    private static final String MADE_HUMIDITY = "--made-rh";
    private static final String MADE_TEMPERATURE = "--made-temp";
    private static final double METALS_DIFFER_METRES = 0.01e-3;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Mixin
    private WhereOptions where;

    @Option(
            names = MADE_HUMIDITY,
            paramLabel = "HUMIDITY",
            defaultValue = "50 %",
            description =
                    "humidity the scales have settled to at final sanding (default: ${DEFAULT-VALUE}; with --stays"
                            + " that of a first stay of held air)")
    private RelativeHumidity madeHumidity;

    @Option(
            names = MADE_TEMPERATURE,
            paramLabel = "TEMPERATURE",
            defaultValue = "20 C",
            description =
                    "temperature at final sanding (default: ${DEFAULT-VALUE}; with --stays that of a first stay of"
                            + " held air)")
    private Temperature madeTemperature;

    @Option(
            names = "--finish",
            paramLabel = "FINISH",
            defaultValue = "bare",
            description = "finish; 'hafthold materials --finishes' lists ids (default: ${DEFAULT-VALUE})")
    private String finish;

    @Mixin
    private HandleOptions handle;

    private Optional<HeldAir> shop = Optional.empty();

    /** The order in the engine's words. */
    Conditions conditions(TableSet tables, MaterialLibrary library) {
        return conditions(tables, library, destination(tables));
    }

    private Conditions conditions(TableSet tables, MaterialLibrary library, Destination destination) {
        shop = destination.stays().flatMap(OrderOptions::shop);
        return new Conditions(
                handle.handle(),
                madeTemperature(),
                madeHumidity(),
                FinishTable.read(tables).find(finish),
                destination,
                expansion(library, USUAL_STEEL),
                expansion(library, USUAL_PIN),
                Optional.of(UsualBuild.bond(library, handle.tangThickness())));
    }

    /** The air of the first of several stays, which is that of final sanding, where it is told as held. */
    private static Optional<HeldAir> shop(StayChain chain) {
        return chain.stays().size() > 1 && chain.stays().get(0).setting() instanceof HeldAir held
                ? Optional.of(held)
                : Optional.empty();
    }

    private Temperature madeTemperature() {
        return isOfShop(MADE_TEMPERATURE) ? new Temperature(shop.orElseThrow().celsius()) : madeTemperature;
    }

    private RelativeHumidity madeHumidity() {
        return isOfShop(MADE_HUMIDITY) ? new RelativeHumidity(shop.orElseThrow().humidityFraction()) : madeHumidity;
    }

    private boolean isOfShop(String name) {
        return shop.isPresent() && (name.equals(MADE_HUMIDITY) || name.equals(MADE_TEMPERATURE)) && !isGiven(name);
    }

    /** The same order for many places: those named, the air of a file, or all places of the tables. */
    Tour tour(TableSet tables, MaterialLibrary library) {
        if (where.isRecorded()) {
            Conditions order = conditions(tables, library);
            return new Tour(
                    order,
                    List.of(Tour.siteOf(order.destination())),
                    Map.of(order.destination().id(), order::destination));
        }
        if (where.stays().isPresent()) {
            throw new WrongUsageException("an atlas is of places, each in the same setting; --stays goes with compare");
        }
        List<Place> places = where.places(PlaceTable.read(tables));
        Setting lives = where.lives(OrderOptions::usualSetting);
        Conditions order = conditions(tables, library, Destination.of(places.get(0), lives));
        Map<String, Supplier<Destination>> destinations = new HashMap<>();
        places.forEach(stop -> destinations.put(stop.id(), () -> Destination.of(stop, lives)));
        return new Tour(order, places.stream().map(Tour::siteOf).toList(), destinations);
    }

    /** What was taken for want of a word, and what was done to recorded air; asked for after the conditions. */
    List<Finding> defaults() {
        List<Finding> defaults = new ArrayList<>(where.findings());
        if (isOfShop(MADE_HUMIDITY) || isOfShop(MADE_TEMPERATURE)) {
            defaults.add(new Finding(
                    Finding.Kind.DEFAULT,
                    "final sanding",
                    Message.of(
                            "note.made-in-first-stay",
                            Map.of(
                                    "celsius", Message.number(madeTemperature().celsius(), 1),
                                    "humidity", Message.number(madeHumidity().percent(), 0)))));
        }
        List<String> taken = Stream.of(
                        "--setting",
                        MADE_HUMIDITY,
                        MADE_TEMPERATURE,
                        "--finish",
                        "--width",
                        "--thickness",
                        "--length",
                        "--tang",
                        "--pin",
                        "--clearance")
                .filter(name -> !isGiven(name) && !isOfShop(name))
                .filter(name -> !(name.equals("--setting") && where.stays().isPresent()))
                .map(name -> name + " " + usual(name))
                .toList();
        if (!taken.isEmpty()) {
            defaults.add(new Finding(
                    Finding.Kind.DEFAULT,
                    "all",
                    Message.of("note.as-usual", Map.of("options", Message.verbatim(String.join(", ", taken))))));
        }
        defaults.add(new Finding(
                Finding.Kind.DEFAULT,
                "metals",
                Message.of("note.metals", Map.of("most", Message.movement(Band.exact(METALS_DIFFER_METRES))))));
        defaults.add(new Finding(
                Finding.Kind.DEFAULT,
                "glue",
                Message.of("note.glue", Map.of("thickness", Message.size(UsualBuild.BOND_LINE)))));
        return defaults;
    }

    /** Where the knife goes. */
    WhereOptions where() {
        return where;
    }

    private String usual(String name) {
        return name.equals("--setting")
                ? WhereOptions.USUAL_SETTING
                : spec.findOption(name).defaultValue();
    }

    private static Setting usualSetting() {
        return WhereOptions.settingOf(WhereOptions.USUAL_SETTING);
    }

    private boolean isGiven(String name) {
        return spec.commandLine().getParseResult().hasMatchedOption(name);
    }

    /** What was done to recorded air; asked for after the conditions. */
    List<Finding> notes() {
        return where.findings();
    }

    private Destination destination(TableSet tables) {
        return where.destination(PlaceTable.read(tables), OrderOptions::usualSetting, false)
                .orElseThrow(() -> new WrongUsageException(
                        "where does the knife go? Name a --place (hafthold places lists them), a --climate file or a"
                                + " table of --stays"));
    }

    static Figure expansion(MaterialLibrary library, String metal) {
        return library.plain(metal).thermalExpansionPerKelvin().get(Axis.ALONG);
    }
}
