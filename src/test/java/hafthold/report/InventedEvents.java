package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.EventComparison;
import hafthold.quantity.Band;
import hafthold.simulate.EventAnswer;
import hafthold.simulate.EventYear;
import hafthold.simulate.SofteningMargin;
import hafthold.table.EventTable;
import hafthold.table.TableSet;
import java.util.List;
import java.util.Optional;

/** What a dishwasher might do to the materials of an invented comparison; every figure is invented. */
final class InventedEvents {
    private InventedEvents() {}

    static EventComparison weekly(Comparison comparison) {
        return weekly(comparison, Optional.of(new SofteningMargin(new Band(-9.5, -4.25, 1), "black walnut")));
    }

    /** The same, with what softens first. */
    static EventComparison weekly(Comparison comparison, Optional<SofteningMargin> softening) {
        return new EventComparison(
                comparison,
                comparison.ranked().stream()
                        .map(answer ->
                                new EventYear(answer.year(), List.of(washed()), softening, softening, 0.0031, 0.0042))
                        .toList());
    }

    private static EventAnswer washed() {
        return new EventAnswer(
                EventTable.read(TableSet.builtIn()).find("dishwasher"),
                52,
                0.281,
                0.061,
                new Band(0.002, 0.004, 0.009),
                Band.exact(0),
                Band.exact(0),
                new Band(0.02e-3, 0.043e-3, 0.08e-3),
                Optional.of(Band.exact(0.1)),
                new Band(60, 64.5, 66),
                12.5,
                31.25,
                0.0012,
                0.0034,
                new Band(2e-3, 5e-3, 11e-3));
    }
}
