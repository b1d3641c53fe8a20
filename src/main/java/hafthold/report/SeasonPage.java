package hafthold.report;

import hafthold.decide.Season;
import hafthold.decide.SeasonAnswer;
import hafthold.decide.Verdict;
import hafthold.knife.FitLimits;
import hafthold.source.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * A season as a page of its own: what to do today, the best weeks, the pictures, no script, nothing fetched.
 *
 * @param style language and units
 * @param limits classes of work, strictest first
 * @param workClass the class that was asked for
 * @param cautions what can hurt with the materials
 * @param command the command that repeats the run
 */
record SeasonPage(BenchStyle style, List<FitLimits> limits, String workClass, List<Finding> cautions, String command) {

    /** The whole page as HTML. */
    String of(Season season, List<List<ReportChart>> charts) {
        SeasonTables tables = new SeasonTables(style, season);
        SeasonSituation situation = new SeasonSituation(style);
        PageFrame frame = new PageFrame(style, situation.title(season));
        Markup page = frame.page();
        PageFrame.situation(page, situation.of(season));
        if (season.answers().size() > 1) {
            PageFrame.numbers(
                    page,
                    new NumbersTable(
                            style.say("season.caption.overview", "unit", style.unit()),
                            tables.overviewHead(),
                            tables.overview()));
        }
        for (int i = 0; i < season.answers().size(); i++) {
            answer(frame, season, season.answers().get(i), charts.get(i));
        }
        List<Finding> findings = new ArrayList<>(season.findings());
        findings.addAll(cautions);
        new Foundations(style, limits)
                .write(page, FindingDigest.of(style, findings, SeasonText.names(season)), workClass);
        frame.again(command);
        return frame.html();
    }

    private void answer(PageFrame frame, Season season, SeasonAnswer answer, List<ReportChart> charts) {
        SeasonWords words = new SeasonWords(style, season, answer);
        SeasonTables tables = new SeasonTables(style, season);
        Markup page = frame.page();
        page.open("section").element("h2", BenchStyle.capital(words.material()));
        List<String> finish = words.finish();
        page.open("p", "class", "lead verdict")
                .element("span", tables.call(answer), "class", "stamp " + stamp(answer))
                .text(" " + finish.get(0))
                .close("p");
        page.element("p", String.join(" ", finish.subList(1, finish.size())));
        page.element("p", String.join(" ", words.best()));
        page.element("p", new SeasonAllowance(style, season, answer).words());
        page.element("p", String.join(" ", new SeasonGlue(style, season, answer).sentences()));
        charts.forEach(frame::chart);
        page.element("p", new SeasonSituation(style).yearNote(season), "class", "note");
        if (!answer.cuts().isEmpty()) {
            cuts(page, "season.caption.cuts.today", tables, answer, true);
            if (!answer.anyWeek()) {
                cuts(page, "season.caption.cuts.best", tables, answer, false);
            }
        }
        page.close("section");
    }

    private void cuts(Markup page, String caption, SeasonTables tables, SeasonAnswer answer, boolean today) {
        PageFrame.numbers(
                page,
                new NumbersTable(
                        style.say(caption, "material", answer.scale().name(), "unit", style.unit()),
                        tables.cutsHead(),
                        tables.cuts(answer, today)));
    }

    /** The look of the stamp, from the quietest call to the loudest. */
    private static String stamp(SeasonAnswer answer) {
        return switch (answer.finish().call()) {
            case GO -> answer.today().verdict() == Verdict.STAYS ? "stamp-stays" : "stamp-care";
            case WAIT, CONDITION -> "stamp-change";
            case CHANGE -> "stamp-refuse";
            case OPEN -> "stamp-unknown";
        };
    }
}
