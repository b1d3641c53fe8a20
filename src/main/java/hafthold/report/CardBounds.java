package hafthold.report;

import hafthold.knife.FitLimits;
import hafthold.quantity.Band;
import java.util.function.Function;

/**
 * How far a handle may go before its customer should call: what is normal, and what is not, each never less than what is
 * expected of it.
 *
 * @param handle the handle in its year
 */
record CardBounds(CardHandle handle) {
    /** The widest gap at a pin or an end that is no cause to call. */
    CardLength normalGap() {
        return rounded(
                handle.order().seasonal().gap().metres(),
                Math.max(
                        handle.year().pins().gap().value(),
                        handle.year().ends().shortBy().value()));
    }

    /** A gap beyond which the maker wants to know. */
    CardLength alarmGap() {
        return rounded(
                handle.order().loosest().gap().metres(),
                Math.max(
                        handle.year().pins().gap().high(),
                        handle.year().ends().shortBy().high()));
    }

    /** The largest step that is no cause to call, on one side. */
    CardLength normal(EdgeStep.Side side) {
        return atLeast(side, handle.order().seasonal(), band -> band.value());
    }

    /** A step beyond which the maker wants to know. */
    CardLength alarm(EdgeStep.Side side) {
        return atLeast(side, handle.order().loosest(), band -> band.high());
    }

    private CardLength atLeast(EdgeStep.Side side, FitLimits limits, Function<Band, Double> expected) {
        boolean shy = side == EdgeStep.Side.SHY;
        double limit = shy ? limits.shy().metres() : limits.proud().metres();
        double comes = expected.apply(
                shy
                        ? handle.year().edge().bonded().shy()
                        : handle.year().edge().bonded().proud());
        return rounded(limit, comes);
    }

    /** The larger of both, rounded up to a hundredth of a millimetre. */
    private CardLength rounded(double limit, double comes) {
        double hundredths = Math.ceil(Math.max(limit, comes) * 1e5 - 1e-6) / 1e5;
        return CardLength.exact(
                hundredths, handle.order().units(), handle.order().wording());
    }
}
