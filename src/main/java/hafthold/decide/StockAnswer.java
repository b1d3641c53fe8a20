package hafthold.decide;

import hafthold.knife.StockBlock;
import hafthold.simulate.FillPosterior;
import hafthold.simulate.StockStore;
import hafthold.source.Finding;
import java.util.List;
import java.util.Optional;

/**
 * A block, judged.
 *
 * @param block the block
 * @param store where it lies
 * @param target what its box is to sit at
 * @param box how the box is held there
 * @param verdict whether it may be worked
 * @param sure chance that the verdict is right, of a verdict that has one
 * @param moisture its moisture, empty where only its filling was asked
 * @param fill how it is filled, empty where it has no resin or nothing was tried
 * @param findings what the answer rests on
 */
public record StockAnswer(
        StockBlock block,
        StockStore store,
        StockTarget target,
        BoxChoice box,
        StockVerdict verdict,
        double sure,
        Optional<StockMoisture> moisture,
        Optional<FillPosterior> fill,
        List<Finding> findings) {

    /** Keeps its own copy. */
    public StockAnswer {
        findings = List.copyOf(findings);
    }

    /** Its moisture where what was read fits the block. */
    public Optional<StockMoisture> told() {
        return moisture.filter(known -> verdict != StockVerdict.ODD);
    }

    /** The same, resting on these findings. */
    public StockAnswer resting(List<Finding> other) {
        return new StockAnswer(block, store, target, box, verdict, sure, moisture, fill, other);
    }

    /** True where a filling was judged surely enough to be told. */
    public boolean isFillSure() {
        return fill.filter(known -> known.chance() >= StockJudge.FILL_SURE).isPresent();
    }
}
