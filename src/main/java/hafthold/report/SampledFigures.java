package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.decide.Likelihood;
import hafthold.report.AnswerFigures.BandKey;
import hafthold.simulate.Driver;
import hafthold.simulate.HandleYear;
import java.io.IOException;
import java.util.List;

/** How sure an answer is, as JSON: probability of the verdict and of each class of work, medians, drivers. */
final class SampledFigures {
    private static final double MEDIAN = 0.5;

    private SampledFigures() {}

    /** Writes nothing where nothing was sampled. */
    static void write(JsonGenerator json, Likelihood likelihood, HandleYear year) throws IOException {
        if (!likelihood.isSampled()) {
            return;
        }
        json.writeNumberField("samples", likelihood.samples());
        if (likelihood.verdictHolds().isPresent()) {
            json.writeNumberField(
                    "probability",
                    AnswerFigures.stable(likelihood.verdictHolds().getAsDouble()));
        } else {
            json.writeNullField("probability");
        }
        classes(json, likelihood.classes());
        json.writeObjectFieldStart("median_mm");
        for (BandKey key : AnswerFigures.MOVEMENTS) {
            if (key.unit().equals("mm")) {
                double median = year.quantile(
                        MEDIAN, sample -> key.of().apply(sample).orElseThrow().value());
                json.writeNumberField(key.name(), AnswerFigures.stable(median));
            }
        }
        json.writeEndObject();
    }

    /** Share of the years that keep each class; null where a limit could not be judged. */
    private static void classes(JsonGenerator json, List<Likelihood.ClassShare> classes) throws IOException {
        if (classes.isEmpty()) {
            json.writeNullField("class_probability");
            return;
        }
        json.writeObjectFieldStart("class_probability");
        for (Likelihood.ClassShare share : classes) {
            json.writeNumberField(share.limits().name(), AnswerFigures.stable(share.keeps()));
        }
        json.writeEndObject();
    }

    /** The inputs that make the edge doubtful, largest share first. */
    static void drivers(JsonGenerator json, List<Driver> drivers) throws IOException {
        json.writeArrayFieldStart("drivers");
        for (Driver driver : drivers) {
            json.writeStartObject();
            json.writeStringField("input", driver.input());
            json.writeNumberField("share", AnswerFigures.stable(driver.share()));
            json.writeNumberField("rank_correlation", AnswerFigures.stable(driver.rankCorrelation()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
