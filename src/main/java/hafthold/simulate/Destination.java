package hafthold.simulate;

import hafthold.air.AirSeries;
import hafthold.air.CommonYear;
import hafthold.air.HomeHabits;
import hafthold.air.Place;
import hafthold.air.Setting;
import hafthold.air.Stay;
import hafthold.air.StayChain;
import hafthold.air.StraightAir;
import hafthold.source.Message;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where a knife goes: a year of outdoor air, and the air about the knife there.
 *
 * @param id id of the place, or name of the file its air was read from
 * @param name name for people
 * @param setting where the knife lives there
 * @param outdoors outdoor air, closed year
 * @param air air about the knife, closed year
 * @param humidityDoubtFraction how far the humidity may be off all year round, fraction of relative humidity
 * @param stays the stays that lead there; empty where the knife goes to one place and the year repeats from the start.
 *     With stays {@code air} is that of all their days, counted from final sanding, and all else that of the last
 */
public record Destination(
        String id,
        Message name,
        Setting setting,
        AirSeries outdoors,
        AirSeries air,
        double humidityDoubtFraction,
        Optional<StayChain> stays) {

    private static final double HOUR_SECONDS = 3600;

    /** A place of the tables, by its reference year. */
    public static Destination of(Place place, Setting setting) {
        return recorded(
                place.id(), place.fullName(), setting, place.referenceYear(), place.humidityUncertaintyPoints() / 100);
    }

    /**
     * The same with the air about the knife reduced to as many samples as it takes to keep its course.
     *
     * @param strayFraction how far a sample left out may lie off, see {@link StraightAir}
     */
    Destination thinned(double strayFraction) {
        if (stays.isPresent()) {
            // Air that jumps from stay to stay needs its hours.
            return this;
        }
        AirSeries kept = StraightAir.thinned(air, StraightAir.strideWithinDays(air, strayFraction));
        return new Destination(id, name, setting, outdoors, kept, humidityDoubtFraction, stays);
    }

    /** The same with other air about the knife, such as that of events. */
    Destination in(AirSeries other) {
        return new Destination(id, name, setting, outdoors, other, humidityDoubtFraction, stays);
    }

    /** A recorded outdoor year. */
    public static Destination recorded(
            String id, String name, Setting setting, AirSeries outdoors, double humidityDoubtFraction) {
        return new Destination(
                id,
                Message.verbatim(name),
                setting,
                outdoors,
                setting.inside(outdoors),
                humidityDoubtFraction,
                Optional.empty());
    }

    /** The last of several stays, and the way there. */
    public static Destination through(StayChain chain) {
        Stay last = chain.last();
        return new Destination(
                last.name(),
                name(last.name(), chain.stays().size() - 1),
                last.setting(),
                last.outdoors(),
                chain.air(0),
                last.humidityDoubtFraction(),
                Optional.of(chain));
    }

    private static Message name(String last, int before) {
        Message name = Message.verbatim(last);
        return before == 0
                ? name
                : Message.of(
                        before == 1 ? "place.after-stay" : "place.after-stays",
                        Map.of("place", name, "count", Message.number(before, 0)));
    }

    /** Where the knife lives in one sentence or two: the rule of the setting, and the stays before. */
    public Message lives() {
        return stays.map(StayChain::stays)
                .filter(all -> all.size() > 1)
                .map(all -> Message.of(
                        "rule.way",
                        Map.of(
                                "rule",
                                setting.rule(),
                                "stays",
                                Message.list(
                                        "bench.semicolon",
                                        all.stream().map(Destination::begin).toList()))))
                .orElse(setting.rule());
    }

    private static Message begin(Stay stay) {
        return Message.of(
                "rule.way.stay",
                Map.of(
                        "name", Message.verbatim(stay.name()),
                        "date", Message.verbatim(stay.from().toString())));
    }

    /** True where the air comes round again from its first sample. */
    public boolean repeatsFromStart() {
        return stays.isEmpty();
    }

    /** Air about the knife in a year that starts on 1 January, the one that repeats. */
    public AirSeries repeatingYear() {
        return stays.map(chain -> chain.last().air()).orElse(air);
    }

    /** The same with its air at more samples. */
    public Destination finer(int samples) {
        return new Destination(id, name, setting, outdoors, air.finer(samples), humidityDoubtFraction, stays);
    }

    /** Month of a sample of the air, 1 to 12. */
    int monthAt(int sample) {
        return CommonYear.monthOfHour(hourOfYear(sample));
    }

    /** Hour of the calendar year of a sample of the air, counted from 1 January. */
    int hourOfYear(int sample) {
        int hour = (int) (sample * air.stepSeconds() / HOUR_SECONDS);
        int day = hour / CommonYear.HOURS_A_DAY;
        return stays.map(chain -> chain.dayOfYear(day) * CommonYear.HOURS_A_DAY + hour % CommonYear.HOURS_A_DAY)
                .orElse(hour);
    }

    /** Of values a day over all of the air those of the year that repeats, 1 January first. */
    <T> List<T> calendarYear(List<T> days) {
        return stays.map(chain -> chain.repeatingDays().stream().map(days::get).toList())
                .orElse(days);
    }

    /** Air about the knife in a household of dry habits, at the same instants; empty where habits play no part. */
    Optional<AirSeries> drierHabits() {
        return HomeHabits.drier(setting).filter(none -> stays.isEmpty()).map(this::in);
    }

    /** Likewise of damp habits. */
    Optional<AirSeries> damperHabits() {
        return HomeHabits.damper(setting).filter(none -> stays.isEmpty()).map(this::in);
    }

    private AirSeries in(Setting other) {
        AirSeries hourly = other.inside(outdoors);
        return air.size() > hourly.size()
                ? hourly.finer(air.size() / hourly.size())
                : StraightAir.thinned(hourly, hourly.size() / air.size());
    }
}
