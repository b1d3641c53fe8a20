package hafthold.cli;

import hafthold.air.Place;
import hafthold.material.HailwoodHorrobinIsotherm;
import hafthold.report.Listing;
import hafthold.report.MonthWord;
import hafthold.table.PlaceTable;
import java.io.PrintWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists places, or shows one with its monthly normals. */
@Command(
        name = "places",
        mixinStandardHelpOptions = true,
        description = "Lists the places that a knife can go to, or shows one with its monthly normals.")
final class PlacesCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Mixin
    private TableOptions tables;

    @Mixin
    private ListingOutput output;

    @Parameters(arity = "0..1", paramLabel = "PLACE", description = "id of one place")
    private String id;

    @Override
    public void run() {
        PlaceTable places = PlaceTable.read(tables.open());
        PrintWriter out = spec.commandLine().getOut();
        if (id == null) {
            output.print(out, list(places));
        } else {
            Place place = places.find(id);
            if (output.isText()) {
                out.println(place.fullName() + ": " + place.climateGroup() + " (" + place.koppen() + "), "
                        + Math.round(place.elevationMetres()) + " m");
                out.println("Temperature: " + place.temperatureSourceKey() + ". Humidity: "
                        + place.humiditySourceKey() + ", "
                        + place.humidityKind().word().replace('_', ' ') + ", within "
                        + Math.round(place.humidityUncertaintyPoints()) + " points."
                        + (place.note().isEmpty() ? "" : " " + place.note()));
                out.println();
            }
            output.print(out, months(place));
        }
    }

    private static Listing list(PlaceTable places) {
        Listing.Builder listing = Listing.of(
                "places", "id", "name", "country", "climate", "koppen", "latitude_deg", "longitude_deg", "evidence");
        for (Place place : places.all()) {
            listing.row(
                    place.id(),
                    place.name(),
                    place.country(),
                    place.climateGroup(),
                    place.koppen(),
                    place.latitudeDegrees(),
                    place.longitudeDegrees(),
                    place.humidityKind().word());
        }
        return listing.build();
    }

    private static Listing months(Place place) {
        Listing.Builder listing = Listing.of(
                "months",
                "month",
                "temperature_mean_c",
                "temperature_max_c",
                "temperature_min_c",
                "rh_percent",
                "wood_mc_percent");
        HailwoodHorrobinIsotherm wood = new HailwoodHorrobinIsotherm();
        for (int month = 0; month < 12; month++) {
            double mean = place.normals().meanCelsius().get(month);
            double humidity = place.normals().relativeHumidityFraction().get(month);
            listing.row(
                    MonthWord.of(month + 1),
                    mean,
                    place.normals().meanMaximumCelsius().get(month),
                    place.normals().meanMinimumCelsius().get(month),
                    Math.round(1000 * humidity) / 10.0,
                    Math.round(1000 * wood.moistureFraction(humidity, mean)) / 10.0);
        }
        return listing.build();
    }
}
