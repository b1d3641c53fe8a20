package hafthold.decide;

import hafthold.decide.CouponFigure.Kind;
import hafthold.knife.Coupon;
import hafthold.knife.CouponReading;
import hafthold.knife.OwnStock;
import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.quantity.Band;
import hafthold.simulate.CouponModel;
import hafthold.simulate.CouponModel.Datum;
import hafthold.simulate.Sampling;
import hafthold.source.Figure;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;

/**
 * Judges the coupons of one material.
 *
 * <p>Read it as the method statement: every figure drawn from its range in the tables; what the coupons would have read
 * under each draw; the draws weighted by how well that agrees with what was read; of each figure the band before and after,
 * and whether the coupons tell it at all; which readings had not settled; what does not go together; and which further
 * measurement would tell most.
 */
public final class CouponJudge {
    /** Ends of the middle 80 % over those of the middle 90 % of a normal distribution. */
    private static final double EIGHTY_OVER_NINETY = 1.2816 / 1.6449;

    private static final double NINETY = 1.6449;
    private static final double EIGHTY = 1.2816;
    private static final double HUMIDITY = 0.65;
    private static final double DRY = 0.35;

    /** Water still to be taken up that no scale would show, kg/kg. */
    private static final double NO_CHANGE = 0.002;

    private final Sampling sampling;

    /**
     * A judge.
     *
     * @param sampling how many draws; bands are wanted
     */
    public CouponJudge(Sampling sampling) {
        this.sampling = sampling;
    }

    /**
     * Judges.
     *
     * @param material of all the coupons; takes up water
     * @param own under what name its figures are kept
     * @param findings grounds known beforehand
     */
    public CouponStudy judge(Material material, OwnStock own, List<Coupon> coupons, List<Finding> findings) {
        CouponModel model = new CouponModel(material, coupons);
        CouponPosterior posterior = new CouponPosterior(model, sampling.samples(), sampling.seed());
        Map<Kind, ToDoubleBiFunction<CouponModel, double[]>> asked = asked(material, coupons);
        List<CouponFigure> figures = new ArrayList<>();
        asked.forEach((kind, figure) -> figure(model, posterior, kind, figure).ifPresent(figures::add));
        density(material, model, posterior).ifPresent(figures::add);
        List<Band> days = new ArrayList<>();
        for (int c = 0; c < coupons.size(); c++) {
            int number = c;
            days.add(middle(posterior, point -> model.settlingDays(number, point)));
        }
        CouponStudy study = new CouponStudy(
                material,
                own,
                coupons,
                figures,
                settlings(model, posterior),
                days,
                readings(model, posterior),
                new CouponPlanner(material, model, posterior).plans(asked),
                List.of(),
                posterior.fits(own.isNew() ? CouponModel.figuresAsked() : 0),
                sampling.samples(),
                posterior.effectiveSamples(),
                findings);
        return new CouponDoubts(study, model, posterior).told();
    }

    /** Figures that coupons of these cuts may tell. */
    private static Map<Kind, ToDoubleBiFunction<CouponModel, double[]>> asked(Material material, List<Coupon> coupons) {
        Map<Kind, ToDoubleBiFunction<CouponModel, double[]>> asked = new EnumMap<>(Kind.class);
        boolean isBurl = coupons.stream().anyMatch(one -> cut(material, one) == Cut.BURL);
        if (isBurl) {
            asked.put(Kind.ANY_WAY, (model, point) -> model.widthPerMoisture(0, point));
        } else {
            for (Kind kind : List.of(Kind.ACROSS, Kind.THROUGH, Kind.ALONG)) {
                asked.put(kind, (model, point) -> model.figures(point).perMoisture(kind.axis()));
            }
        }
        asked.put(Kind.SORPTION, (model, point) -> model.figures(point).atRest(HUMIDITY));
        asked.put(Kind.SPEED, (model, point) -> model.figures(point).diffusivity());
        asked.put(Kind.WIDTH, (model, point) -> model.widthStrain(0, point, DRY, HUMIDITY));
        return asked;
    }

    private static Cut cut(Material material, Coupon coupon) {
        return coupon.cut().orElse(material.usualCut());
    }

    private static Band middle(CouponPosterior posterior, ToDoubleFunction<double[]> figure) {
        return posterior.after(figure, CouponPosterior.LOW, CouponPosterior.HIGH);
    }

    private static Optional<CouponFigure> figure(
            CouponModel model, CouponPosterior posterior, Kind kind, ToDoubleBiFunction<CouponModel, double[]> asked) {
        ToDoubleFunction<double[]> figure = point -> asked.applyAsDouble(model, point);
        Band book = posterior.before(figure, CouponPosterior.LOW, CouponPosterior.HIGH);
        if (book.isExact()) {
            return Optional.empty();
        }
        double tables = asked.applyAsDouble(model, new double[model.unknowns()]);
        Band wide = posterior.before(figure, CouponPosterior.ROW_LOW, CouponPosterior.ROW_HIGH);
        Band nine = posterior.after(figure, CouponPosterior.ROW_LOW, CouponPosterior.ROW_HIGH);
        return Optional.of(new CouponFigure(
                kind,
                book,
                middle(posterior, figure),
                posterior.after(
                        point -> figure.applyAsDouble(point) / tables,
                        CouponPosterior.ROW_LOW,
                        CouponPosterior.ROW_HIGH),
                posterior.tell(asked),
                nine.low() > wide.high() || nine.high() < wide.low()));
    }

