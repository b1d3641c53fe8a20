package hafthold.source;

import hafthold.quantity.Band;
import hafthold.quantity.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Something to be said, whatever the language: the sums give a key and values, a {@link Language} puts them into words
 * where a report is written. Messages that say the same are equal.
 */
public sealed interface Message {

    /** The words in a language. */
    String in(Language language);

    /** A text of the language without holes. */
    static Message of(String key) {
        return new Text(key, Map.of());
    }

    /**
     * A text of the language.
     *
     * @param filling what goes into its holes, by their names
     */
    static Message of(String key, Map<String, Message> filling) {
        return new Text(key, filling);
    }

    /** Words of the user or of his files, and ids: alike in every language. */
    static Message verbatim(String words) {
        return new Verbatim(words);
    }

    /** Words of a built-in table, unless the language has a text of its own under the key. */
    static Message tabled(String key, String words) {
        return new Tabled(key, words);
    }

    /** A number that is rounded to so many decimals. */
    static Message number(double number, int decimals) {
        return new Numeral(number, decimals);
    }

    /** Likewise, with both ends of its band behind it. */
    static Message number(Band band, int decimals) {
        return new Range(band, decimals);
    }

    /** A dimension of a knife, with its unit. */
    static Message size(Length length) {
        return new Size(length);
    }

    /** A movement to a hundredth of a millimetre with its band, metres. */
    static Message movement(Band metres) {
        return new Movement(metres);
    }

    /** A day of the year, month 1 to 12. */
    static Message day(int month, int dayOfMonth) {
        return of("bench.day-of-month", Map.of("day", number(dayOfMonth, 0), "month", of("month." + month)));
    }

    /** Several one after another, with what stands under a key between them. */
    static Message list(String separatorKey, List<Message> parts) {
        return new Sequence(separatorKey, parts);
    }

    /** See {@link #of(String, Map)}. */
    record Text(String key, Map<String, Message> filling) implements Message {
        /** Keeps its own copy. */
        public Text {
            filling = Map.copyOf(filling);
        }

        @Override
        public String in(Language language) {
            Map<String, String> words = new LinkedHashMap<>();
            filling.forEach((hole, message) -> words.put(hole, message.in(language)));
            return language.say(key, words);
        }
    }

    /** See {@link #verbatim}. */
    record Verbatim(String words) implements Message {
        @Override
        public String in(Language language) {
            return words;
        }
    }

    /** See {@link #tabled}. */
    record Tabled(String key, String words) implements Message {
        @Override
        public String in(Language language) {
            return language.sayOr(key, words);
        }
    }

    /** See {@link #number(double, int)}. */
    record Numeral(double number, int decimals) implements Message {
        @Override
        public String in(Language language) {
            return language.number(number, decimals);
        }
    }

    /** See {@link #number(Band, int)}. */
    record Range(Band band, int decimals) implements Message {
        @Override
        public String in(Language language) {
            return language.number(band, decimals);
        }
    }

    /** See {@link #size}. */
    record Size(Length length) implements Message {
        @Override
        public String in(Language language) {
            return language.size(length);
        }
    }

    /** See {@link #movement}. */
    record Movement(Band metres) implements Message {
        @Override
        public String in(Language language) {
            return language.movement(metres);
        }
    }

    /** See {@link #list}. */
    record Sequence(String separatorKey, List<Message> parts) implements Message {
        /** Keeps its own copy. */
        public Sequence {
            parts = List.copyOf(parts);
        }

        @Override
        public String in(Language language) {
            return String.join(
                    language.say(separatorKey, Map.of()),
                    parts.stream().map(part -> part.in(language)).toList());
        }
    }
}
