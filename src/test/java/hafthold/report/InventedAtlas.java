package hafthold.report;

import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas;
import hafthold.decide.Atlas.Cell;
import hafthold.decide.Atlas.Line;
import hafthold.decide.Atlas.Site;
import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.decide.Judgement;
import hafthold.simulate.HandleYear;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** An invented atlas of the invented comparisons: for looking at reports only. */
final class InventedAtlas {
    private InventedAtlas() {}

    /** Three materials in three places. */
    static Atlas small() {
        return of(List.of("walnut-black", "linen-phenolic-le", "antler-reindeer"), UnaryOperator.identity());
    }

    /** Likewise, with every name passed through a change. */
    static Atlas small(UnaryOperator<String> change) {
        return of(List.of("walnut-black", "linen-phenolic-le", "antler-reindeer"), change);
    }

    private static Atlas of(List<String> materials, UnaryOperator<String> change) {
        List<Comparison> comparisons =
                List.of(InventedComparison.glued(change), InventedComparison.damp(), InventedComparison.unglued());
        Judgement judgement = new Judgement(InventedComparison.limits());
        List<Line> lines = new ArrayList<>();
        for (String material : materials) {
            List<Cell> cells = comparisons.stream()
                    .map(comparison -> answer(comparison, material))
                    .map(answer -> new Cell(
                            answer.rank(),
                            answer.year().brief(),
                            answer.verdict(),
                            judgement.seasonalUse(answer.year()),
                            answer.likelihood().verdictHolds()))
                    .toList();
            HandleYear first = cells.get(0).year();
            lines.add(new Line(
                    first.scale().id(),
                    first.scale().name(),
                    first.scale().family(),
                    first.scale().cut(),
                    first.grounds().evidence(),
                    answer(comparisons.get(0), material).year().grounds().findings(),
                    cells));
        }
        Comparison order = comparisons.get(0);
        return new Atlas(
                order.settingId(),
                order.settingRule(),
                order.handle(),
                order.madeTemperature(),
                order.madeHumidity(),
                order.finishName(),
                List.of(
                        new Site("nordhavn", change.apply("Nordhavn"), ClimateGroup.HARD_WINTER),
                        new Site("port-mangrove", change.apply("Port Mangrove"), ClimateGroup.HOT_DAMP),
                        new Site("sundhavn", change.apply("Sundhavn"), ClimateGroup.HARD_WINTER)),
                lines,
                order.findings());
    }

    private static Ranked answer(Comparison comparison, String material) {
        return comparison.ranked().stream()
                .filter(ranked -> ranked.year().scale().id().equals(material))
                .findFirst()
                .orElseThrow();
    }
}
