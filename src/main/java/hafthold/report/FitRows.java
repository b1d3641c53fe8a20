package hafthold.report;

import hafthold.decide.FullTangFit;
import hafthold.decide.KnifeFit;
import hafthold.decide.StackFit;
import java.util.List;
import java.util.function.Predicate;

/**
 * The rows of a bench note, to be set in a page with the same words.
 *
 * @param rows lead and words of each; an empty lead goes on with the row before
 */
record FitRows(List<List<String>> rows) {

    /** The rows that {@link FitText} prints for a knife. */
    static FitRows of(KnifeFit fit, LengthUnits units) {
        TextColumns columns = new TextColumns(1, 1);
        columns.row("Lives", FitText.lives(fit));
        if (fit instanceof FullTangFit full) {
            new FullTangWords(units, full).write(columns);
        } else {
            new StackWords(units, (StackFit) fit).write(columns);
        }
        return new FitRows(columns.rows());
    }

    /** Writes the circumstances, which are read once. */
    void writeSituation(Markup page, Predicate<String> wanted) {
        write(page, "situation", wanted);
    }

    /** Writes the rows whose lead is wanted as a list of terms; nothing where there are none. */
    void write(Markup page, Predicate<String> wanted) {
        write(page, "situation told", wanted);
    }

    private void write(Markup page, String look, Predicate<String> wanted) {
        boolean any = rows.stream().map(row -> row.get(0).strip()).anyMatch(wanted);
        if (!any) {
            return;
        }
        page.open("dl", "class", look);
        boolean writes = false;
        for (List<String> row : rows) {
            String lead = row.get(0).strip();
            writes = lead.isEmpty() ? writes : wanted.test(lead);
            if (writes && !lead.isEmpty()) {
                page.element("dt", lead);
            }
            if (writes) {
                page.element("dd", row.get(1));
            }
        }
        page.close("dl");
    }
}
