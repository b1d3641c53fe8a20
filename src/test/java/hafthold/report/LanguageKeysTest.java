package hafthold.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hafthold.air.Setting;
import hafthold.material.Property;
import hafthold.source.Evidence;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.table.BuildFile;
import hafthold.table.CautionTable;
import hafthold.table.ClaimFile;
import hafthold.table.CouponFile;
import hafthold.table.EventTable;
import hafthold.table.TableSet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The language file and the code hold the same keys: nothing is said that has no text, and no text is left over. */
class LanguageKeysTest {
    private static final Set<String> KEYS = Wording.english().texts().keySet();
    private static final List<String> CODE = sources();
    private static final String BENCH = "bench.";

    /** What is put before a key where it is said. */
    private static final List<String> PREFIXES = List.of("", BENCH, BENCH + "claim.", "claim.customer.");

    /** Literals that are the whole first argument of a call that says something, or the two sides of its choice. */
    private static final Pattern SAID = Pattern.compile("\\b(?:say|Message\\.of|Message\\.list|note)\\("
            + "(?:[^\";]{0,90}\\?)?\\s*\"([a-z][a-z0-9.-]*)\"(?:\\s*:\\s*\"([a-z][a-z0-9.-]*)\")?\\s*(?=[,)])");

    private static final Pattern LITERAL = Pattern.compile("\"([a-z0-9._ -]+)\"");
    private static final Pattern CONSTANT = Pattern.compile("\\b[A-Z][A-Z0-9_]+\\b");

    /** Notes are whole sentences, each under a key that stands in the code as it is. */
    private static final Pattern WHOLE =
            Pattern.compile("(note|rule|basis|phase|taken|usual-start|wood-class|rests-on|place)\\..*");

    @Test
    void everythingThatIsSaidHasItsText() {
        Set<String> lacking = new TreeSet<>();
        int said = 0;
        for (String code : CODE) {
            for (MatchResult call : SAID.matcher(code).results().toList()) {
                said++;
                Stream.of(call.group(1), call.group(2))
                        .filter(key -> key != null && !key.endsWith(".") && !has(key))
                        .forEach(lacking::add);
            }
        }
        assertEquals(Set.of(), lacking);
        assertTrue(said > 500, "calls found: " + said);
    }

    @Test
    void everyNoteThatTheCodeNamesHasItsText() {
        Set<String> lacking = new TreeSet<>(literals());
        lacking.removeIf(literal -> !WHOLE.matcher(literal).matches() || literal.endsWith(".") || has(literal));
        assertEquals(Set.of(), lacking);
    }

    @Test
    void noTextIsLeftOver() {
        Set<String> words = literals();
        Set<String> parts = new TreeSet<>(words);
        CODE.forEach(code -> CONSTANT.matcher(code)
                .results()
                .map(name -> name.group().toLowerCase(Locale.ROOT).replace('_', '-'))
                .forEach(parts::add));
        EventTable.read(TableSet.builtIn()).all().forEach(event -> parts.add(event.id()));
        InventedComparison.limits().forEach(limits -> parts.add(limits.name()));
        for (int number = 1; number <= 12; number++) {
            parts.add(Integer.toString(number));
        }
        Set<String> unused = new TreeSet<>(KEYS);
        unused.removeIf(key -> key.matches("(material|treatment|cut)\\..+"));
        unused.removeIf(
                key -> WHOLE.matcher(key).matches() ? words.contains(key) : isMadeOf(withoutBench(key), words, parts));
        assertEquals(Set.of(), unused);
    }

    @Test
    void hasATextForEverythingThatANoteMayName() {
        Arrays.stream(Evidence.values()).forEach(evidence -> assertTrue(has("evidence." + evidence.word())));
        Arrays.stream(Property.values())
                .filter(Property::setsMovement)
                .forEach(property ->
                        assertTrue(has("property." + property.word().replace('_', '-')), property.word()));
        Setting.all().forEach(setting -> assertTrue(has("setting." + setting.id()), setting.id()));
    }

