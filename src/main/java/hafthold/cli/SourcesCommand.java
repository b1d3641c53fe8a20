package hafthold.cli;

import hafthold.report.Listing;
import hafthold.source.Source;
import hafthold.table.SourceTable;
import hafthold.table.SourceUse;
import hafthold.table.TableSet;
import hafthold.table.UnknownIdException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists where figures and equations come from, or what rests on one source. */
@Command(
        name = "sources",
        mixinStandardHelpOptions = true,
        description = "Lists where every figure and equation comes from, or shows what rests on one source.")
final class SourcesCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Mixin
    private TableOptions tables;

    @Mixin
    private ListingOutput output;

    @Parameters(arity = "0..1", paramLabel = "SOURCE", description = "key of one source")
    private String key;

    @Override
    public void run() {
        TableSet set = tables.open();
        Map<String, Source> sources = SourceTable.read(set);
        Map<String, List<String>> uses = SourceUse.read(set);
        PrintWriter out = spec.commandLine().getOut();
        if (key == null) {
            Listing.Builder listing =
                    Listing.of("sources", "key", "type", "authors", "year", "title", "locator", "seen", "uses");
            sources.values()
                    .forEach(source -> listing.row(
                            source.key(),
                            source.type(),
                            source.authors(),
                            source.year(),
                            source.title(),
                            source.locator(),
                            source.seen(),
                            uses.getOrDefault(source.key(), List.of()).size()));
            output.print(out, listing.build());
            return;
        }
        Source source = sources.get(key);
        if (source == null) {
            throw new UnknownIdException("source", key, sources.keySet(), "hafthold sources lists them all");
        }
        if (output.isText()) {
            out.println(source.authors() + (source.year().isEmpty() ? "" : " (" + source.year() + ")") + ": "
                    + source.title() + ". " + source.locator() + ". (" + source.type() + ", " + source.seen() + ")");
            out.println();
        }
        Listing.Builder listing = Listing.of("uses", "figure");
        uses.getOrDefault(key, List.of()).forEach(use -> listing.row(use));
        output.print(out, listing.build());
    }
}
