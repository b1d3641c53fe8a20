package hafthold.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import hafthold.decide.EventFit;
import hafthold.decide.KnifeFit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One knife in one place as markdown: the bench note, and every number of {@link FitJson} to three digits. */
public final class FitMarkdown {
    private FitMarkdown() {}

    /** The whole note. */
    public static String of(KnifeFit fit, BenchStyle style) {
        return of(EventFit.quiet(fit), style);
    }

    /** Likewise, with what each event does. */
    public static String of(EventFit answer, BenchStyle style) {
        KnifeFit fit = answer.fit();
        TriedChanges tried = new TriedChanges(style, answer);
        MarkdownText text = new MarkdownText().heading(1, tried.title()).paragraph(FitText.verdictSentence(fit, style));
        text.points(FitRows.of(answer, style).rows().stream()
                .map(row -> row.lead().isEmpty() ? row.words() : row.lead() + ": " + row.words())
                .toList());
        answer.events().ifPresent(events -> EventColumns.write(text, style, EventRows.of(style, events)));
        AdviceWords words = new AdviceWords(style);
        for (TriedChanges.Group group : tried.groups()) {
            text.heading(2, group.heading());
            if (group.changes().isEmpty()) {
                text.paragraph(group.none());
            } else {
                text.points(group.changes().stream()
                        .map(advice -> words.toDo(advice.change()) + ": " + words.effect(advice) + ".")
                        .toList());
            }
            if (!group.after().isEmpty()) {
                text.paragraph(group.after());
            }
        }
        text.heading(2, style.say("heading.figures"))
                .table(style.heads("figure", "value", "low", "high"), figures(answer, style));
        return text.heading(2, style.say("heading.rests-on"))
                        .points(FindingDigest.grounds(style, fit.findings(), FitInputs.names(fit.knife())))
                        .toString()
                        .strip()
                + "\n";
    }

    /** Every number of the JSON by its path; low, value and high of one figure in one row. */
    private static List<List<String>> figures(EventFit fit, BenchStyle style) {
        Map<String, Map<String, String>> figures = new LinkedHashMap<>();
        numbers(FitJson.of(fit)).forEach((path, number) -> {
            int point = path.lastIndexOf('.');
            String end = path.substring(point + 1);
            boolean isBand = end.equals("low") || end.equals("value") || end.equals("high");
            figures.computeIfAbsent(isBand ? path.substring(0, point) : path, any -> new LinkedHashMap<>())
                    .put(isBand ? end : "value", style.fixed(number, 3));
        });
        List<List<String>> rows = new ArrayList<>();
        figures.forEach((path, ends) -> rows.add(List.of(
                ComparisonMarkdown.words(path),
                ends.get("value"),
                ends.getOrDefault("low", ""),
                ends.getOrDefault("high", ""))));
        return rows;
    }

    /** Numbers of a JSON text by their paths, such as pins 1.gap_across_mm.low, in their order. */
    static Map<String, Double> numbers(String json) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        Deque<int[]> counts = new ArrayDeque<>();
        Deque<String> path = new ArrayDeque<>();
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            String key = "";
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                boolean inArray = !counts.isEmpty() && counts.peek()[0] >= 0;
                switch (token) {
                    case FIELD_NAME -> key = parser.currentName();
                    case START_OBJECT, START_ARRAY -> {
                        path.addLast(inArray ? Integer.toString(++counts.peek()[0]) : key);
                        counts.push(new int[] {token == JsonToken.START_ARRAY ? 0 : -1});
                    }
                    case END_OBJECT, END_ARRAY -> {
                        counts.pop();
                        path.removeLast();
                    }
                    case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                        numbers.put(
                                where(path, inArray ? Integer.toString(++counts.peek()[0]) : key),
                                parser.getDoubleValue());
                    default -> {}
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return numbers;
    }

    private static String where(Deque<String> path, String key) {
        List<String> parts = new ArrayList<>(path);
        parts.add(key);
        return String.join(".", parts.subList(1, parts.size()));
    }
}
