package hafthold.cli;

import hafthold.quantity.Length;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.simulate.Conditions;
import hafthold.simulate.Destination;
import hafthold.source.Finding;
import hafthold.source.Message;
import hafthold.table.FinishTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.PlaceTable;
import hafthold.table.TableSet;
import hafthold.table.UsualBuild;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where a handle goes and how large it is; the state it is made in comes from the workshop's year. */
final class SeasonOrder {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Mixin
    private WhereOptions where;

    @Option(
            names = "--finish",
            paramLabel = "FINISH",
            defaultValue = "bare",
            description = "finish of the handle; 'hafthold materials --finishes' lists ids (default: ${DEFAULT-VALUE})")
    private String finish;

    @Mixin
    private HandleOptions handle;

    /** The order in the engine's words. */
    Conditions conditions(TableSet tables, MaterialLibrary library) {
        return new Conditions(
                handle.handle(),
                new Temperature(20),
                new RelativeHumidity(0.5),
                FinishTable.read(tables).find(finish),
                destination(tables),
                OrderOptions.expansion(library, OrderOptions.USUAL_STEEL),
                OrderOptions.expansion(library, OrderOptions.USUAL_PIN),
                Optional.of(UsualBuild.bond(library, handle.tangThickness())));
    }

    private Destination destination(TableSet tables) {
        if (where.stays().isPresent()) {
            throw new WrongUsageException("a season is planned for one place; for a customer who moves about, hold each"
                    + " of his places against your year, or the table of --stays against one day with 'hafthold"
                    + " compare'");
        }
        return where.destination(
                        PlaceTable.read(tables), () -> WhereOptions.settingOf(WhereOptions.USUAL_SETTING), false)
                .orElseThrow(() -> new WrongUsageException(
                        "where does the knife go? Name a --place (hafthold places lists them) or a --climate file"));
    }

    /** Where the knife goes. */
    WhereOptions where() {
        return where;
    }

    /** What was taken for want of a word; asked for after the conditions. */
    List<Finding> defaults(List<String> takenOfBlank, int gluedDays) {
        List<Finding> defaults = new ArrayList<>(where.findings());
        List<String> taken = new ArrayList<>();
        Stream.of("--setting", "--finish", "--width", "--thickness", "--length", "--tang", "--pin", "--clearance")
                .filter(name -> !spec.commandLine().getParseResult().hasMatchedOption(name))
                .forEach(name -> taken.add(name + " " + usual(name)));
        taken.addAll(takenOfBlank);
        if (!taken.isEmpty()) {
            defaults.add(new Finding(
                    Finding.Kind.DEFAULT,
                    "all",
                    Message.of("note.as-usual", Map.of("options", Message.verbatim(String.join(", ", taken))))));
        }
        Length bond = UsualBuild.BOND_LINE;
        Message glued = gluedDays == 0
                ? Message.of("note.glue", Map.of("thickness", Message.size(bond)))
                : Message.of(
                        "note.glue.before",
                        Map.of("thickness", Message.size(bond), "days", Message.number(gluedDays, 0)));
        defaults.add(new Finding(Finding.Kind.DEFAULT, "glue", glued));
        return defaults;
    }

    private String usual(String name) {
        return name.equals("--setting")
                ? WhereOptions.USUAL_SETTING
                : spec.findOption(name).defaultValue();
    }
}
