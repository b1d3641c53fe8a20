package hafthold.report;

import hafthold.quantity.Band;
import hafthold.simulate.EventAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one event does, cell by cell and in notes.
 *
 * @param style language and units
 */
record EventCells(BenchStyle style) {
    private static final double SOON_HOURS = 72;
    private static final double NOTHING_POINTS = 0.05;
    private static final double SHOWS = 0.005e-3;
    private static final double TENTHS_BELOW = 9.95;

    String name(EventAnswer answer) {
        return style.named("event", answer.event().id());
    }

    String use(Optional<Band> use) {
        return use.map(this::use).orElseGet(() -> style.say("unknown"));
    }

    String use(Band use) {
        return Paragraph.plain(ReasonWords.use(style, use.value()));
    }

    String degrees(EventAnswer answer) {
        return style.fixed(answer.hottestCelsius().value(), 0);
    }

    /** Moisture of the outermost skin, from its driest to its wettest. */
    String face(EventAnswer answer) {
        return percent(answer.faceDriest()) + "–" + percent(answer.faceWettest());
    }

    private String percent(double fraction) {
        return style.fixed(100 * fraction, 100 * fraction < TENTHS_BELOW ? 1 : 0);
    }

    /** Change of the mean moisture, points with their sign. */
    String change(EventAnswer answer) {
        double gain = 100 * answer.meanGain().value();
        double loss = 100 * answer.meanLoss().value();
        if (Math.max(gain, loss) < NOTHING_POINTS) {
            return style.say("events.none");
        }
        return style.signed(gain >= loss ? gain : -loss, 1);
    }

    /** The larger step, without its unit. */
    String edge(Band shy, Band proud) {
        if (Math.max(shy.value(), proud.value()) < SHOWS) {
            return style.say("flush");
        }
        return shy.value() >= proud.value()
                ? style.say("side.shy", "size", style.hundredths(shy.value()))
                : style.say("side.proud", "size", style.hundredths(proud.value()));
    }

    /** How soon nine tenths of the change are gone. */
    String back(EventAnswer answer) {
        if (!answer.isBack()) {
            return style.say("events.not-back");
        }
        if (answer.backHours() == 0) {
            return "–";
        }
        return answer.backHours() < SOON_HOURS
                ? style.say("events.hours", "count", style.fixed(answer.backHours(), 0))
                : style.say("events.days", "count", style.fixed(answer.backHours() / 24, 0));
    }

    /** What the cells do not say. */
    List<String> notes(EventAnswer answer, double meanAbove) {
        List<String> notes = new ArrayList<>();
        if (answer.endGrainMetres().value() > 0) {
            Band depth = answer.endGrainMetres().times(1000);
            notes.add(style.say(
                    "events.end-grain",
                    "event",
                    name(answer),
                    "depth",
                    style.fixed(depth.value(), 0),
                    "low",
                    style.fixed(depth.low(), 0),
                    "high",
                    style.fixed(depth.high(), 0)));
        }
        if (answer.times() > 2 && 100 * Math.abs(answer.leftBeforeLast()) >= NOTHING_POINTS) {
            notes.add(style.say(
                    "events.left",
                    "event",
                    name(answer),
                    "second",
                    style.signed(100 * answer.leftBeforeSecond(), 1),
                    "last",
                    style.signed(100 * answer.leftBeforeLast(), 1),
                    "mean",
                    style.signed(100 * meanAbove, 1)));
        }
        return notes;
    }
}
