package hafthold.report;

import java.util.ArrayList;
import java.util.List;

/** Plain text broken into lines at blanks. */
final class Paragraph {
    /** A blank at which no line is broken; plain text prints it as an ordinary one. */
    static final char HOLD = '\u00a0';

    private Paragraph() {}

    /** The text with ordinary blanks only. */
    static String plain(String text) {
        return text.replace(HOLD, ' ');
    }

    /** Lines of at most a width; a longer word gets a line of its own. Never empty. */
    static List<String> lines(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(plain(line.toString()));
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(plain(line.toString()));
        return lines;
    }

    /** The text after a lead such as "- "; further lines are indented by the length of the lead. */
    static String hanging(String lead, String text, int width) {
        String indent = " ".repeat(lead.length());
        List<String> lines = lines(text, width - lead.length());
        return lead + String.join("\n" + indent, lines) + "\n";
    }
}
