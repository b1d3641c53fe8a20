package hafthold.report;

import hafthold.report.chart.LineBreak;
import java.util.List;
import java.util.regex.Pattern;

/** Plain text broken into lines at blanks. */
final class Paragraph {
    /** A blank at which no line is broken; plain text prints it as an ordinary one. */
    static final char HOLD = '\u00a0';

    private static final Pattern UNIT = Pattern.compile("(\\d) (mm|%|°C|thou|points)");

    private Paragraph() {}

    /** The text with every number held to its unit. */
    static String held(String text) {
        return UNIT.matcher(text).replaceAll("$1" + HOLD + "$2");
    }

    /** The text with ordinary blanks only. */
    static String plain(String text) {
        return text.replace(HOLD, ' ');
    }

    /** Lines of at most a width; a longer word gets a line of its own. Never empty. */
    static List<String> lines(String text, int width) {
        return LineBreak.lines(text, width).stream().map(Paragraph::plain).toList();
    }

    /** The text after a lead such as "- "; further lines are indented by the length of the lead. */
    static String hanging(String lead, String text, int width) {
        String indent = " ".repeat(lead.length());
        List<String> lines = lines(text, width - lead.length());
        return lead + String.join("\n" + indent, lines) + "\n";
    }
}
