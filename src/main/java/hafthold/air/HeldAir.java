package hafthold.air;

import hafthold.source.Message;
import hafthold.source.PublishedModel;
import java.util.Arrays;
import java.util.Map;

/**
 * Air held as someone says: a cabinet, a parcel with a humidity pack, a workshop whose hygrometer was read.
 *
 * @param celsius temperature, degrees Celsius, -60 to 80
 * @param humidityFraction relative humidity, 0 to 1
 */
@PublishedModel(source = "setting-rules", locator = "air held as stated", validity = "as far as it is held")
public record HeldAir(double celsius, double humidityFraction) implements Setting {
    private static final double STEP_SECONDS = 3600;

    /** Rejects figures out of range. */
    public HeldAir {
        if (!(celsius >= -60 && celsius <= 80) || !(humidityFraction >= 0 && humidityFraction <= 1)) {
            throw new IllegalArgumentException(
                    "air is held at -60 to 80 C and 0 to 1, got " + celsius + " C and " + humidityFraction);
        }
    }

    /** A year of it. */
    public AirSeries year() {
        double[] temperature = new double[CommonYear.HOURS];
        double[] humidity = new double[CommonYear.HOURS];
        Arrays.fill(temperature, celsius);
        Arrays.fill(humidity, humidityFraction);
        return new AirSeries(STEP_SECONDS, temperature, humidity);
    }

    @Override
    public String id() {
        return "held";
    }

    @Override
    public String name() {
        return "held air";
    }

    @Override
    public Message rule() {
        return Message.of(
                "rule.held",
                Map.of(
                        "celsius", Message.number(celsius, 1),
                        "humidity", Message.number(100 * humidityFraction, 0)));
    }

    @Override
    public Message basis() {
        return Message.of("basis.held");
    }

    @Override
    public AirSeries inside(AirSeries outdoor) {
        double[] temperature = new double[outdoor.size()];
        double[] humidity = new double[outdoor.size()];
        Arrays.fill(temperature, celsius);
        Arrays.fill(humidity, humidityFraction);
        return new AirSeries(outdoor.stepSeconds(), temperature, humidity);
    }
}
