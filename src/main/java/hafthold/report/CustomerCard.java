package hafthold.report;

import hafthold.decide.Comparison;
import hafthold.report.CardSheet.Section;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A page for whoever gets the knife, in plain words: what its handle does in his town, what is normal, when to call.
 * With more than one handle it is a quote: the same home, a column each.
 *
 * @param order whom it is for
 * @param offered the handles, one to three, in the order they were asked for
 * @param why plain wood, stabilised wood and a composite in the same home; empty on a quote
 */
public record CustomerCard(CardOrder order, Comparison offered, Optional<Comparison> why) {
    /** Columns a page has room for. */
    public static final int MOST_OPTIONS = 3;

    /** Rejects a card without or with too many handles. */
    public CustomerCard {
        int count = offered.ranked().size();
        if (count < 1 || count > MOST_OPTIONS) {
            throw new IllegalArgumentException("a card has room for 1 to " + MOST_OPTIONS + " handles, got " + count);
        }
    }

    /**
     * Text by file name: NAME.json, .md, .txt and .html.
     *
     * @param name such as card
     */
    public Map<String, String> files(String name) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put(name + ".json", json());
        files.put(name + ".md", markdown());
        files.put(name + ".txt", text());
        files.put(name + ".html", html());
        return files;
    }

    /** As a page to print. */
    public String html() {
        return CardPage.of(sheet(), isQuote());
    }

    /** As plain text. */
    public String text() {
        return CardText.of(sheet());
    }

    /** As markdown. */
    public String markdown() {
        return CardMarkdown.of(sheet());
    }

    /** As one JSON object. */
    public String json() {
        return CardJson.of(this);
    }

    boolean isQuote() {
        return offered.ranked().size() > 1;
    }

    List<CardHandle> handles() {
        return handles(offered);
    }

    private List<CardHandle> handles(Comparison comparison) {
        return comparison.ranked().stream()
                .map(answer -> new CardHandle(order, answer))
                .toList();
    }

    private Wording wording() {
        return order.wording();
    }

    String town() {
        return order.town()
                .or(() -> handles().get(0).stays().last())
                .orElseGet(() -> new BenchStyle(order.units(), wording())
                        .tell(offered.placeName())
                        .split(",", -1)[0]);
    }

    String knife() {
        return order.knife().orElseGet(() -> wording().say("card.knife"));
    }

    private String home() {
        String key = "setting." + offered.settingId();
        return wording().has(key) ? wording().say(key) : offered.settingId().replace('-', ' ');
    }

    CardSheet sheet() {
        return new CardSheet(
                wording().language(),
                wording()
                        .say("card.title" + (isQuote() ? ".quote" : "") + onItsWay(), "knife", knife(), "town", town()),
                lines(),
                isQuote() ? quote() : card(),
                wording().say("card.footer"));
    }

    /** The end of keys whose text is another for a knife that goes from place to place. */
    private String onItsWay() {
        return handles().get(0).stays().isGiven() ? ".stays" : "";
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        order.customer().ifPresent(name -> lines.add(wording().say("card.for", "customer", name)));
        if (!isQuote()) {
            lines.add(wording().say("card.handle", "material", handles().get(0).name()));
        }
        lines.add(wording().say("card.home", "setting", home()));
        order.date().ifPresent(date -> lines.add(wording().date(date)));
        order.shop()
                .name()
                .ifPresent(name -> lines.add(order.shop()
                        .contact()
                        .map(contact -> wording().say("card.shop.contact", "shop", name, "contact", contact))
                        .orElseGet(() -> wording().say("card.shop", "shop", name))));
        return lines;
    }

    private List<Section> card() {
        CardHandle handle = handles().get(0);
        List<String> told = new ArrayList<>(List.of(handle.verdict()));
        told.addAll(handle.besides());
        List<Section> sections = new ArrayList<>();
        sections.add(new Section(
                "does",
                wording().say("year.heading" + onItsWay(), "town", town()),
                Optional.of(handle.number()),
                told,
                List.of(),
                Optional.of(new CardCharts(order).year(handle))));
        if (handle.stays().isGiven()) {
            sections.add(handle.stays().section());
        }
        sections.add(normal(handle));
        sections.add(call(handle));
        List<String> timing = new ArrayList<>(handle.timing().sentences());
        handle.timing().bestMonth().ifPresent(timing::add);
        sections.add(Section.of("timing", wording().say("time.heading"), timing, List.of()));
        sections.add(section("care", List.of(handle)));
        sections.add(section("dont", List.of(handle)));
        sections.add(Section.of(
                "promise",
                wording().say("promise.heading"),
                List.of(handle.promise().orElseGet(() -> wording().say("promise.none"))),
                List.of()));
        why.ifPresent(comparison -> sections.add(composites(handles(comparison))));
        sections.add(mind());
        return sections;
    }

    private List<Section> quote() {
        List<Section> sections = new ArrayList<>();
        List<CardHandle> handles = handles();
        sections.add(new Section(
                "does",
                wording().say("quote.heading"),
                Optional.of(wording().say("quote.lead" + onItsWay(), "town", town())),
                List.of(),
                List.of(),
                Optional.of(new CardCharts(order)
                        .beside(
                                "options",
                                wording().say("chart.quote.title"),
                                handles,
                                wording().say("chart.quote.reading")))));
        for (int i = 0; i < handles.size(); i++) {
            sections.add(option(i + 1, handles.get(i)));
        }
        sections.add(normal(handles.get(0)));
        sections.add(section("dont", handles));
        sections.add(Section.of("why", wording().say("why.heading"), wording().list("why"), List.of()));
        sections.add(mind());
        return sections;
    }

    private Section option(int number, CardHandle handle) {
        List<String> told = new ArrayList<>(List.of(handle.verdict()));
        told.addAll(handle.besides());
        told.addAll(handle.timing().sentences());
        handle.promise().ifPresent(promise -> told.add(wording().say("promise.line", "promise", promise)));
        handle.price().ifPresent(price -> told.add(wording().say("quote.price", "price", price)));
        return new Section(
                "option-" + number,
                wording().say("quote.option", "number", Integer.toString(number), "material", handle.nameAsHeading()),
                Optional.of(handle.number()),
                told,
                handle.family("care"),
                Optional.empty());
    }

    private Section normal(CardHandle handle) {
        List<String> said = new ArrayList<>();
        said.add(wording()
                .say(
                        "normal.step",
                        "proud",
                        handle.bounds().normal(EdgeStep.Side.PROUD).words(),
                        "shy",
                        handle.bounds().normal(EdgeStep.Side.SHY).words()));
        said.add(wording().say(handle.isOnce() ? "normal.once" : "normal.seasons"));
        said.add(wording().say("normal.gap", "gap", handle.bounds().normalGap().words()));
        said.add(wording().say("normal.between"));
        if (!isQuote()) {
            said.addAll(handle.family("normal"));
        }
        return Section.of("normal", wording().say("normal.heading"), said, List.of());
    }

    private Section call(CardHandle handle) {
        List<String> points = new ArrayList<>();
        points.add(wording()
                .say(
                        "call.step",
                        "proud",
                        handle.bounds().alarm(EdgeStep.Side.PROUD).words(),
                        "shy",
                        handle.bounds().alarm(EdgeStep.Side.SHY).words()));
        points.add(wording().say("call.gap", "gap", handle.bounds().alarmGap().words()));
        points.addAll(wording().list("call"));
        return Section.of("call", wording().say("call.heading"), List.of(), points);
    }

    /** What goes for every knife, then what goes for the families of these. */
    private Section section(String key, List<CardHandle> handles) {
        Set<String> points = new LinkedHashSet<>(wording().list(key));
        handles.forEach(handle -> points.addAll(handle.family(key)));
        return Section.of(key, wording().say(key + ".heading"), List.of(), List.copyOf(points));
    }

    private Section composites(List<CardHandle> handles) {
        return new Section(
                "why",
                wording().say("why.heading"),
                Optional.empty(),
                wording().list("why"),
                List.of(),
                Optional.of(new CardCharts(order)
                        .beside(
                                "composites",
                                wording().say("chart.why.title"),
                                handles,
                                wording().say("chart.why.reading"))));
    }

    private Section mind() {
        List<String> points = CardCautions.among(offered.findings()).stream()
                .map(caution -> wording().say(caution.key()))
                .toList();
        return Section.of("mind", wording().say("mind.heading"), List.of(), points);
    }
}
