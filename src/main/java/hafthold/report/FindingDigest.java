package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.decide.Comparison.Ranked;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One choice that answers rest on, told once for everything it concerns.
 *
 * @param kind sort of choice
 * @param text one plain sentence
 * @param subjects names of what it concerns, in the order met, each once
 */
record FindingDigest(Finding.Kind kind, String text, List<String> subjects) {
    private static final int NAMED_SUBJECTS = 3;
    private static final String EVERYTHING = "all";

    FindingDigest {
        subjects = List.copyOf(subjects);
    }

    /** Every finding of a comparison: by kind, those common to all answers first; equal sentences are told once. */
    static List<FindingDigest> of(BenchStyle style, Comparison comparison) {
        return of(style, comparison, comparison.ranked());
    }

    /** The findings common to all answers and those of some of them. */
    static List<FindingDigest> of(BenchStyle style, Comparison comparison, List<Ranked> some) {
        Map<String, String> names = new LinkedHashMap<>();
        List<Finding> all = new ArrayList<>(comparison.findings());
        for (Ranked answer : some) {
            names.put(answer.year().scale().id(), answer.year().scale().name());
            all.addAll(answer.year().grounds().findings());
        }
        return of(style, all, names);
    }

    /**
     * Findings by kind, those for everything first; equal sentences are told once.
     *
     * @param names names for people by the ids that findings speak of
     */
    static List<FindingDigest> of(BenchStyle style, List<Finding> all, Map<String, String> names) {
        Map<String, FindingDigest> merged = new LinkedHashMap<>();
        for (Finding.Kind kind : Finding.Kind.values()) {
            all.stream().filter(finding -> finding.kind() == kind).forEach(finding -> {
                String text = style.tell(finding.message());
                String subject = worded(style, finding.subject(), names);
                merged.merge(kind + text, new FindingDigest(kind, text, List.of(subject)), FindingDigest::with);
            });
        }
        return merged.values().stream()
                .sorted(Comparator.comparing(FindingDigest::kind).thenComparing(digest -> !digest.isGeneral()))
                .toList();
    }

    /** What an answer rests on, a line each: every finding but cautions, each once. */
    static List<String> grounds(BenchStyle style, List<Finding> findings, Map<String, String> names) {
        return findings.stream()
                .filter(finding -> finding.kind() != Finding.Kind.CAUTION)
                .map(finding -> worded(style, finding.subject(), names) + ": " + style.tell(finding.message()))
                .distinct()
                .toList();
    }

    /** The subjects in words: all of up to three, else the first two and a count. */
    String subjectWords(BenchStyle style) {
        List<String> words = subjects.stream()
                .map(subject -> subject.equals(EVERYTHING) ? style.subject(subject) : subject)
                .toList();
        if (words.size() <= NAMED_SUBJECTS) {
            return style.joined("semicolon", words);
        }
        int named = NAMED_SUBJECTS - 1;
        return style.say(
                "subjects.more",
                "named",
                style.joined("semicolon", words.subList(0, named)),
                "count",
                Integer.toString(words.size() - named));
    }

    /** The subjects as the lead of a sentence, such as "teak: "; empty where it concerns everything. */
    String lead(BenchStyle style) {
        return isGeneral() ? "" : subjectWords(style) + ": ";
    }

    private boolean isGeneral() {
        return subjects.equals(List.of(EVERYTHING));
    }

    /** The heading a kind stands under. */
    static String headingOf(BenchStyle style, Finding.Kind kind) {
        return style.say("kind." + style.keyOf(kind));
    }

    /**
     * What a finding is about in words: materials by their names; words of ours, settings, families and events as the
     * language has them; option names and keys of files as they are typed.
     */
    static String worded(BenchStyle style, String subject, Map<String, String> names) {
        if (names.containsKey(subject)) {
            return names.get(subject);
        }
        return subject.equals(EVERYTHING) || subject.startsWith("-") ? subject : style.subject(subject);
    }

    private FindingDigest with(FindingDigest other) {
        List<String> both = new ArrayList<>(subjects);
        other.subjects.stream().filter(subject -> !both.contains(subject)).forEach(both::add);
        return new FindingDigest(kind, text, both);
    }
}
