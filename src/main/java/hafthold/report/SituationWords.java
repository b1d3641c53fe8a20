package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.knife.Handle;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;

/**
 * The circumstances of an answer in words.
 *
 * @param style language and units
 */
record SituationWords(BenchStyle style) {

    /** Where the knife lives. */
    String lives(Comparison comparison) {
        return lives(comparison.settingId(), comparison.settingRule());
    }

    /** Likewise, of a setting and its rule. */
    String lives(String setting, String rule) {
        return style.say("situation.lives", "setting", style.named("setting", setting), "rule", rule);
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
