package hafthold.air;

import hafthold.source.Message;
import hafthold.source.PublishedModel;
import java.util.Map;

/**
 * A closed unheated shed, garage or workshop: T_in = T_day + warmer + share (T_out - T_day), p_in = p_day, with 24-hour
 * means T_day and p_day of the outdoor air.
 *
 * @param swingShare part of the daily temperature swing that gets in, 0 to 1.5
 * @param warmerKelvin sun on the roof and stored warmth on the day's mean, kelvin, 0 to 5
 */
@PublishedModel(source = "setting-rules", locator = "shed", validity = "closed dry building, no heating, no wet floor")
public record Shed(double swingShare, double warmerKelvin) implements Setting {

    /** Rejects figures out of range. */
    public Shed {
        if (!(swingShare >= 0 && swingShare <= 1.5) || !(warmerKelvin >= 0 && warmerKelvin <= 5)) {
            throw new IllegalArgumentException(
                    "a shed needs a share of 0 to 1.5 and 0 to 5 K, got " + swingShare + " and " + warmerKelvin);
        }
    }

    /** Six tenths of the swing, 1 K warmer. */
    public static Shed usual() {
        return new Shed(0.6, 1);
    }

    @Override
    public String id() {
        return "shed";
    }

    @Override
    public String name() {
        return "unheated shed";
    }

    @Override
    public Message rule() {
        return Message.of(
                "rule.shed",
                Map.of(
                        "warmer", Message.number(warmerKelvin, 0),
                        "swing", Message.number(100 * swingShare, 0)));
    }

    @Override
    public Message basis() {
        return Message.of("basis.shed");
    }

    @Override
    public AirSeries inside(AirSeries outdoor) {
        Enclosure shed = new Enclosure(outdoor);
        OutdoorDays days = shed.outdoors();
        for (int i = 0; i < days.size(); i++) {
            double mean = days.meanCelsius(i);
            double celsius = mean + warmerKelvin + swingShare * (days.temperatureCelsius(i) - mean);
            shed.set(i, celsius, days.meanVapourPascals(i), 0, 1);
        }
        return shed.air();
    }
}
