package hafthold.report;

import hafthold.decide.EventFit;
import hafthold.decide.FullTangFit;
import hafthold.decide.KnifeFit;
import hafthold.decide.StackFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The rows of a bench note, to be set in a text or in the sections of a page with the same words. */
final class FitRows {
    private static final String LIVES = "lives";

    private final List<Row> rows = new ArrayList<>();

    /**
     * One row.
     *
     * @param id what it is about, the same in every language
     * @param lead what it is about, in words; empty where it goes on with the row before
     * @param words what is said
     */
    record Row(String id, String lead, String words) {}

    /** Everything that is said of a knife. */
    static FitRows of(EventFit answer, BenchStyle style) {
        KnifeFit fit = answer.fit();
        FitRows rows = new FitRows();
        rows.add(LIVES, style.say("row.lives"), FitText.lives(fit, style));
        if (fit instanceof FullTangFit full) {
            new FullTangWords(style, full, answer.events().isPresent()).write(rows);
        } else {
            new StackWords(style, (StackFit) fit).write(rows);
        }
        return rows;
    }

    /** Adds a row. */
    void add(String id, String lead, String words) {
        rows.add(new Row(id, lead, words));
    }

    /** Goes on with the row before. */
    void more(String words) {
        rows.add(new Row(rows.get(rows.size() - 1).id(), "", words));
    }

    List<Row> rows() {
        return List.copyOf(rows);
    }

    /** Writes the circumstances, which are read once. */
    void writeSituation(Markup page, Set<String> wanted) {
        write(page, "situation", wanted);
    }

    /** Writes the rows that are wanted as a list of terms; nothing where there are none. */
    void write(Markup page, Set<String> wanted) {
        write(page, "situation told", wanted);
    }

    private void write(Markup page, String look, Set<String> wanted) {
        List<Row> told = rows.stream().filter(row -> wanted.contains(row.id())).toList();
        if (told.isEmpty()) {
            return;
        }
        page.open("dl", "class", look);
        for (Row row : told) {
            if (!row.lead().isEmpty()) {
                page.element("dt", row.lead());
            }
            page.element("dd", row.words());
        }
        page.close("dl");
    }
}
