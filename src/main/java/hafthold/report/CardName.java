package hafthold.report;

import hafthold.material.Family;
import hafthold.simulate.ScaleChoice;
import java.util.regex.Pattern;

/**
 * The names that a customer knows materials by.
 *
 * @param wording language of the card
 */
record CardName(Wording wording) {
    private static final Pattern BRACKETS = Pattern.compile("\\s*\\([^)]*\\)");

    /** Name a customer knows it by: the language's own, or that of the tables without what stands in brackets. */
    String of(ScaleChoice scale) {
        String id = scale.id();
        String own = "material." + id;
        String name;
        if (wording.has(own)) {
            name = wording.say(own);
        } else if (scale.family() == Family.TREATED_WOOD && id.contains("+")) {
            String treatment = "treatment." + id.substring(id.indexOf('+') + 1);
            String wood = plain(scale.name().split(",", -1)[0]);
            name = wording.say(wording.has(treatment) ? treatment : "treatment", "wood", wood);
        } else {
            name = plain(scale.name());
        }
        String cut = "cut." + scale.cut().word();
        return wording.has(cut) ? wording.say(cut, "material", name) : name;
    }

    private static String plain(String name) {
        return BRACKETS.matcher(name).replaceAll("");
    }
}
