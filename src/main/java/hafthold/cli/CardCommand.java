package hafthold.cli;

import hafthold.decide.Comparison;
import hafthold.decide.PlaceComparison.Candidate;
import hafthold.knife.Workshop;
import hafthold.material.Family;
import hafthold.material.ScaleMaterial;
import hafthold.report.BenchStyle;
import hafthold.report.CardOrder;
import hafthold.report.CustomerCard;
import hafthold.simulate.Conditions;
import hafthold.simulate.Sampling;
import hafthold.table.LimitTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import hafthold.table.WorkshopFile;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the page that goes to the customer. */
@Command(
        name = "card",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Writes a page for the customer in plain words: what the handle does in his town, what is normal,"
                + " when to call. With two or three materials, or with --quote, a quote side by side.")
final class CardCommand implements Runnable {
    private static final String USUAL_WOOD = "walnut-black";
    private static final String STABILISED = "+lumen-resin";
    private static final String USUAL_COMPOSITE = "linen-phenolic-le";

    /** What may stand for a composite that stays put. */
    private static final Set<Family> STEADY = Set.of(Family.LAMINATE, Family.POLYMER);

    @Spec
    private CommandSpec spec;

    @Option(names = "--customer", paramLabel = "NAME", description = "whom the card is for")
    private String customer;

    @Option(names = "--town", paramLabel = "NAME", description = "what the customer calls his town")
    private String town;

    @Option(names = "--knife", paramLabel = "NAME", description = "what the knife is, such as \"hunting knife\"")
    private String knife;

    @Option(
            names = "--date",
            paramLabel = "DATE",
            description = "day it is handed over, such as 2027-03-01; times are then given as dates too")
    private LocalDate date;

    @Option(
            names = "--shop",
            paramLabel = "FILE",
            description = "your name, contact, promises and prices, as a TOML file; --example prints one")
    private Path shop;

    @Option(names = "--example", description = "prints a commented file for --shop")
    private boolean example;

    @Option(
            names = "--quote",
            description = "with one material: beside it the same wood stabilised, and a composite (for what is no wood:"
                    + " black walnut, plain and stabilised)")
    private boolean quote;

    @Mixin
    private StyleOptions styles;

    @Mixin
    private OutputOptions output;

    @Mixin
    private OrderOptions order;

    @Mixin
    private RackOptions rack;

    @Mixin
    private TableOptions tables;

    @Override
    public void run() {
        if (example) {
            spec.commandLine().getOut().print(WorkshopFile.example());
            return;
        }
        OutputFormat form = output.form("card", OutputFormat.TEXT, OutputFormat.MARKDOWN, OutputFormat.JSON);
        BenchStyle style = styles.style();
        Workshop workshop = shop == null ? Workshop.UNNAMED : WorkshopFile.read(shop);
        TableSet set = tables.open();
        MaterialLibrary library = MaterialLibrary.read(set);
        Conditions conditions = order.conditions(set, library);
        CardOrder cardOrder = new CardOrder(
                Optional.ofNullable(customer),
                Optional.ofNullable(town)
                        .or(() -> order.where().isOfLogger()
                                ? Optional.of(style.words().say("card.home-town"))
                                : Optional.empty()),
                Optional.ofNullable(knife),
                Optional.ofNullable(date),
                workshop,
                LimitTable.read(set),
                style.units(),
                style.words());
        List<Candidate> candidates = candidates(library);
        CustomerCard card = of(cardOrder, set, library, conditions, candidates);
        String name = candidates.size() > 1 ? "quote" : "card";
        spec.commandLine()
                .getOut()
                .print(
                        switch (form) {
                            case TEXT -> card.text();
                            case MARKDOWN -> card.markdown();
                            case JSON, CSV -> card.json();
                        });
        output.folder().ifPresent(folder -> spec.commandLine().getErr().println("card: " + write(card, folder, name)));
    }

    /**
     * Works out a card.
     *
     * @param candidates the handles it is about, in order
     */
    static CustomerCard of(
            CardOrder order, TableSet set, MaterialLibrary library, Conditions conditions, List<Candidate> candidates) {
        Comparison offered = compared(set, conditions, candidates);
        if (candidates.size() > 1) {
            return new CustomerCard(order, offered, Optional.empty());
        }
        List<Candidate> beside = new ArrayList<>(beside(candidates.get(0), library));
        if (!STEADY.contains(beside.get(beside.size() - 1).material().family())) {
            beside.set(beside.size() - 1, usual(library.find(USUAL_COMPOSITE), Optional.empty()));
        }
        return new CustomerCard(order, offered, Optional.of(compared(set, conditions, beside)));
    }

    private static Comparison compared(TableSet set, Conditions conditions, List<Candidate> candidates) {
        return new ComparisonRun(set, conditions, candidates, List.of(), Optional.empty(), Sampling.USUAL)
                .comparison()
                .inOrder(candidates.stream()
                        .map(candidate -> candidate.material().id())
                        .toList());
    }

    /** Writes every form of a card, whole or not at all; returns the page. */
    static Path write(CustomerCard card, Path folder, String name) {
        OutputOptions.write(folder, card.files(name));
        return folder.resolve(name + ".html");
    }

    private List<Candidate> candidates(MaterialLibrary library) {
        if (rack.firstNamed(library).isEmpty()) {
            throw new WrongUsageException("which handle? Name its --material; 'hafthold materials' lists them");
        }
        List<Candidate> candidates = rack.candidates(library);
        if (quote && candidates.size() == 1) {
            return beside(candidates.get(0), library);
        }
        if (candidates.size() > CustomerCard.MOST_OPTIONS) {
            throw new WrongUsageException("a card has room for " + CustomerCard.MOST_OPTIONS + " handles, got "
                    + candidates.size() + "; name fewer materials or cuts");
        }
        return candidates;
    }

    /** Plain wood, the same wood stabilised, and a composite; the handle itself is one of them where it can be. */
    static List<Candidate> beside(Candidate handle, MaterialLibrary library) {
        ScaleMaterial material = handle.material();
        String id = material.id();
        boolean plain = material.family() == Family.WOOD;
        boolean treated = material.family() == Family.TREATED_WOOD && id.contains("+");
        String wood = plain ? id : treated ? id.substring(0, id.indexOf('+')) : USUAL_WOOD;
        Candidate bare = plain ? handle : usual(library.find(wood), treated ? Optional.of(handle) : Optional.empty());
        Candidate stabilised = treated ? handle : new Candidate(library.find(wood + STABILISED), bare.cut());
        Candidate composite = plain || treated ? usual(library.find(USUAL_COMPOSITE), Optional.empty()) : handle;
        return List.of(bare, stabilised, composite);
    }

    private static Candidate usual(ScaleMaterial material, Optional<Candidate> cutLike) {
        return new Candidate(material, cutLike.map(Candidate::cut).orElse(material.usualCut()));
    }
}
