package hafthold.simulate;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Hybrid;
import hafthold.material.LinearSwelling;
import hafthold.material.Material;
import hafthold.material.ShrinkageSwelling;
import hafthold.material.Swelling;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The weakest figure that an answer hangs on.
 *
 * <p>A figure counts where knowing it would take away a tenth or more of the variance of the answer; where none does,
 * the one that would take most counts. Of those the weakest evidence is told, so that a figure which hardly moves the answer
 * does not colour it.
 *
 * @param evidence how well that figure is founded; unknown where nothing is known of the material
 * @param figure what it is, in a few words; empty where there is none
 * @param part name of the part of a hybrid whose figure it is; empty where there is one part only
 * @param share its part of the variance of the answer, 0 to 1
 */
public record RestsOn(Evidence evidence, Optional<Message> figure, Optional<String> part, double share) {
    private static final double LEAST_SHARE = 0.1;

    /** Nothing but a grade. */
    public static RestsOn grade(Evidence evidence) {
        return new RestsOn(evidence, Optional.empty(), Optional.empty(), 0);
    }

    /** The figure, and the part that it is of. */
    public Optional<Message> told() {
        return figure.map(what -> part.map(
                        name -> Message.of("rests-on.of-part", Map.of("figure", what, "part", Message.verbatim(name))))
                .orElse(what));
    }

    /**
     * The weakest figure behind the movement of a scale.
     *
     * @param whole evidence of the material as a whole, for one of which nothing is known
     * @param drivers inputs by their share, as {@link Drivers} finds them
     */
    static RestsOn of(Evidence whole, List<Hybrid.Part> parts, List<Driver> drivers) {
        if (whole == Evidence.UNKNOWN) {
            return new RestsOn(whole, Optional.of(Message.of("rests-on.wood-class")), Optional.empty(), 1);
        }
        List<RestsOn> figures = new ArrayList<>();
        for (Driver driver : drivers) {
            for (Hybrid.Part part : parts) {
                figureOf(driver.input(), part.material(), part.cut())
                        .map(figure -> new RestsOn(
                                figure.evidence(),
                                Optional.of(words(driver.input())),
                                Optional.of(part.material().name()).filter(name -> parts.size() > 1),
                                driver.share()))
                        .ifPresent(figures::add);
            }
        }
        Comparator<RestsOn> byShare = Comparator.comparingDouble(RestsOn::share);
        return figures.stream()
                .filter(figure -> figure.share() >= LEAST_SHARE)
                .max(Comparator.comparing(RestsOn::evidence).thenComparing(byShare))
                .or(() -> figures.stream().max(byShare))
                .orElseGet(() -> grade(whole));
    }

    private static Optional<Figure> figureOf(String input, Material material, Cut cut) {
        Axis axis = leading(cut);
        if (input.equals(Input.CUT.word()) && cut == Cut.BURL) {
            return Optional.of(BurlGrain.LIE);
        }
        if (input.equals(Input.THERMAL_EXPANSION.word())) {
            return Optional.ofNullable(material.thermalExpansionPerKelvin().get(axis));
        }
        return material.water().flatMap(water -> {
            if (input.equals(Input.SWELLING_ACROSS.word())) {
                return Optional.ofNullable(swelling(water.swelling(), axis));
            }
            if (input.equals(Input.SORPTION.word())) {
                return Optional.of(water.sorptionFactor());
            }
            return input.equals(Input.DIFFUSIVITY.word())
                    ? Optional.of(water.diffusivityReference())
                    : Optional.empty();
        });
    }

    private static Figure swelling(Swelling swelling, Axis axis) {
        if (swelling instanceof ShrinkageSwelling shrinkage) {
            return shrinkage.shrinkage().get(axis);
        }
        return ((LinearSwelling) swelling).coefficient().get(axis);
    }

    /** The principal direction that most of the width lies in. */
    private static Axis leading(Cut cut) {
        return cut.width().through() > cut.width().across() ? Axis.THROUGH : Axis.ACROSS;
    }

    private static Message words(String input) {
        if (input.equals(Input.CUT.word())) {
            return Message.of("rests-on.grain");
        }
        if (input.equals(Input.THERMAL_EXPANSION.word())) {
            return Message.of("rests-on.heat");
        }
        if (input.equals(Input.SWELLING_ACROSS.word())) {
            return Message.of("rests-on.damp");
        }
        return Message.of(input.equals(Input.SORPTION.word()) ? "rests-on.water" : "rests-on.speed");
    }
}
