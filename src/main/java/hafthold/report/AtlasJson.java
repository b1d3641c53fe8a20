package hafthold.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import hafthold.air.ClimateGroup;
import hafthold.decide.Atlas;
import hafthold.decide.Atlas.Cell;
import hafthold.decide.Atlas.Line;
import hafthold.decide.Atlas.Site;
import hafthold.decide.Verdict;
import hafthold.simulate.HandleYear;
import java.io.IOException;
import java.io.Writer;

/**
 * An atlas as one JSON object, one line a place, a material and a result: numbers unformatted, units at the end of the
 * keys, equal runs give equal bytes. The keys of a result are those of {@link ComparisonJson}.
 */
public final class AtlasJson {
    private static final AtlasWords WORDS = new AtlasWords(BenchStyle.ENGLISH);

    private AtlasJson() {}

    /** Writes the object, ending in a line feed; the writer stays open. */
    public static void write(Atlas atlas, Writer writer) throws IOException {
        try (JsonGenerator json = new JsonFactory().createGenerator(writer)) {
            json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            json.setPrettyPrinter(new LinePrinter());
            json.writeStartObject();
            json.writeStringField("setting", atlas.setting());
            json.writeObjectFieldStart("made");
            JsonFigures.number(json, "temperature_c", atlas.madeTemperature().celsius());
            JsonFigures.number(json, "rh_percent", atlas.madeHumidity().percent());
            json.writeEndObject();
            climates(json, atlas);
            places(json, atlas);
            materials(json, atlas);
            json.writeArrayFieldStart("results");
            for (Line line : atlas.lines()) {
                for (int place = 0; place < line.cells().size(); place++) {
                    result(json, atlas.sites().get(place), line.cells().get(place));
                }
            }
            json.writeEndArray();
            JsonFigures.findings(json, atlas.findings());
            json.writeEndObject();
        }
        writer.write('\n');
    }

    private static void climates(JsonGenerator json, Atlas atlas) throws IOException {
        json.writeArrayFieldStart("climates");
        for (ClimateGroup climate : atlas.climates()) {
            json.writeStartObject();
            json.writeStringField("climate", climate.id());
            json.writeStringField("name", WORDS.climate(climate));
            json.writeStringField("rule", WORDS.rule(climate));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void places(JsonGenerator json, Atlas atlas) throws IOException {
        json.writeArrayFieldStart("places");
        for (Site site : atlas.sites()) {
            json.writeStartObject();
            json.writeStringField("place", site.id());
            json.writeStringField("name", site.name());
            json.writeStringField("climate", site.climate().id());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void materials(JsonGenerator json, Atlas atlas) throws IOException {
        json.writeArrayFieldStart("materials");
        for (Line line : atlas.lines()) {
            json.writeStartObject();
            json.writeStringField("material", line.materialId());
            json.writeStringField("name", line.materialName());
            json.writeStringField("family", line.family().word());
            json.writeStringField("cut", line.cut().word());
            json.writeStringField("evidence", line.evidence().grade());
            for (Verdict verdict : Verdict.values()) {
                json.writeArrayFieldStart(verdict.word() + "_in");
                for (int place = 0; place < line.cells().size(); place++) {
                    if (line.cells().get(place).verdict() == verdict) {
                        json.writeString(atlas.sites().get(place).id());
                    }
                }
                json.writeEndArray();
            }
            json.writeStringField("where", Paragraph.plain(new WhereItStays(atlas, BenchStyle.ENGLISH).sentence(line)));
            JsonFigures.findings(json, line.findings());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void result(JsonGenerator json, Site site, Cell cell) throws IOException {
        HandleYear year = cell.year();
        json.writeStartObject();
        json.writeStringField("place", site.id());
        json.writeStringField("climate", site.climate().id());
        json.writeNumberField("rank", cell.rank());
        json.writeStringField("material", year.scale().id());
        json.writeStringField("name", year.scale().name());
        json.writeStringField("family", year.scale().family().word());
        json.writeStringField("cut", year.scale().cut().word());
        JsonFigures.moisture(json, year);
        JsonFigures.movements(json, year);
        JsonFigures.number(json, "limit_use", cell.use());
        json.writeNumberField("worst_month", year.worstMonth());
        json.writeStringField("verdict", cell.verdict().word());
        json.writeStringField("evidence", year.grounds().evidence().grade());
        json.writeBooleanField("bonded", EdgeStep.isBonded(year));
        if (cell.holds().isPresent()) {
            JsonFigures.number(json, "probability", cell.holds().getAsDouble());
        }
        json.writeEndObject();
    }

    /** Nothing between tokens but a line feed before each element of an array. */
    private static final class LinePrinter extends MinimalPrettyPrinter {
        private static final long serialVersionUID = 1L;

        @Override
        public void beforeArrayValues(JsonGenerator json) throws IOException {
            json.writeRaw('\n');
        }

        @Override
        public void writeArrayValueSeparator(JsonGenerator json) throws IOException {
            json.writeRaw(",\n");
        }
    }
}
