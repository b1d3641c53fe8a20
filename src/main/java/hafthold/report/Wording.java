package hafthold.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Everything that a report or a card says, from one file a language: {@code messages_LANGUAGE.properties}. A text names
 * what is put into it in braces, such as <code>{month}</code>; there is nothing else to know for a translator.
 */
public final class Wording {
    private static final Pattern HOLE = Pattern.compile("\\{([a-z-]+)}");
    private static final Pattern LANGUAGE = Pattern.compile("[a-z]{2,3}");
    private static final int MONTHS = 12;
    private static final String ENGLISH = "en";

    private final String language;
    private final Map<String, String> texts;

    private Wording(String language, Map<String, String> texts) {
        this.language = language;
        this.texts = texts;
    }

    /** The texts of a language, by its two- or three-letter code; empty where there is no file for it. */
    public static Optional<Wording> of(String language) {
        return language.equals(ENGLISH) ? Optional.of(english()) : read(language);
    }

    private static Optional<Wording> read(String language) {
        if (!LANGUAGE.matcher(language).matches()) {
            return Optional.empty();
        }
        try (InputStream file = Wording.class.getResourceAsStream("messages_" + language + ".properties")) {
            return file == null ? Optional.empty() : Optional.of(new Wording(language, read(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> read(InputStream file) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = new InputStreamReader(file, StandardCharsets.UTF_8)) {
            properties.load(reader);
        }
        Map<String, String> texts = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
        return texts;
    }

    /** English, which always is there. */
    public static Wording english() {
        return English.TEXTS;
    }

    /** Read once, when first asked for. */
    private static final class English {
        private static final Wording TEXTS = read(ENGLISH).orElseThrow();
    }

    /** Its code. */
    String language() {
        return language;
    }

    /** Every text by its key. */
    Map<String, String> texts() {
        return Map.copyOf(texts);
    }

    /**
     * A text with its holes filled.
     *
     * @param key key in the file
     * @param filling names of holes and what goes into them, in turn
     * @throws IllegalStateException when the language lacks the key, or a hole nothing to fill it
     */
    public String say(String key, String... filling) {
        Map<String, String> named = new HashMap<>();
        for (int i = 0; i + 1 < filling.length; i += 2) {
            named.put(filling[i], filling[i + 1]);
        }
        return say(key, named);
    }

    /** Likewise, with what goes into the holes by their names. */
    String say(String key, Map<String, String> filling) {
        String text = texts.get(key);
        if (text == null) {
            throw new IllegalStateException("the language file '" + language + "' has no text for " + key);
        }
        Matcher hole = HOLE.matcher(text);
        StringBuilder said = new StringBuilder();
        while (hole.find()) {
            String words = filling.get(hole.group(1));
            if (words == null) {
                throw new IllegalStateException("the text " + key + " of the language file '" + language + "' wants {"
                        + hole.group(1) + "}, which is not given");
            }
            hole.appendReplacement(said, Matcher.quoteReplacement(words));
        }
        return hole.appendTail(said).toString();
    }

    /** Whether the language has a text of its own for this. */
    boolean has(String key) {
        return texts.containsKey(key);
    }

    /** A list of texts: KEY.1, KEY.2 and so on; empty where there is none. */
    List<String> list(String key) {
        List<String> list = new ArrayList<>();
        for (int i = 1; has(key + "." + i); i++) {
            list.add(say(key + "." + i));
        }
        return list;
    }

    /** A number as Java prints it, such as 0.15, in the language's style. */
    String number(String plain) {
        return plain.replace("-", say("number.minus")).replace(".", say("number.decimal"));
    }

    /** Name of month 1 to 12. */
    String month(int month) {
        return say("month." + month);
    }

    /** A day as the language writes it. */
    String date(LocalDate date) {
        return say(
                "date",
                "day",
                Integer.toString(date.getDayOfMonth()),
                "month",
                month(date.getMonthValue()),
                "year",
                Integer.toString(date.getYear()));
    }

    /** Short names of the twelve months. */
    List<String> shortMonths() {
        List<String> months = new ArrayList<>();
        for (int month = 1; month <= MONTHS; month++) {
            months.add(say("month.short." + month));
        }
        return months;
    }
}
