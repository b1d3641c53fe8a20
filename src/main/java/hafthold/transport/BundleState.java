package hafthold.transport;

import java.util.Arrays;

/** Moisture of a bundle at one instant, entry (point, lane), with what follows from it and is costly to work out anew. */
final class BundleState {
    final double[][] moisture;
    /** psi, carried along by series; see {@link #refresh}. */
    final double[][] potential;

    final SurfaceActivity activity;
    /** Least moisture over the points of each lane. */
    final double[] low;
    /** Greatest. */
    final double[] high;

    BundleState(int points, int width) {
        moisture = new double[points][width];
        potential = new double[points][width];
        activity = new SurfaceActivity(width);
        low = new double[width];
        high = new double[width];
    }

    /** Works out from the moisture alone what else there is. */
    void refresh(SlabBundle bundle, int lanes, double temperatureCelsius) {
        for (int lane = 0; lane < lanes; lane++) {
            refreshLane(bundle, lane, temperatureCelsius);
        }
    }

    void refreshLane(SlabBundle bundle, int lane, double temperatureCelsius) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < moisture.length; i++) {
            double m = moisture[i][lane];
            potential[i][lane] = bundle.potential(lane, m);
            least = Math.min(least, m);
            greatest = Math.max(greatest, m);
        }
        low[lane] = least;
        high[lane] = greatest;
        bundle.evaluateActivity(lane, moisture[moisture.length - 1][lane], temperatureCelsius, Double.NaN, activity);
    }

    void copy(int lane, BundleState other, int otherLane) {
        for (int i = 0; i < moisture.length; i++) {
            moisture[i][lane] = other.moisture[i][otherLane];
            potential[i][lane] = other.potential[i][otherLane];
        }
        activity.copy(lane, other.activity, otherLane);
        low[lane] = other.low[otherLane];
        high[lane] = other.high[otherLane];
    }

    /** Moisture of one lane from the tang to the air. */
    double[] profile(int lane) {
        double[] profile = new double[moisture.length];
        Arrays.setAll(profile, i -> moisture[i][lane]);
        return profile;
    }

    void setProfile(int lane, double[] profile) {
        for (int i = 0; i < profile.length; i++) {
            moisture[i][lane] = profile[i];
        }
    }
}
