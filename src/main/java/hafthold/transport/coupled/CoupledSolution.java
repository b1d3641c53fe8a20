package hafthold.transport.coupled;

import java.util.ArrayList;
import java.util.List;

/** Solves heat and moisture of a slab: second order in space, third in time with steps chosen by local error. */
public final class CoupledSolution {
    private CoupledSolution() {}

    /**
     * Leads a slab from a profile at time zero through its surroundings.
     *
     * @param slab what it is made of and borders on
     * @param start profile at time zero; its grid is the one solved on
     * @param accuracy local error allowed in a time step
     * @param seconds times to take profiles at, rising, the first above zero
     * @return one profile a time and the books
     * @throws IllegalArgumentException when the times do not rise
     * @throws ArithmeticException when no step is short enough, which sound material functions never cause
     */
    public static CoupledHistory through(CoupledSlab slab, CoupledProfile start, Accuracy accuracy, double... seconds) {
        return record(run(slab, start, accuracy), start, seconds, 0);
    }

    /** In equal steps, so many from each time asked for to the next, without error control: for finding orders. */
    static CoupledHistory evenly(CoupledSlab slab, CoupledProfile start, int steps, double... seconds) {
        return record(run(slab, start, new Accuracy(1, 1)), start, seconds, steps);
    }

    private static CoupledRun run(CoupledSlab slab, CoupledProfile start, Accuracy accuracy) {
        return new CoupledRun(slab, start.grid(), accuracy, start.water(), start.temperature());
    }

    private static CoupledHistory record(CoupledRun run, CoupledProfile start, double[] seconds, int evenSteps) {
        double water = run.waterHeld();
        double heat = run.heatHeld();
        double[] w = new double[start.grid().size()];
        double[] t = new double[w.length];
        List<Double> times = new ArrayList<>();
        List<CoupledProfile> profiles = new ArrayList<>();
        double before = 0;
        for (double time : seconds) {
            if (!(time > before)) {
                throw new IllegalArgumentException(
                        "times must rise from zero, got " + time + " s after " + before + " s");
            }
            if (evenSteps > 0) {
                run.passEvenly(time, evenSteps);
            } else {
                run.passTo(time);
            }
            run.read(w, t);
            times.add(time);
            profiles.add(new CoupledProfile(start.grid(), w, t));
            before = time;
        }
        double waterMissing = run.waterHeld() - water - run.waterIn();
        double heatMissing = run.heatHeld() - heat - run.heatIn() - run.heatWithWater();
        return new CoupledHistory(
                times,
                profiles,
                run.waterIn(),
                run.heatIn(),
                share(waterMissing, Math.abs(run.waterHeld()) + run.grossWater()),
                share(heatMissing, Math.abs(run.heatHeld()) + run.grossHeat()),
                run.steps());
    }

    private static double share(double missing, double handled) {
        return handled == 0 ? 0 : Math.abs(missing) / handled;
    }
}
