package hafthold.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * A pretend language whose every text stands in brackets, with what is filled in outside them: what is left outside
 * brackets does not come from its file.
 */
public final class PretendLanguage {
    /** Its code. */
    public static final String CODE = "qps";

    static final Wording WORDING = Wording.of(CODE).orElseThrow();
    private static final Pattern BRACKETED = Pattern.compile("\u27e6[^\u27e6\u27e7]*\u27e7");
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");
    private static final Pattern POINT = Pattern.compile("(?<!\\d)\\d{1,3}\\.\\d(?!\\d*-)");

    private PretendLanguage() {}

    /**
     * What a reader meets in a file of a report, under the names of its parts: its text, and of a page the labels and
     * descriptions that are only read aloud. What is quoted to be typed again is left out.
     */
    public static Map<String, String> seen(String file, String content) {
        Map<String, String> seen = new LinkedHashMap<>();
        if (!file.endsWith(".html") && !file.endsWith(".svg")) {
            seen.put(file, content.replace("\\", ""));
            return seen;
        }
        Document page = Jsoup.parse(content);
        page.select("pre, script, style").remove();
        seen.put(file, page.text());
        for (String attribute : List.of("aria-label", "alt", "title", "placeholder", "content", "data-label-family")) {
            for (Element told : page.select(
                    "[" + attribute + "]:not(meta[http-equiv], meta[name=viewport], meta[name=color-scheme])")) {
                seen.merge(file + " " + attribute, told.attr(attribute), (one, other) -> one + " | " + other);
            }
        }
        return seen;
    }

    /** The text without what stands in brackets, and without phrases that are data. */
    static String outside(String said, List<String> phrases) {
        String rest = Paragraph.plain(said).replaceAll("\\s+", " ");
        for (Matcher own = BRACKETED.matcher(rest); own.find(); own = BRACKETED.matcher(rest)) {
            rest = own.replaceAll(" ");
        }
        rest = rest.replaceAll("\\s+", " ");
        for (String phrase : phrases) {
            rest = rest.replace(Paragraph.plain(phrase), " ");
        }
        return rest;
    }

    /** Words, in their order, that stand outside brackets and are no data. */
    public static List<String> wordsOutside(String said, List<String> phrases) {
        return WORD.matcher(outside(said, phrases))
                .results()
                .map(MatchResult::group)
                .toList();
    }

    /** True where a number outside brackets is written with a point. */
    static boolean hasPoint(String outside) {
        return POINT.matcher(outside).find();
    }
}
