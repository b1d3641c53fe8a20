package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.quantity.Band;
import hafthold.simulate.FitYear;
import hafthold.simulate.FitYear.PinYear;
import hafthold.simulate.FitYear.SideYear;
import hafthold.simulate.SectionPose;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The numbers behind the pictures of a full-tang knife. */
final class FullTangNumbers {
    private static final Map<String, ToDoubleFunction<SectionPose>> PLACES = places();

    private FullTangNumbers() {}

    private static Map<String, ToDoubleFunction<SectionPose>> places() {
        Map<String, ToDoubleFunction<SectionPose>> places = new LinkedHashMap<>();
        places.put("Edge at the glue", SectionPose::edgeAtGlue);
        places.put("Edge by the tang (2 mm)", SectionPose::tangLine);
        places.put("Edge half way up", SectionPose::edgeMid);
        places.put("Edge at the outer face", SectionPose::edgeOuter);
        places.put("Edge if not glued", SectionPose::freeEdge);
        places.put("Face in its middle", SectionPose::faceCentre);
        places.put("Face at its edges", SectionPose::faceEdge);
        return places;
    }

    /** Every reckoned point of the sections that are drawn. */
    static NumbersTable section(FullTangFit fit) {
        List<SideYear> sides = fit.year().sides();
        List<String> head = new ArrayList<>(List.of("Place"));
        for (SideYear side : sides) {
            String name = sides.size() == 1 ? "" : side.name() + ", ";
            head.add(name + DayWord.ofHour(side.dryPose().hour()));
            head.add(name + DayWord.ofHour(side.wetPose().hour()));
        }
        List<List<String>> rows = new ArrayList<>();
        PLACES.forEach((place, of) -> {
            List<String> row = new ArrayList<>(List.of(place));
            for (SideYear side : sides) {
                row.add(ChartNumbers.fixed(1000 * of.applyAsDouble(side.dryPose()), 3));
                row.add(ChartNumbers.fixed(1000 * of.applyAsDouble(side.wetPose()), 3));
            }
            rows.add(row);
        });
        return new NumbersTable(
                "mm since final sanding at two hours of the year; edges shy below zero, faces out above zero",
                head,
                rows);
    }

    /** Monthly means of the edge. */
    static NumbersTable edgeYear(FitYear year) {
        MonthlyMeans glued = means(year.days().edge(), Band::value);
        MonthlyMeans low = means(year.days().edge(), Band::low);
        MonthlyMeans high = means(year.days().edge(), Band::high);
        MonthlyMeans free = means(year.days().freeEdge(), Band::value);
        List<List<String>> rows = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            rows.add(List.of(
                    MonthWord.of(month),
                    ChartNumbers.fixed(glued.of(month), 3),
                    ChartNumbers.fixed(low.of(month), 3) + " to " + ChartNumbers.fixed(high.of(month), 3),
                    ChartNumbers.fixed(free.of(month), 3)));
        }
        return new NumbersTable(
                "mm a side, means of the month; shy below zero, proud above",
                List.of("Month", "Glued, half way up", "Range of that", "If not glued"),
                rows);
    }

    private static MonthlyMeans means(List<Band> days, ToDoubleFunction<Band> of) {
        return MonthlyMeans.of(
                days.stream().map(day -> 1000 * of.applyAsDouble(day)).toList());
    }

    /** Gap, squeeze and heads of every pin. */
    static NumbersTable pins(FullTangFit fit) {
        List<Function<PinYear, Band>> columns = List.of(
                PinYear::squeezeAcross,
                PinYear::gapAcross,
                PinYear::squeezeAlong,
                PinYear::gapAlong,
                PinYear::headProud,
                PinYear::headSunk);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < fit.year().pins().size(); i++) {
            PinYear pin = fit.year().pins().get(i);
            List<String> row = new ArrayList<>(List.of("Pin " + (i + 1)));
            row.add(ChartNumbers.fixed(
                    fit.knife().build().pins().get(i).openClearance().millimetres(), 3));
            columns.forEach(column -> row.add(ChartNumbers.millimetres(column.apply(pin))));
            rows.add(row);
        }
        return new NumbersTable(
                "mm, the year's worst: value (low to high)",
                List.of(
                        "Pin",
                        "Room as drilled",
                        "Tight across",
                        "Gap across",
                        "Tight along",
                        "Gap along",
                        "Head up",
                        "Head sunk"),
                rows);
    }

    /** Monthly peaks of the use of strength. */
    static NumbersTable stressYear(FullTangFit fit) {
        List<StrengthUse> uses = StrengthUse.of(fit);
        List<String> head = new ArrayList<>(List.of("Month"));
        uses.forEach(use -> head.add(use.name()));
        List<List<String>> rows = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            List<String> row = new ArrayList<>(List.of(MonthWord.of(month)));
            for (StrengthUse use : uses) {
                row.add(ChartNumbers.fixed(100 * MonthlyPeaks.of(use.daily()).of(month), 1));
            }
            rows.add(row);
        }
        List<String> worst = new ArrayList<>(List.of("The year, with range"));
        for (StrengthUse use : uses) {
            Band band = use.worst();
            worst.add(ChartNumbers.fixed(100 * band.value(), 1) + " (" + ChartNumbers.fixed(100 * band.low(), 1)
                    + " to " + ChartNumbers.fixed(100 * band.high(), 1) + ")");
        }
        rows.add(worst);
        return new NumbersTable("% of what it bears, highest of the month", head, rows);
    }
}