    /** Files that say as little as they may: each thing they are silent of has its text, and no text is of anything else. */
    @Test
    void aBuildFileIsSilentOfWhatHasAText(@TempDir Path folder) throws IOException {
        String tang = "[tang]\nwidth = \"9 mm\"\n";
        String scales = tang + "[scales]\nmaterial = \"teak\"\n";
        String stack =
                "[knife]\nbuild = \"tang-stack\"\n" + tang + "[[parts]]\nmaterial = \"teak\"\nlength = \"60 mm\"\n";
        // Where the knife lives is asked by the command, since an option may say it.
        Set<String> told = new TreeSet<>(Set.of("build-file.knife.setting"));
        for (String build : List.of(scales, scales + "[[liners]]\n[[pins]]\n[made]\nmoisture = \"9 %\"\n", stack)) {
            Path file = folder.resolve("build.toml");
            Files.writeString(file, build);
            told.addAll(silent(BuildFile.read(file)));
        }
        String measured = "[[measured]]\non = 2026-08-10\nedges = \"0.2 mm shy\"\n";
        Path file = folder.resolve("returned.toml");
        Files.writeString(file, scales + "[bench]\nback = 2026-08-01\n" + measured);
        told.addAll(silent(ClaimFile.read(file).build()));
        Path strip = folder.resolve("coupons.toml");
        Files.writeString(strip, """
                [[coupon]]
                material = "teak"
                width = "60 mm"
                thickness = "6 mm"
                length = "120 mm"
                [[coupon.reading]]
                humidity = "33 %"
                weight = "20 g"
                [[coupon.reading]]
                humidity = "75 %"
                width = "60 mm"
                """);
        told.addAll(silent(CouponFile.read(strip).findings()));
        Set<String> texts = new TreeSet<>(KEYS);
        texts.removeIf(key -> !key.startsWith("build-file."));
        assertEquals(texts, told);
    }

    private static List<String> silent(BuildFile file) {
        return silent(file.findings());
    }

    private static List<String> silent(List<Finding> findings) {
        return findings.stream()
                .map(finding -> (Message.Text) finding.message())
                .map(silence -> ((Message.Text) silence.filling().get("what")).key())
                .toList();
    }

    /** What a language may say in place of a table's words must be in a table; so must the key that it goes by. */
    @Test
    void aLanguageOverridesOnlyWhatATableHas() {
        Set<String> tabled = new TreeSet<>();
        CautionTable.read(TableSet.builtIn()).all().forEach(caution -> tabled.add(tabledKey(caution.message())));
        EventTable.read(TableSet.builtIn()).all().forEach(event -> {
            tabled.add(tabledKey(event.name()));
            tabled.add(tabledKey(event.basis()));
        });
        Set<String> own = new TreeSet<>(PretendLanguage.WORDING.texts().keySet());
        own.removeIf(key -> !key.startsWith("table."));
        assertEquals(tabled, own);
        assertFalse(KEYS.stream().anyMatch(key -> key.startsWith("table.")), "for English the tables hold their words");
    }

    private static String tabledKey(Message message) {
        return ((Message.Tabled) message).key();
    }

    /** A key that starts with words of the code, and goes on with words, names of constants, ids and numbers. */
    private static boolean isMadeOf(String key, Set<String> starts, Set<String> parts) {
        for (int end = key.length(); end > 0; end--) {
            boolean atPoint = end == key.length() || key.charAt(end) == '.';
            String start = key.substring(0, end);
            if (atPoint
                    && (starts.contains(start) || starts.contains(start + "."))
                    && isRest(key.substring(end), parts)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isRest(String rest, Set<String> parts) {
        if (rest.isEmpty()) {
            return true;
        }
        for (int end = rest.length(); end > 1; end--) {
            boolean atPoint = end == rest.length() || rest.charAt(end) == '.';
            String part = rest.substring(1, end);
            if (atPoint && (parts.contains(part) || parts.contains("." + part)) && isRest(rest.substring(end), parts)) {
                return true;
            }
        }
        return false;
    }

    private static boolean has(String key) {
        return PREFIXES.stream().anyMatch(prefix -> KEYS.contains(prefix + key));
    }

    private static String withoutBench(String key) {
        return key.startsWith(BENCH) ? key.substring(BENCH.length()) : key;
    }

    /** Ids, words of files and parts of keys, with hyphens for what stands between words. */
    private static Set<String> literals() {
        Set<String> literals = new TreeSet<>();
        CODE.forEach(code -> LITERAL.matcher(code)
                .results()
                .map(literal -> literal.group(1).replace(' ', '-').replace('_', '-'))
                .forEach(literals::add));
        return literals;
    }

    private static List<String> sources() {
        List<String> sources = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                sources.add(
                        Files.readString(file).replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)^\\s*//.*$", ""));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return sources;
    }
}
