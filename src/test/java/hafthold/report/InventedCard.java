package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.knife.Workshop;
import hafthold.quantity.Band;
import hafthold.simulate.Settling;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Cards about the invented comparison. */
final class InventedCard {
    static final Workshop SHOP = new Workshop(
            Optional.of("Alder Lane Handles (invented)"),
            Optional.of("workshop@example.org"),
            Map.of("stays", "Edges stay level for five years.", "care", "We true it up once."),
            Map.of("linen-phenolic-le", "260 crowns"));
    private static final Settling SETTLING = new Settling(new Band(4, 11, 27));

    private InventedCard() {}

    static CardOrder order(Wording wording, LengthUnits units) {
        return new CardOrder(
                Optional.of("Ms Invented"),
                Optional.of("Nordhavn"),
                Optional.of("hunting knife"),
                Optional.of(LocalDate.of(2027, 3, 1)),
                SHOP,
                InventedComparison.limits(),
                units,
                wording);
    }

    /** A card about one handle, or a quote about several, by material ids in the first cut each has. */
    static CustomerCard of(CardOrder order, Comparison from, String... ids) {
        Comparison offered = only(from, ids);
        return new CustomerCard(
                order,
                offered,
                ids.length > 1
                        ? Optional.empty()
                        : Optional.of(only(from, "walnut-black", "walnut-black+lumen-resin", "linen-phenolic-le")));
    }

    static CustomerCard english(String... ids) {
        return of(order(Wording.english(), LengthUnits.MM), InventedComparison.glued(), ids);
    }

    /** A card for every answer of the comparison. */
    static List<CustomerCard> all(CardOrder order) {
        Comparison whole = InventedComparison.glued();
        return whole.ranked().stream()
                .map(answer -> of(order, whole, answer.year().scale().id()))
                .toList();
    }

    private static Comparison only(Comparison from, String... ids) {
        List<Ranked> kept = List.of(ids).stream()
                .map(id -> from.ranked().stream()
                        .filter(answer -> answer.year().scale().id().equals(id))
                        .findFirst()
                        .orElseThrow())
                .map(answer -> new Ranked(
                        answer.rank(),
                        answer.year(),
                        answer.verdict(),
                        answer.reasons(),
                        answer.year().moisture().highest() > 0.001 ? Optional.of(SETTLING) : Optional.empty()))
                .toList();
        return new Comparison(
                from.placeId(),
                from.placeName(),
                from.settingId(),
                from.settingRule(),
                from.handle(),
                from.madeTemperature(),
                from.madeHumidity(),
                from.finishName(),
                from.dailyOutdoors(),
                from.dailyIndoors(),
                kept,
                from.findings());
    }
}
