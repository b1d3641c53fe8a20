package hafthold.cli;

import hafthold.decide.StockAnswer;
import hafthold.decide.StockMoisture;
import hafthold.knife.StockBlock;
import hafthold.knife.StockBlock.Sealed;
import hafthold.simulate.Sampling;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a judged block says of its own grounds, and what can hurt. */
final class StockFindings {
    private static final String EVERYTHING = "all";

    private StockFindings() {}

    /** Grounds that hold whatever comes out. */
    static List<Finding> before(StockBlock block, boolean goesSomewhere, Sampling sampling) {
        List<Finding> findings = new ArrayList<>(block.material().findings());
        if (block.isRead() || block.stabilised().isEmpty()) {
            estimate(findings, "note.stock.block");
            estimate(findings, "note.stock.speed");
            estimate(findings, "note.stock.before");
            estimate(findings, "note.stock.readings");
            if (goesSomewhere) {
                estimate(findings, "note.stock.goal");
            }
            if (block.sealed() != Sealed.NONE) {
                estimate(findings, "note.stock.wax");
            }
            findings.add(new Finding(
                    Finding.Kind.ESTIMATE,
                    EVERYTHING,
                    Message.of("note.stock.ranges", Map.of("seed", Message.verbatim(Long.toString(sampling.seed()))))));
            caution(findings, "note.stock.box-salt");
            caution(findings, "note.stock.oven");
        }
        if (block.stabilised().isPresent()) {
            estimate(findings, "note.stock.fill");
            estimate(findings, "note.stock.fill-tests");
        }
        return findings;
    }

    /** What the answer itself gives reason to say. */
    static List<Finding> after(StockAnswer answer) {
        boolean isGreen = answer.moisture()
                .map(StockMoisture::coreNow)
                .filter(core -> core.high()
                        > answer.block()
                                .material()
                                .water()
                                .orElseThrow()
                                .swelling()
                                .stillAboveFraction())
                .isPresent();
        return isGreen
                ? List.of(new Finding(
                        Finding.Kind.EXTRAPOLATION, answer.block().material().id(), Message.of("note.stock.green")))
                : List.of();
    }

    private static void estimate(List<Finding> findings, String key) {
        findings.add(new Finding(Finding.Kind.ESTIMATE, EVERYTHING, Message.of(key)));
    }

    private static void caution(List<Finding> findings, String key) {
        findings.add(new Finding(Finding.Kind.CAUTION, EVERYTHING, Message.of(key)));
    }
}
