package hafthold.mechanics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Parts threaded on a through tang and drawn up by a nut: the sum of the parts against the steel between guard and nut.
 *
 * <p>Springs in series: what the parts want to grow beyond the steel, less what they have lost by crushing, loads the
 * stack through its own and the tang's stiffness; when the load is used up a gap opens. A part whose face carries more
 * than its crushing stress gives way at that stress and stays short.
 *
 * @param parts from the guard to the nut, at least one
 * @param tangAreaSquareMetres cross-section of the tang or its thread, m2, positive
 * @param tangModulusPascals Young's modulus of the tang, Pa, positive
 * @param preloadNewtons force the nut was drawn up with, N, not negative
 */
public record ThroughTangStack(
        List<StackSpring> parts, double tangAreaSquareMetres, double tangModulusPascals, double preloadNewtons) {

    /** Keeps its own list; checks sizes. */
    public ThroughTangStack {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a stack needs at least one part");
        }
        if (!(tangAreaSquareMetres > 0) || !(tangModulusPascals > 0) || !(preloadNewtons >= 0)) {
            throw new IllegalArgumentException("a stack needs a tang of positive area and modulus and a preload of 0 or"
                    + " more, got " + 1e6 * tangAreaSquareMetres + " mm2, " + tangModulusPascals + " Pa, "
                    + preloadNewtons + " N");
        }
    }

    /** Length of all parts together, m. */
    public double lengthMetres() {
        return parts.stream().mapToDouble(StackSpring::lengthMetres).sum();
    }

    /** The stack as drawn up. */
    public State drawnUp() {
        return respond(List.of(), Collections.nCopies(parts.size(), 0.0), 0);
    }

    /**
     * The stack after its parts have changed.
     *
     * @param before what it went through so far
     * @param partStrains free strain of each part along the tang since it was drawn up
     * @param tangStrain free strain of the tang since then
     */
    public State respond(State before, List<Double> partStrains, double tangStrain) {
        return respond(before.setsMetres(), partStrains, tangStrain);
    }

    private State respond(List<Double> setsBefore, List<Double> partStrains, double tangStrain) {
        if (partStrains.size() != parts.size()) {
            throw new IllegalArgumentException(
                    "expected " + parts.size() + " strains, one a part, got " + partStrains.size());
        }
        List<Double> contributions = new ArrayList<>();
        List<Double> sets = new ArrayList<>();
        double softness = lengthMetres() / (tangModulusPascals * tangAreaSquareMetres);
        double squeeze = 0;
        int weakest = 0;
        for (int i = 0; i < parts.size(); i++) {
            StackSpring part = parts.get(i);
            double contribution = part.lengthMetres() * (partStrains.get(i) - tangStrain);
            double set = setsBefore.isEmpty() ? 0 : setsBefore.get(i);
            contributions.add(contribution);
            sets.add(set);
            squeeze += contribution - set;
            softness += part.softness();
            if (part.crushingNewtons() < parts.get(weakest).crushingNewtons()) {
                weakest = i;
            }
        }
        double force = preloadNewtons + squeeze / softness;
        double most = parts.get(weakest).crushingNewtons();
        if (force > most) {
            sets.set(weakest, sets.get(weakest) + (force - most) * softness);
            force = most;
        }
        return new State(contributions, sets, Math.max(0, force), Math.max(0, -force * softness));
    }

    /**
     * What a stack has come to.
     *
     * @param contributionsMetres growth of each part beyond the steel along it, m, negative for shrinkage
     * @param setsMetres what each part has lost by crushing, m, not negative
     * @param forceNewtons load on every joint, N
     * @param gapMetres room to move along the tang, m
     */
    public record State(
            List<Double> contributionsMetres, List<Double> setsMetres, double forceNewtons, double gapMetres) {

        /** Keeps its own lists. */
        public State {
            contributionsMetres = List.copyOf(contributionsMetres);
            setsMetres = List.copyOf(setsMetres);
        }

        /** True while the parts hold each other. */
        public boolean isTight() {
            return gapMetres == 0;
        }

        /**
         * The joint that opens widest when each part sits on the tang by its middle, as in a bedded handle: half of
         * each neighbour's loss meets there. In a dry stack the whole gap can travel to any joint.
         *
         * @return index of the part on the guard side of the joint; 0 for a stack of one part
         */
        public int firstJointToOpen() {
            int widest = 0;
            double most = Double.NEGATIVE_INFINITY;
            for (int i = 0; i + 1 < contributionsMetres.size(); i++) {
                double loss = lossMetres(i) + lossMetres(i + 1);
                if (loss > most) {
                    most = loss;
                    widest = i;
                }
            }
            return widest;
        }

        private double lossMetres(int part) {
            return setsMetres.get(part) - contributionsMetres.get(part);
        }
    }
}
