package hafthold.mechanics;

import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;

/**
 * Wood that swells between things that do not yield, gives way, and stays smaller when it dries back.
 *
 * <p>A standard linear solid with a yield stress, in strains (stress over short-term modulus): the wood is squeezed by x
 * = free strain - set; a share s of its stress relaxes with time t as dq/dt = (x - q) / t, stress = x - s q; stress
 * above the yield strain goes into set. Once the stress is gone a gap opens: set + s q - free strain. The delayed part s
 * q recovers slowly, the set does not.
 *
 * <p>A deliberately plain model with assumed figures; wood creeps more while its moisture changes, which is not told apart here.
 *
 * @param yieldStrain stress at yield over short-term modulus, positive
 * @param relaxingShare s, 0 to below 1
 * @param relaxationSeconds t, positive
 */
public record BlockedSwelling(double yieldStrain, double relaxingShare, double relaxationSeconds) {

    /** Yield strain of wood squeezed across the grain. */
    public static final Figure YIELD_STRAIN_ACROSS = new Figure(
            new Band(0.004, 0.006, 0.010),
            Evidence.ASSUMED,
            "workshop-judgement",
            "wood gives way across the grain at 0.4 to 1 % strain");

    /** Share of a held stress that relaxes. */
    public static final Figure RELAXING_SHARE =
            new Figure(new Band(0, 0.5, 0.75), Evidence.ASSUMED, "workshop-judgement", "half of a held stress relaxes");

    private static final double THREE_WEEKS = 21 * 86400.0;

    /** Checks the three numbers. */
    public BlockedSwelling {
        if (!(yieldStrain > 0) || !(relaxingShare >= 0 && relaxingShare < 1) || !(relaxationSeconds > 0)) {
            throw new IllegalArgumentException(
                    "expected a positive yield strain, a relaxing share from 0 to below 1 and"
                            + " a positive time, got " + yieldStrain + ", " + relaxingShare + ", " + relaxationSeconds
                            + " s");
        }
    }

    /** Wood across the grain, with the assumed figures above and a relaxation time of three weeks, assumed too. */
    public static BlockedSwelling acrossGrain() {
        return new BlockedSwelling(YIELD_STRAIN_ACROSS.value(), RELAXING_SHARE.value(), THREE_WEEKS);
    }

    /**
     * The state after a while at a free strain.
     *
     * @param before state at the start; {@link State#UNUSED} for a fresh fit
     * @param freeStrain what the wood would have grown since it was fitted, at the end of the while
     * @param seconds length of the while, not negative; the free strain is taken as constant over it
     */
    public State after(State before, double freeStrain, double seconds) {
        if (!(seconds >= 0)) {
            throw new IllegalArgumentException("time must not be negative, got " + seconds + " s");
        }
        double delayed = before.delayedStrain();
        double set = before.set() + Math.max(0, freeStrain - before.set() - relaxingShare * delayed - yieldStrain);
        double squeeze = freeStrain - set;
        if (squeeze > relaxingShare * delayed) {
            delayed += (squeeze - delayed) * -Math.expm1(-seconds / relaxationSeconds);
        } else {
            delayed *= Math.exp(-(1 - relaxingShare) * seconds / relaxationSeconds);
        }
        double elastic = freeStrain - set - relaxingShare * delayed;
        return new State(set, delayed, Math.max(0, elastic), Math.max(0, -elastic));
    }

    /**
     * Where a blocked part stands.
     *
     * @param set lasting loss of size, as a strain
     * @param delayedStrain strain of the relaxing share
     * @param stressStrain stress over short-term modulus, not negative
     * @param gapStrain gap over size, not negative
     */
    public record State(double set, double delayedStrain, double stressStrain, double gapStrain) {
        /** Fitted just now. */
        public static final State UNUSED = new State(0, 0, 0, 0);
    }
}
