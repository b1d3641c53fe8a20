package hafthold.air;

import hafthold.source.Message;
import hafthold.source.PublishedModel;
import java.util.Map;

/**
 * The unheated cabin of a boat afloat: damped swing as in a {@link Shed}, and part of the air has stood over the bilge,
 *
 * <pre>
 * p_in = (1 - s) p_day + s a es(T_week),     a = 0.98, the water activity of sea water
 * </pre>
 *
 * <p>where T_week is the outdoor mean of the last seven days. In frost the bilge is taken as undercooled water.
 *
 * @param swingShare part of the daily temperature swing that gets in, 0 to 1.5
 * @param bilgeShare part s of the air that comes from the bilge, 0 to 1
 */
@PublishedModel(source = "setting-rules", locator = "boat cabin", validity = "boat afloat, hatches closed, no heating")
public record BoatCabin(double swingShare, double bilgeShare) implements Setting {
    private static final double SEA_WATER_ACTIVITY = 0.98;
    private static final double WEEK_SECONDS = 7 * OutdoorDays.DAY_SECONDS;

    /** Rejects figures out of range. */
    public BoatCabin {
        if (!(swingShare >= 0 && swingShare <= 1.5) || !(bilgeShare >= 0 && bilgeShare <= 1)) {
            throw new IllegalArgumentException(
                    "a boat needs a swing share of 0 to 1.5 and a bilge share of 0 to 1, got " + swingShare + " and "
                            + bilgeShare);
        }
    }

    /** Half of the swing, three tenths of the air from the bilge. */
    public static BoatCabin usual() {
        return new BoatCabin(0.5, 0.3);
    }

    @Override
    public String id() {
        return "boat";
    }

    @Override
    public String name() {
        return "boat cabin";
    }

    @Override
    public Message rule() {
        return Message.of(
                "rule.boat",
                Map.of(
                        "swing", Message.number(100 * swingShare, 0),
                        "bilge", Message.number(100 * bilgeShare, 0)));
    }

    @Override
    public Message basis() {
        return Message.of("basis.boat");
    }

    @Override
    public AirSeries inside(AirSeries outdoor) {
        Enclosure cabin = new Enclosure(outdoor);
        OutdoorDays days = cabin.outdoors();
        double[] week = days.meanCelsiusOver(WEEK_SECONDS);
        for (int i = 0; i < days.size(); i++) {
            double mean = days.meanCelsius(i);
            double celsius = mean + swingShare * (days.temperatureCelsius(i) - mean);
            double bilge = SEA_WATER_ACTIVITY * Enclosure.saturationPascals(week[i]);
            cabin.set(i, celsius, (1 - bilgeShare) * days.meanVapourPascals(i) + bilgeShare * bilge, 0, 1);
        }
        return cabin.air();
    }
}
