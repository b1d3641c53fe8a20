package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.mechanics.SectionOutput;
import hafthold.quantity.Band;
import hafthold.quantity.Length;
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

/**
 * The numbers behind the pictures of a full-tang knife.
 *
 * @param style language and units
 */
record FullTangNumbers(BenchStyle style) {
    private static final Map<String, ToDoubleFunction<SectionPose>> PLACES = places();

    private static Map<String, ToDoubleFunction<SectionPose>> places() {
        Map<String, ToDoubleFunction<SectionPose>> places = new LinkedHashMap<>();
        places.put("place.edge-at-glue", SectionPose::edgeAtGlue);
        places.put("place.edge-by-tang", SectionPose::tangLine);
        places.put("place.edge-half-way", SectionPose::edgeMid);
        places.put("place.edge-outer", SectionPose::edgeOuter);
        places.put("place.edge-free", SectionPose::freeEdge);
        places.put("place.face-middle", SectionPose::faceCentre);
        places.put("place.face-edges", SectionPose::faceEdge);
        return places;
    }

    /** Every reckoned point of the sections that are drawn. */
    NumbersTable section(FullTangFit fit) {
        List<SideYear> sides = fit.year().sides();
        List<String> head = new ArrayList<>(style.heads("place"));
        for (SideYear side : sides) {
            String name = sides.size() == 1 ? "" : style.named("of-two", side.name()) + style.say("comma");
            head.add(name + style.dayOfHour(side.dryPose().hour()));
            head.add(name + style.dayOfHour(side.wetPose().hour()));
        }
        String depth = style.size(new Length(SectionOutput.TANG_LINE_DEPTH_METRES));
        List<List<String>> rows = new ArrayList<>();
        PLACES.forEach((place, of) -> {
            List<String> row = new ArrayList<>(List.of(style.say(place, "depth", depth)));
            for (SideYear side : sides) {
                row.add(style.thousandths(of.applyAsDouble(side.dryPose())));
                row.add(style.thousandths(of.applyAsDouble(side.wetPose())));
            }
            rows.add(row);
        });
        return new NumbersTable(style.say("section.caption", "unit", style.unit()), head, rows);
    }

    /** Monthly means of the edge. */
    NumbersTable edgeYear(FitYear year) {
        MonthlyMeans glued = means(year.days().edge(), Band::value);
        MonthlyMeans low = means(year.days().edge(), Band::low);
        MonthlyMeans high = means(year.days().edge(), Band::high);
        MonthlyMeans free = means(year.days().freeEdge(), Band::value);
        List<List<String>> rows = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            rows.add(List.of(
                    style.month(month),
                    style.thousandths(glued.of(month)),
                    style.say(
                            "from-to",
                            "from",
                            style.thousandths(low.of(month)),
                            "to",
                            style.thousandths(high.of(month))),
                    style.thousandths(free.of(month))));
        }
        return new NumbersTable(
                style.say("edge-year.caption", "unit", style.unit()),
                style.heads("month", "glued", "range", "not-glued"),
                rows);
    }

    private static MonthlyMeans means(List<Band> days, ToDoubleFunction<Band> of) {
        return MonthlyMeans.of(days.stream().map(of::applyAsDouble).toList());
    }

    /** Gap, squeeze and heads of every pin. */
    NumbersTable pins(FullTangFit fit) {
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
            List<String> row = new ArrayList<>(List.of(style.say("row.pin", "number", Integer.toString(i + 1))));
            row.add(style.thousandths(
                    fit.knife().build().pins().get(i).openClearance().metres()));
            columns.forEach(column -> row.add(new ChartNumbers(style).band(column.apply(pin))));
            rows.add(row);
        }
        return new NumbersTable(
                style.say("pins.caption", "unit", style.unit()),
                style.heads(
                        "pin",
                        "room",
                        "tight-across",
                        "gap-across",
                        "tight-along",
                        "gap-along",
                        "head-up",
                        "head-sunk"),
                rows);
    }

    /** Monthly peaks of the use of strength. */
    NumbersTable stressYear(FullTangFit fit) {
        List<StrengthUse> uses = StrengthUse.of(fit, style);
        List<String> head = new ArrayList<>(style.heads("month"));
        uses.forEach(use -> head.add(use.name()));
        List<List<String>> rows = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            List<String> row = new ArrayList<>(List.of(style.month(month)));
            for (StrengthUse use : uses) {
                row.add(style.percent(MonthlyPeaks.of(use.daily()).of(month)));
            }
            rows.add(row);
        }
        List<String> worst = new ArrayList<>(List.of(style.say("stress.year")));
        for (StrengthUse use : uses) {
            Band band = use.worst();
            worst.add(style.say(
                    "range",
                    "value",
                    style.percent(band.value()),
                    "low",
                    style.percent(band.low()),
                    "high",
                    style.percent(band.high())));
        }
        rows.add(worst);
        return new NumbersTable(style.say("stress.caption"), head, rows);
    }
}
