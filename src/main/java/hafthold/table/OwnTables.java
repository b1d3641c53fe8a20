package hafthold.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import hafthold.knife.OwnStock;
import hafthold.material.Axis;
import hafthold.material.HailwoodHorrobinIsotherm;
import hafthold.material.Material;
import hafthold.material.OwnFigure;
import hafthold.material.Property;
import hafthold.material.PropertySheet.Entry;
import hafthold.material.ShrinkageSwelling;
import hafthold.material.WaterUptake;
import hafthold.quantity.Band;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Tables of the shop's own that {@code --tables DIR} lays over the built-in ones: one material after another, each with the
 * figures that were measured.
 */
public final class OwnTables {
    /** Key of the source that own figures name. */
    public static final String SOURCE = "own-coupons";

    private static final int DIGITS = 4;
    private static final String TREATED = "+";

    private final List<List<String>> materials = new ArrayList<>();
    private final List<List<String>> properties = new ArrayList<>();

    /** Starts with no material. */
    public OwnTables() {
        materials.add(MaterialRow.COLUMNS);
        properties.add(SheetTable.COLUMNS);
    }

    /**
     * Adds a material.
     *
     * @param material as the tables have it
     * @param own under what name it is kept
     * @param figures measured
     * @param locator of the coupons and days behind them
     */
    public void add(Material material, OwnStock own, List<OwnFigure> figures, String locator) {
        Map<Entry, Figure> all = new LinkedHashMap<>();
        if (own.isNew()) {
            materials.add(List.of(
                    own.id(),
                    own.name(),
                    "measured by the workshop, after " + material.name(),
                    material.family().word(),
                    "scale",
                    own.basedOn(),
                    material.usualCut().word(),
                    "",
                    "",
                    ""));
            if (material.id().contains(TREATED)) {
                all.putAll(treated(material));
            }
        }
        for (OwnFigure figure : figures) {
            all.put(
                    new Entry(figure.property(), figure.axis()),
                    new Figure(figure.band(), Evidence.MEASURED, SOURCE, locator));
        }
        all.forEach((entry, figure) -> properties.add(row(own.id(), entry, figure)));
    }

    /** A treated wood as figures of a wood of its own. */
    private static Map<Entry, Figure> treated(Material material) {
        Map<Entry, Figure> all = new LinkedHashMap<>(material.sheet().figures());
        WaterUptake water = material.water().orElseThrow();
        Figure sorption = water.sorptionFactor();
        double factor = HailwoodHorrobinIsotherm.factorOf(water.isotherm());
        all.put(new Entry(Property.DRY_DENSITY, Axis.ANY), water.dryDensity());
        all.put(
                new Entry(Property.SORPTION_FACTOR, Axis.ANY),
                sorption.withBand(sorption.band().times(factor / sorption.value())));
        all.put(new Entry(Property.DIFFUSIVITY, Axis.ANY), water.diffusivityReference());
        Figure exponent = water.diffusivityReference()
                .withBand(Band.exact(water.diffusivity().moistureExponent()));
        all.put(new Entry(Property.DIFFUSIVITY_MOISTURE_EXPONENT, Axis.ANY), exponent);
        if (water.swelling() instanceof ShrinkageSwelling wood) {
            Entry saturation = new Entry(Property.FIBRE_SATURATION, Axis.ANY);
            all.put(
                    saturation,
                    material.sheet()
                            .figure(Property.FIBRE_SATURATION)
                            .orElseThrow()
                            .withBand(Band.exact(wood.fibreSaturationFraction())));
        }
        return all;
    }

    private static List<String> row(String id, Entry entry, Figure figure) {
        Property property = entry.property();
        boolean isOwn = figure.evidence() == Evidence.MEASURED;
        return List.of(
                id,
                property.word(),
                entry.axis().word(),
                number(figure.band().low() / property.toSi()),
                number(figure.value() / property.toSi()),
                number(figure.band().high() / property.toSi()),
                property.unit(),
                isOwn ? "5, 50 and 95 % after weighing the range of the tables by the coupons" : "as composed",
                figure.sourceKey(),
                figure.locator(),
                figure.evidence().word());
    }

    private static String number(double value) {
        return new BigDecimal(value)
                .round(new MathContext(DIGITS))
                .stripTrailingZeros()
                .toString();
    }

    /**
     * The tables by file name.
     *
     * @param file that the coupons were told in
     * @param year of the last reading; empty where none is dated
     */
    public Map<String, String> files(String file, String year) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put(
                "properties.csv",
                csv(
                        "figures of our own stock, measured on coupons; lay them over the tables with --tables",
                        properties));
        if (materials.size() > 1) {
            files.put("materials.csv", csv("stock of our own, by the names we gave it", materials));
        }
        files.put(
                "sources.csv",
                csv(
                        "where our own figures come from",
                        List.of(
                                List.of("key", "type", "authors", "year", "title", "locator", "seen"),
                                List.of(
                                        SOURCE,
                                        "dataset",
                                        "this workshop",
                                        year,
                                        "Coupons of our own stock",
                                        file,
                                        "own"))));
        return files;
    }

    private static String csv(String title, List<List<String>> rows) {
        StringWriter text = new StringWriter();
        text.append("# title: ").append(title).append('\n');
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            rows.forEach(csv::writeRecord);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return text.toString();
    }
}
