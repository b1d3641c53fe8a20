package hafthold.simulate;

import java.util.List;

/** What has lasted for weeks before an event has eased by the time it begins; the event itself has not. */
final class EasedBefore {
    private EasedBefore() {}

    /**
     * Takes off, in place, what has eased by the hour in which each window begins.
     *
     * @param about one number a sample of the windows, one window after the other
     * @param whole the same quantity hour by hour
     * @param left what is left of {@code whole} when lasting stress has eased, hour by hour
     * @param windows in the order of {@code about}
     */
    static void takeOff(double[] about, double[] whole, double[] left, List<EventWindow> windows) {
        int at = 0;
        for (EventWindow window : windows) {
            int hour = (int) (window.startSeconds() / EventClock.HOUR);
            double gone = whole[hour] - left[hour];
            for (int i = 0; i < window.samples().size(); i++) {
                about[at] -= gone;
                at++;
            }
        }
    }
}
