package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.knife.Handle;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;

/** The circumstances of a comparison in words. */
final class SituationWords {
    private SituationWords() {}

    /** Where the knife lives. */
    static String lives(Comparison comparison) {
        return lives(comparison.settingId(), comparison.settingRule());
    }

    /** Likewise, of a setting and its rule. */
    static String lives(String setting, String rule) {
        return setting.replace('-', ' ') + ". " + rule;
    }

    /** Workshop air and finish. */
    static String made(Comparison comparison) {
        return made(comparison.madeTemperature(), comparison.madeHumidity(), comparison.finishName());
    }

    /** Likewise, of their figures. */
    static String made(Temperature temperature, RelativeHumidity humidity, String finishName) {
        return AnswerWords.plain(temperature.celsius()) + " °C and " + AnswerWords.plain(humidity.percent())
                + " % humidity; finish: " + finishName;
    }

    /** Sizes of the handle. */
    static String handle(Handle handle, LengthUnits units) {
        return "full tang, " + ComparisonText.dimension(handle.length(), units) + " long and "
                + ComparisonText.dimension(handle.tangWidth(), units) + " wide; scales "
                + ComparisonText.dimension(handle.scaleThickness(), units) + " thick; pins "
                + ComparisonText.dimension(handle.pinDiameter(), units) + ", "
                + ComparisonText.dimension(handle.pinSpacing(), units) + " apart, "
                + (handle.openClearance().metres() == 0
                        ? "no open clearance"
                        : ComparisonText.dimension(handle.openClearance(), units) + " open clearance");
    }

    /** What the steps mean, and whether the scale was taken as glued. */
    static String steps(Comparison comparison) {
        boolean anyBonded = comparison.ranked().stream().anyMatch(answer -> EdgeStep.isBonded(answer.year()));
        return "a side, the year's worst. Shy: scale below the steel. Proud: scale above the steel. "
                + (anyBonded
                        ? "Taken half way up the thickness of the glued scale."
                        : "The scale is taken as unglued; glued to the tang it shows less.")
                + comparison.ranked().stream()
                        .map(answer -> answer.likelihood().samples())
                        .filter(samples -> samples > 0)
                        .findFirst()
                        .map(samples -> " Ranges hold the middle 80 % of " + samples + " samples.")
                        .orElse("");
    }
}
