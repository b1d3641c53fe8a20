package hafthold.knife;

import hafthold.quantity.Length;
import java.util.List;

/** Holds the holes of a full-tang handle against its outline and against each other. */
final class PinLayout {
    private static final int MOST_PINS = 20;

    private final Tang tang;
    private final Scales scales;

    PinLayout(Tang tang, Scales scales) {
        this.tang = tang;
        this.scales = scales;
    }

    /** Rejects the first pin that does not fit. */
    void check(List<Pin> pins) {
        if (pins.size() > MOST_PINS) {
            throw new UnfitBuildException(
                    "pins[" + (MOST_PINS + 1) + "]", pins.size() + " pins", "at most " + MOST_PINS + " pins");
        }
        for (int i = 0; i < pins.size(); i++) {
            String key = "pins[" + (i + 1) + "]";
            checkPlace(key, pins.get(i));
            checkEdge(key, pins.get(i));
            for (int j = 0; j < i; j++) {
                checkNeighbour(key, pins.get(i), j + 1, pins.get(j));
            }
        }
    }

    private void checkPlace(String key, Pin pin) {
        double length = scales.length().metres();
        double radius = pin.hole().metres() / 2;
        if (pin.along().metres() > length) {
            throw new UnfitBuildException(
                    key + ".along",
                    SizeRange.millimetres(pin.along()),
                    "a place on the scale, which is " + SizeRange.millimetres(scales.length()) + " long");
        }
        if (pin.along().metres() < radius || pin.along().metres() > length - radius) {
            throw new UnfitBuildException(
                    key + ".along",
                    SizeRange.millimetres(pin.along()),
                    "from " + SizeRange.millimetres(new Length(radius)) + " to "
                            + SizeRange.millimetres(new Length(length - radius)) + ", so that the hole of "
                            + SizeRange.millimetres(pin.hole()) + " does not run over the end of the scale");
        }
        double half = scales.widthAt(pin.along()).metres() / 2;
        if (Math.abs(pin.up().metres()) > half) {
            throw new UnfitBuildException(
                    key + ".up",
                    SizeRange.millimetres(pin.up()),
                    "a place on the scale, which reaches " + SizeRange.millimetres(new Length(half))
                            + " either side of the centre line here");
        }
    }

    private void checkEdge(String key, Pin pin) {
        double radius = pin.hole().metres() / 2;
        double up = Math.abs(pin.up().metres());
        double room = Math.min(
                tang.width().metres() / 2 - up, distanceToEdge(pin.along().metres(), up));
        if (room < radius) {
            throw new UnfitBuildException(
                    key + ".up",
                    SizeRange.millimetres(pin.up()),
                    "a place nearer to the centre line or a smaller hole: the hole of "
                            + SizeRange.millimetres(pin.hole()) + " runs over the edge by "
                            + SizeRange.millimetres(new Length(radius - room)));
        }
    }

    private void checkNeighbour(String key, Pin pin, int other, Pin neighbour) {
        double apart = Math.hypot(
                pin.along().metres() - neighbour.along().metres(),
                pin.up().metres() - neighbour.up().metres());
        double least = (pin.hole().metres() + neighbour.hole().metres()) / 2;
        if (apart < least) {
            throw new UnfitBuildException(
                    key + ".along",
                    SizeRange.millimetres(pin.along()),
                    "at least " + SizeRange.millimetres(new Length(least)) + " from the middle of pins[" + other
                            + "]: the holes overlap");
        }
    }

    /** Distance from a point inside the outline to the nearest stretch of its upper edge, metres. */
    private double distanceToEdge(double x, double y) {
        List<Scales.Station> profile = scales.profile();
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < profile.size(); i++) {
            Scales.Station from = profile.get(i);
            boolean last = i == profile.size() - 1;
            double toX =
                    last ? scales.length().metres() : profile.get(i + 1).at().metres();
            double toWidth = (last ? from : profile.get(i + 1)).width().metres();
            double dx = toX - from.at().metres();
            double dy = (toWidth - from.width().metres()) / 2;
            double px = x - from.at().metres();
            double py = y - from.width().metres() / 2;
            double square = dx * dx + dy * dy;
            double share = square > 0 ? Math.min(1, Math.max(0, (px * dx + py * dy) / square)) : 0;
            nearest = Math.min(nearest, Math.hypot(px - share * dx, py - share * dy));
        }
        return nearest;
    }
}
