package hafthold.simulate;

import hafthold.material.Family;
import hafthold.material.Material;
import hafthold.source.Evidence;
import hafthold.source.PublishedModel;

/**
 * How fast water leaves boards and blocks, over what the diffusivity of the tables says.
 *
 * <p>The tables' figures are of thin samples that change their air all over. Boards that were watched while they dried took
 * 0.7 to 6 times as long as those figures give, 2.3 times in the middle of the six kinds that served (test resource
 * {@code stock-drying.csv}); half the speed is taken, so that dates err on the late side. What a workshop measured itself is
 * taken as it is.
 */
@PublishedModel(
        source = "miceli-1982",
        locator =
                "abstract: boards of three hardwoods, 25 and 51 mm, days to 10 % indoors; with other boards, see accuracy.md",
        validity = "wood, plain or treated; half is a judgement over few and rough cases, their air mostly not printed")
final class DryingSpeed {
    private static final double OF_BOARDS = 0.5;

    private DryingSpeed() {}

    /** Factor on the diffusivity of the tables. */
    static double of(Material material) {
        boolean isWood = material.family() == Family.WOOD || material.family() == Family.TREATED_WOOD;
        boolean isOwn = material.water().orElseThrow().diffusivityReference().evidence() == Evidence.MEASURED;
        return isWood && !isOwn ? OF_BOARDS : 1;
    }
}
