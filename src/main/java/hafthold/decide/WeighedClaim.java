package hafthold.decide;

import hafthold.knife.FullTangKnife;
import hafthold.knife.KnifeHistory;
import java.util.List;

/**
 * What was measured on a returned knife, held against everything that was tried.
 *
 * @param tried the causes, weighted
 * @param chances of every cause, the likeliest first
 * @param rows every measured step
 * @param verdict whose affair it is
 */
record WeighedClaim(TriedCauses tried, List<CauseChance> chances, List<ClaimRow> rows, ClaimVerdict verdict) {

    /** Weighs causes that were tried. */
    static WeighedClaim of(TriedCauses tried, FullTangKnife knife, KnifeHistory history) {
        List<CauseChance> chances = tried.chances();
        List<ClaimRow> rows = new ClaimRows(
                        tried.drawn().engine(), tried.posterior(), tried.drawn().usual())
                .of(knife, tried.measured());
        ClaimVerdict verdict = ClaimRule.verdict(
                rows, chances, history.isOnlyAtHome(), tried.posterior().effectiveSamples());
        boolean tellsNothing = tried.drawn().tooCoarse() && verdict != ClaimVerdict.NOT_EXPLAINED;
        return new WeighedClaim(tried, chances, rows, tellsNothing ? ClaimVerdict.TOO_COARSE : verdict);
    }

    /** Chance of the cause that the verdict names; 0 where it names none. */
    double sure() {
        return ClaimRule.sure(verdict, chances);
    }
}
