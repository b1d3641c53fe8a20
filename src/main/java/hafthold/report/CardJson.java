package hafthold.report;

import com.fasterxml.jackson.core.JsonGenerator;
import hafthold.decide.Comparison;
import hafthold.simulate.HandleYear;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** The numbers of a card and the sentences made of them as one JSON object. */
final class CardJson {
    private static final int MONTHS = 12;

    private CardJson() {}

    static String of(CustomerCard card) {
        return JsonText.of(json -> write(json, card));
    }

    private static void write(JsonGenerator json, CustomerCard card) throws IOException {
        CardOrder order = card.order();
        Comparison offered = card.offered();
        json.writeStartObject();
        json.writeStringField("place", offered.placeId());
        json.writeStringField("setting", offered.settingId());
        json.writeStringField("town", card.town());
        json.writeStringField("knife", card.knife());
        json.writeStringField("customer", order.customer().orElse(""));
        json.writeStringField("date", order.date().map(Object::toString).orElse(""));
        json.writeStringField("language", order.wording().language());
        json.writeStringField("units", order.units().name().toLowerCase(Locale.ROOT));
        json.writeArrayFieldStart("handles");
        for (CardHandle handle : card.handles()) {
            handle(json, handle);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("beside");
        if (card.why().isPresent()) {
            for (var answer : card.why().get().ranked()) {
                handle(json, new CardHandle(order, answer));
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("sections");
        for (CardSheet.Section section : card.sheet().sections()) {
            json.writeStartObject();
            json.writeStringField("id", section.id());
            json.writeStringField("heading", section.heading());
            json.writeStringField("lead", Paragraph.plain(section.lead().orElse("")));
            texts(json, "sentences", section.sentences());
            texts(json, "points", section.points());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void handle(JsonGenerator json, CardHandle handle) throws IOException {
        HandleYear year = handle.year();
        json.writeStartObject();
        json.writeStringField("material", year.scale().id());
        json.writeStringField("name", handle.name());
        json.writeStringField("cut", year.scale().cut().word());
        json.writeStringField("verdict", handle.answer().verdict().word());
        json.writeStringField("evidence", year.grounds().evidence().grade());
        json.writeNumberField("worst_month", year.worstMonth());
        StayJson.write(json, year);
        json.writeNumberField("lowest_month", handle.lowestMonth());
        JsonFigures.movements(json, year);
        json.writeStringField("step_side", handle.worst().side().word());
        json.writeNumberField("step_printed_mm", handle.size().millimetres());
        json.writeStringField(
                "step_like", handle.isUnknown() ? "" : handle.size().thing());
        JsonFigures.number(
                json, "normal_shy_mm", handle.bounds().normal(EdgeStep.Side.SHY).millimetres());
        JsonFigures.number(
                json,
                "normal_proud_mm",
                handle.bounds().normal(EdgeStep.Side.PROUD).millimetres());
        JsonFigures.number(
                json, "call_shy_mm", handle.bounds().alarm(EdgeStep.Side.SHY).millimetres());
        JsonFigures.number(
                json,
                "call_proud_mm",
                handle.bounds().alarm(EdgeStep.Side.PROUD).millimetres());
        if (handle.answer().settling().isPresent()) {
            JsonFigures.settling(json, handle.answer().settling().get());
        }
        json.writeArrayFieldStart("month_mean_edge_mm");
        for (int month = 1; month <= MONTHS; month++) {
            json.writeNumber(AnswerFigures.stable(1000 * handle.months().of(month)));
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void texts(JsonGenerator json, String key, List<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(Paragraph.plain(text));
        }
        json.writeEndArray();
    }
}
