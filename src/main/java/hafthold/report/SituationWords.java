package hafthold.report;

import hafthold.air.AirSeries;
import hafthold.decide.Comparison;
import hafthold.decide.Comparison.DayOfAir;
import hafthold.knife.Handle;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.Destination;
import hafthold.source.Message;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The circumstances of an answer in words.
 *
 * @param style language and units
 */
record SituationWords(BenchStyle style) {
    private static final double HUNDRED = 100;
    private static final int DAYS = 365;

    /** Where the knife lives. */
    String lives(Comparison comparison) {
        List<DayOfAir> days = comparison.dailyIndoors();
        return lives(
                comparison.settingId(),
                comparison.settingRule(),
                days.stream().map(DayOfAir::temperatureCelsius).toList(),
                days.stream().map(DayOfAir::relativeHumidityFraction).toList());
    }

    /** Likewise, of a destination. */
    String lives(Destination destination) {
        AirSeries air = destination.repeatingYear();
        return lives(
                destination.setting().id(),
                destination.lives(),
                IntStream.range(0, air.size()).mapToObj(air::temperatureCelsius).toList(),
                IntStream.range(0, air.size())
                        .mapToObj(air::relativeHumidityFraction)
                        .toList());
    }

    /** The air first, from the mean of its mildest month to that of its other end; the rule it follows from after. */
    private String lives(String setting, Message rule, List<Double> celsius, List<Double> humidity) {
        if (celsius.size() < DAYS) {
            return lives(setting, rule);
        }
        return style.say(
                "situation.lives.air",
                "setting",
                style.named("setting", setting),
                "temperature",
                range(MonthlyMeans.of(celsius), 1),
                "humidity",
                range(MonthlyMeans.of(humidity), HUNDRED),
                "rule",
                style.tell(rule));
    }

    private String range(MonthlyMeans months, double scale) {
        String low = style.plain(Math.rint(scale * months.of(months.lowestMonth())));
        String high = style.plain(Math.rint(scale * months.of(months.highestMonth())));
        return low.equals(high) ? low : style.say("from-to", "from", low, "to", high);
    }

    /** Likewise, of a setting and its rule. */
    String lives(String setting, Message rule) {
        return style.say("situation.lives", "setting", style.named("setting", setting), "rule", style.tell(rule));
    }

    /** Workshop air and finish. */
    String made(Comparison comparison) {
        return made(comparison.madeTemperature(), comparison.madeHumidity(), comparison.finishName());
    }

    /** Likewise, of their figures. */
    String made(Temperature temperature, RelativeHumidity humidity, String finishName) {
        return style.say(
                "situation.made",
                "temperature",
                style.plain(temperature.celsius()),
                "humidity",
                style.plain(humidity.percent()),
                "finish",
                finishName);
    }

    /** Sizes of the handle. */
    String handle(Handle handle) {
        return style.say(
                "situation.handle",
                "length",
                style.dimension(handle.length()),
                "width",
                style.dimension(handle.tangWidth()),
                "thickness",
                style.dimension(handle.scaleThickness()),
                "pin",
                style.dimension(handle.pinDiameter()),
                "spacing",
                style.dimension(handle.pinSpacing()),
                "clearance",
                handle.openClearance().metres() == 0
                        ? style.say("situation.no-clearance")
                        : style.say("situation.clearance", "size", style.dimension(handle.openClearance())));
    }

    /** What the steps mean, and whether the scale was taken as glued. */
    String steps(Comparison comparison) {
        boolean anyBonded = comparison.ranked().stream().anyMatch(answer -> EdgeStep.isBonded(answer.year()));
        String steps = style.say("situation.steps") + " "
                + style.say(anyBonded ? "situation.steps.glued" : "situation.steps.unglued");
        return comparison.ranked().stream()
                .map(answer -> answer.likelihood().samples())
                .filter(samples -> samples > 0)
                .findFirst()
                .map(samples -> steps + " " + style.say("situation.samples", "count", Integer.toString(samples)))
                .orElse(steps);
    }
}
