package hafthold.simulate;

import hafthold.material.Cut;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * One run of a bonded knife's year, every input at one place of its range.
 *
 * @param sides each scale, one where both are alike
 * @param softening what softens first
 * @param bow of a handle whose sides differ; none where they are alike
 * @param bolsterOverTang edge of the bolster, where there is one
 */
record BondedRun(List<SideMovement> sides, Softening softening, Optional<Swing> bow, Optional<Swing> bolsterOverTang) {

    /** Runs the year under a doubt. */
    static BondedRun of(BondedEngine.Setup setup, Doubt doubt) {
        List<Cut> cuts = setup.knife().sides();
        return new BondedRun(
                cuts.stream()
                        .map(cut -> new SideRun(setup, cut, doubt).movement())
                        .toList(),
                Softening.of(setup.knife(), setup.destination().air(), doubt),
                cuts.size() == 1
                        ? Optional.empty()
                        : Optional.of(Swing.of(new HandleBow(setup, doubt).year(cuts.get(0), cuts.get(1)))),
                setup.knife().bolster().map(bolster -> Swing.of(new BolsterLine(setup, bolster).overTang(doubt))));
    }

    /** The larger of both sides, zero or more. */
    double largest(ToDoubleFunction<SideMovement> quantity) {
        return sides.stream().mapToDouble(quantity).max().orElse(0);
    }
}
