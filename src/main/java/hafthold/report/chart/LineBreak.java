package hafthold.report.chart;

import java.util.ArrayList;
import java.util.List;

/** Breaks words into lines at blanks. */
public final class LineBreak {
    private LineBreak() {}

    /** Lines of at most so many characters; a longer word gets a line of its own. Never empty. */
    public static List<String> lines(String text, int characters) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("[ \\t\\r\\n]+", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > characters) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
