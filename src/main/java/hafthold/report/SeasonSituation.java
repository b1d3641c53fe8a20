package hafthold.report;

import hafthold.decide.Season;
import hafthold.knife.BenchStock;
import hafthold.knife.Blank;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a season was worked out for, in words.
 *
 * @param style language and units
 */
record SeasonSituation(BenchStyle style) {

    /** What and for where. */
    String title(Season season) {
        String place = style.tell(season.conditions().destination().name());
        return season.answers().size() == 1
                ? style.say(
                        "season.title",
                        "material",
                        new SeasonWords(style, season, season.answers().get(0)).material(),
                        "place",
                        place)
                : style.say("season.title.several", "place", place);
    }

    /** Terms and what they are. */
    Map<String, String> of(Season season) {
        SituationWords words = new SituationWords(style);
        Map<String, String> told = new LinkedHashMap<>();
        told.put(style.say("season.row.workshop"), style.tell(season.shop().rule()));
        told.put(style.say("season.row.blank"), stock(season.stock()));
        told.put(style.say("row.lives"), words.lives(season.conditions().destination()));
        told.put(
                style.say("row.handle"),
                style.joined(
                        "semicolon",
                        List.of(
                                words.handle(season.conditions().handle()),
                                season.conditions().finish().name())));
        told.put(
                style.say("row.steps"),
                style.say("situation.steps") + " " + style.say("season.steps", "work", style.work(season.held())));
        return told;
    }

    /** How the table of the weeks is read. */
    String yearNote(Season season) {
        List<String> notes = new ArrayList<>();
        notes.add(style.say("season.year.note"));
        if (season.stock().reading().isPresent()) {
            notes.add(style.say("season.year.note.read"));
        }
        if (season.stock().gluedDays() > 0) {
            notes.add(style.say("season.year.note.glued"));
        }
        return String.join(" ", notes);
    }

    private String stock(BenchStock stock) {
        List<String> told = new ArrayList<>();
        told.add(blank(stock.blank()));
        stock.reading()
                .ifPresent(
                        read -> told.add(style.say("season.stock.read", "moisture", style.percent(read.fraction()))));
        if (stock.gluedDays() > 0) {
            told.add(style.say("season.stock.glued", "span", style.counted("day", stock.gluedDays())));
        }
        return style.joined("semicolon", told);
    }

    private String blank(Blank blank) {
        List<String> open = new ArrayList<>();
        open.add(style.say(blank.open().bothFaces() ? "season.open.faces" : "season.open.face"));
        if (blank.open().edges()) {
            open.add(style.say("season.open.edges"));
        }
        if (blank.open().ends()) {
            open.add(style.say("season.open.ends"));
        }
        return style.say(
                "season.blank.kept",
                "thickness",
                style.dimension(blank.thickness()),
                "width",
                style.dimension(blank.width()),
                "length",
                style.dimension(blank.length()),
                "open",
                style.joined("comma", open));
    }
}