    /** Density needs no weighing of draws: it is read off the coupon, all but the water in it. */
    private static Optional<CouponFigure> density(Material material, CouponModel model, CouponPosterior posterior) {
        Optional<Figure> tabled = material.sheet().figure(Property.DRY_DENSITY, Axis.ANY);
        for (int c = 0; c < model.coupons().size(); c++) {
            int number = c;
            OptionalDouble best = model.density(c, posterior.best());
            if (best.isPresent() && tabled.isPresent()) {
                ToDoubleFunction<double[]> figure =
                        point -> model.density(number, point).orElseThrow();
                double error = model.densityError(c);
                Band row = widened(
                        posterior.after(figure, CouponPosterior.ROW_LOW, CouponPosterior.ROW_HIGH), NINETY * error);
                Band band = tabled.get().band();
                return Optional.of(new CouponFigure(
                        Kind.DENSITY,
                        new Band(
                                band.value() - EIGHTY_OVER_NINETY * (band.value() - band.low()),
                                band.value(),
                                band.value() + EIGHTY_OVER_NINETY * (band.high() - band.value())),
                        widened(middle(posterior, figure), EIGHTY * error),
                        row.times(1 / band.value()),
                        true,
                        row.low() > band.high() || row.high() < band.low()));
            }
        }
        return Optional.empty();
    }

    /** A band with an independent relative error. */
    private static Band widened(Band band, double share) {
        double off = share * band.value();
        return new Band(
                band.value() - Math.hypot(band.value() - band.low(), off),
                band.value(),
                band.value() + Math.hypot(band.high() - band.value(), off));
    }

    private static List<CouponStudy.Settling> settlings(CouponModel model, CouponPosterior posterior) {
        List<CouponStudy.Settling> settlings = new ArrayList<>();
        for (int c = 0; c < model.coupons().size(); c++) {
            int number = c;
            List<CouponReading> readings = model.coupons().get(c).readings();
            CouponModel.Told best = model.told(c, posterior.best());
            for (int i = 0; i < readings.size(); i++) {
                int at = i;
                int from = startOf(readings, i);
                boolean moves = from >= 0 && Math.abs(best.atRest()[i] - best.moisture()[from]) > NO_CHANGE;
                if (readings.get(i).lay().isPresent() && (from < 0 || moves)) {
                    Band left = middle(
                            posterior,
                            point -> from < 0
                                    ? Math.exp(-readings.get(at)
                                                    .lay()
                                                    .orElseThrow()
                                                    .days()
                                            / model.settlingDays(number, point))
                                    : left(model.told(number, point), from, at));
                    settlings.add(new CouponStudy.Settling(c, i, left));
                }
            }
        }
        return settlings;
    }

    /** The last reading in another air, where the way of a reading began; -1 for the air it came in. */
    private static int startOf(List<CouponReading> readings, int reading) {
        int from = reading - 1;
        while (from >= 0 && readings.get(from).inTheAirOf(readings.get(reading))) {
            from--;
        }
        return from;
    }

    private static double left(CouponModel.Told told, int from, int at) {
        double way = told.atRest()[at] - told.moisture()[from];
        return Math.max(0, Math.min(1, (told.atRest()[at] - told.moisture()[at]) / way));
    }

    private static List<CouponStudy.ReadingRow> readings(CouponModel model, CouponPosterior posterior) {
        List<CouponStudy.ReadingRow> rows = new ArrayList<>();
        for (Datum datum : model.data()) {
            Coupon coupon = model.coupons().get(datum.coupon());
            long alike = datum.side().map(coupon::sizesOf).orElse(coupon.weights());
            if (alike < 2) {
                continue; // a single one of its kind is met by any figures
            }
            ToDoubleFunction<double[]> told = point -> value(
                    model.told(datum.coupon(), point), datum, coupon.readings().size());
            rows.add(new CouponStudy.ReadingRow(
                    datum.coupon(),
                    datum.reading(),
                    datum.side(),
                    measured(coupon, datum),
                    posterior.before(told, CouponPosterior.LOW, CouponPosterior.HIGH),
                    middle(posterior, told)));
        }
        return rows;
    }

    private static double value(CouponModel.Told told, Datum datum, int readings) {
        if (datum.reading() == readings) {
            return told.dryKilograms();
        }
        return datum.side()
                .map(side -> told.sizes().get(side)[datum.reading()])
                .orElseGet(() -> told.kilograms()[datum.reading()]);
    }

    private static double measured(Coupon coupon, Datum datum) {
        if (datum.reading() == coupon.readings().size()) {
            return coupon.ovenDry().orElseThrow().kilograms();
        }
        CouponReading reading = coupon.readings().get(datum.reading());
        return datum.side()
                .map(side -> reading.sizes().get(side).metres())
                .orElseGet(() -> reading.weight().orElseThrow().kilograms());
    }
}
