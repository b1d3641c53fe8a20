package hafthold.cli;

import java.io.PrintWriter;
import java.util.function.IntConsumer;

/** Says every few seconds, less often as time goes on, how far the places are and how long the rest will take. */
final class ProgressLine implements IntConsumer {
    private static final long QUIET_NANOS = 2_000_000_000L;
    private static final double NANOS_A_SECOND = 1e9;

    private final PrintWriter err;
    private final int places;
    private final long start = System.nanoTime();
    private long last = start;

    ProgressLine(PrintWriter err, int places) {
        this.err = err;
        this.places = places;
    }

    @Override
    public void accept(int done) {
        long now = System.nanoTime();
        if (now - last < Math.max(QUIET_NANOS, (now - start) / 10) && done < places) {
            return;
        }
        last = now;
        double taken = (now - start) / NANOS_A_SECOND;
        err.println("atlas: " + done + " of " + places + " places"
                + (done < places
                        ? ", about " + duration(taken / done * (places - done)) + " left"
                        : " in " + duration(taken)));
        err.flush();
    }

    private static String duration(double seconds) {
        long whole = Math.max(1, Math.round(seconds));
        return whole < 120 ? whole + " s" : Math.round(whole / 60.0) + " min";
    }
}
