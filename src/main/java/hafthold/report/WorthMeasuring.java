package hafthold.report;

import hafthold.material.Axis;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.WaterUptake;
import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a workshop can measure to know a material better: the figures whose doubt moves the scale most, worst first.
 *
 * <p>The doubt of a figure is the width of its band over its value, times the strain it commands between 40 and 70 %
 * humidity or over 20 K, and counts more the weaker its evidence. Speed of water counts a quarter, since a season is
 * long (assumed weights: they order the lines, no figure rests on them).
 */
public final class WorthMeasuring {
    private static final int MOST_LINES = 3;
    private static final double LEAST_SHARE = 0.1;
    private static final double SPEED_WEIGHT = 0.25;
    private static final double DRY = 0.40;
    private static final double DAMP = 0.70;
    private static final double ROOM_CELSIUS = 20;
    private static final double WARMING_KELVIN = 20;

    /**
     * One thing to measure.
     *
     * @param doubt strain that hangs on it, weighted by its evidence
     * @param text what to do on the bench, and how well it is known now
     */
    private record Line(double doubt, String text) {}

    private WorthMeasuring() {}

    /** At most three lines; none where all of it was measured. */
    public static List<String> of(Material material) {
        List<Line> lines = new ArrayList<>();
        material.water().ifPresent(water -> ofWater(lines, material, water));
        Figure heat = material.thermalExpansionPerKelvin().get(Axis.ACROSS);
        add(
                lines,
                heat,
                heat.band(),
                heat.value() * WARMING_KELVIN,
                "measure a strip 100 mm long or more fresh from the freezer and again warm from the hand, to get its"
                        + " movement with heat",
                range(heat.band().times(1e6)) + " millionths a kelvin");
        double worst = lines.stream().mapToDouble(Line::doubt).max().orElse(0);
        return lines.stream()
                .filter(line -> line.doubt() > 0 && line.doubt() >= LEAST_SHARE * worst)
                .sorted(Comparator.comparingDouble(Line::doubt).reversed())
                .limit(MOST_LINES)
                .map(Line::text)
                .toList();
    }

    private static void ofWater(List<Line> lines, Material material, WaterUptake water) {
        double dry = water.isotherm().moistureFraction(DRY, ROOM_CELSIUS);
        double damp = water.isotherm().moistureFraction(DAMP, ROOM_CELSIUS);
        double strain = water.swelling().strain(Axis.ACROSS, dry, damp);
        shrinkage(material)
                .ifPresent(figure -> add(
                        lines,
                        figure,
                        figure.band(),
                        strain,
                        "weigh and measure a slip, as wide across as you have it, settled in dry and in damp air, to get its"
                                + " movement",
                        movement(material, figure)));
        Figure held = water.sorptionFactor();
        add(
                lines,
                held,
                held.band(),
                strain,
                "weigh a slip settled in air of known humidity, dry it until it loses no more, weigh again, to get the"
                        + " water it holds",
                percent(held.band().low() - 1) + " to " + percent(held.band().high() - 1) + " about its value");
        Figure speed = water.diffusivityReference();
        add(
                lines,
                speed,
                speed.band(),
                SPEED_WEIGHT * strain,
                "carry a sealed-edge slip from dry into damp air and weigh it daily, to get how fast water enters",
                String.format(
                        Locale.ROOT,
                        "good to a factor of %.1f",
                        Math.sqrt(speed.band().high() / speed.band().low())));
    }

    private static void add(List<Line> lines, Figure figure, Band band, double strain, String task, String known) {
        if (figure.evidence() == Evidence.MEASURED || band.value() == 0) {
            return;
        }
        double doubt = Math.abs((band.high() - band.low()) / band.value() * strain) * weight(figure.evidence());
        lines.add(new Line(doubt, task + " (now " + word(figure.evidence()) + ", " + known + ")"));
    }

    private static Optional<Figure> shrinkage(Material material) {
        return material.sheet()
                .figure(Property.SHRINKAGE, Axis.ACROSS)
                .or(() -> material.sheet().figure(Property.SWELLING_COEFFICIENT, Axis.ACROSS));
    }

    private static String movement(Material material, Figure figure) {
        return material.sheet().figure(Property.SHRINKAGE, Axis.ACROSS).isPresent()
                ? range(figure.band().times(100)) + " % across from green to dry"
                : range(figure.band()) + " % across for a point of water";
    }

    private static double weight(Evidence evidence) {
        return switch (evidence) {
            case MEASURED -> 0;
            case PUBLISHED -> 1;
            case ESTIMATED -> 1.5;
            case MEMORY -> 1.75;
            case ASSUMED, UNKNOWN -> 2;
        };
    }

    private static String word(Evidence evidence) {
        return switch (evidence) {
            case MEMORY -> "remembered";
            case UNKNOWN -> "not known";
            default -> evidence.word();
        };
    }

    private static String range(Band band) {
        return short3(band.low()) + " to " + short3(band.high());
    }

    private static String short3(double value) {
        String text = String.format(Locale.ROOT, "%.3g", value);
        return text.contains(".") && !text.contains("e")
                ? text.replaceAll("0+$", "").replaceAll("\\.$", "")
                : text;
    }

    private static String percent(double fraction) {
        return String.format(Locale.ROOT, "%+.0f %%", 100 * fraction);
    }
}
