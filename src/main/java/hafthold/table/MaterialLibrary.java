package hafthold.table;

import hafthold.material.Axis;
import hafthold.material.Cut;
import hafthold.material.Family;
import hafthold.material.Hybrid;
import hafthold.material.Material;
import hafthold.material.Property;
import hafthold.material.PropertySheet;
import hafthold.material.PropertySheet.Entry;
import hafthold.material.ScaleMaterial;
import hafthold.source.Evidence;
import hafthold.source.Figure;
import hafthold.source.Finding;
import hafthold.source.Message;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Every material of the tables, composed on request: own figures over those of its classes, treatments, hybrids. */
public final class MaterialLibrary {
    private static final List<String> HYBRID_COLUMNS =
            List.of("hybrid", "part", "cut", "low", "value", "high", "unit", "source", "locator", "evidence");
    private static final String TREATED = "+";
    private static final String EXAMPLE_WOOD = "walnut-black";
    private static final String OF_ANY_SPECIES = "any species";

    private final Map<String, MaterialRow> rows = new LinkedHashMap<>();
    private final Map<String, Map<Entry, Figure>> sheets;
    private final Map<String, Treatment> treatments;
    private final Map<String, List<CsvRow>> hybridParts = new LinkedHashMap<>();
    private final WoodNames woodNames;
    private final SpokenNames spokenNames;

    private MaterialLibrary(TableSet tables) {
        for (CsvTable table : tables.read("materials.csv", MaterialRow.COLUMNS)) {
            KeyGuard keys = new KeyGuard();
            for (CsvRow row : table.rows()) {
                MaterialRow material = MaterialRow.of(row);
                rows.put(keys.once(row, "id", material.id()), material);
            }
        }
        woodNames = new WoodNames(tables, rows);
        spokenNames = new SpokenNames(rows.values());
        sheets = SheetTable.read(tables);
        treatments = TreatmentTable.read(tables);
        for (CsvTable table : tables.read("hybrids.csv", HYBRID_COLUMNS)) {
            Set<String> own = new LinkedHashSet<>();
            for (CsvRow row : table.rows()) {
                String hybrid = row.required("hybrid");
                if (own.add(hybrid)) {
                    hybridParts.put(hybrid, new ArrayList<>());
                }
                hybridParts.get(hybrid).add(row);
            }
        }
    }

    /** Reads the tables, the built-in ones once a run; nothing is composed before it is asked for. */
    public static MaterialLibrary read(TableSet tables) {
        return tables.isBuiltIn() ? BuiltIn.LIBRARY : new MaterialLibrary(tables);
    }

    /** Read when it is first asked for. */
    private static final class BuiltIn {
        static final MaterialLibrary LIBRARY = new MaterialLibrary(TableSet.builtIn());
    }

    /** Rows listed under a role (scale, class, steel, pin, liner, adhesive), in table order. */
    public List<MaterialRow> listed(String role) {
        return rows.values().stream().filter(row -> row.role().equals(role)).toList();
    }

    /** All rows in table order. */
    public List<MaterialRow> rows() {
        return List.copyOf(rows.values());
    }

    /** The treatment that an id SPECIES+TREATMENT speaks of, with the weight gain it has in that species. */
    public Optional<Treatment> treatmentOf(String id) {
        int plus = id.indexOf(TREATED);
        return plus < 0
                ? Optional.empty()
                : Optional.ofNullable(treatments.get(id.substring(plus + 1)))
                        .map(treatment -> treatment.weighedIn(plain(id.substring(0, plus))));
    }

    /** Treatments by id, in table order. */
    public Map<String, Treatment> treatments() {
        return Map.copyOf(treatments);
    }

    /**
     * Composes a material.
     *
     * @param id id of a row, or SPECIES+TREATMENT; species as for {@link #plain}
     * @throws UnknownIdException when no table has it
     * @throws InvalidTableException when its figures are not enough to compute with
     */
    public ScaleMaterial find(String id) {
        MaterialRow row = rows.get(asListed(id));
        if (row != null && row.family() == Family.HYBRID) {
            return hybrid(row);
        }
        int plus = id.indexOf(TREATED);
        if (plus < 0) {
            Optional<TreatmentWords> said = row == null ? TreatmentWords.in(id) : Optional.empty();
            return said.isPresent() ? treated(id, said.get()) : plain(id);
        }
        Treatment treatment = treatments.get(id.substring(plus + 1).toLowerCase(Locale.ROOT));
        if (treatment == null) {
            throw new UnknownIdException(
                    "treatment",
                    id.substring(plus + 1),
                    treatments.keySet(),
                    "treatments are " + String.join(", ", treatments.keySet()));
        }
        Material wood = plain(id.substring(0, plus));
        return treatment.applyTo(wood, row != null ? row.name() : wood.name() + ", " + treatment.name());
    }

    /** A wood with a word of treatment before it; what is only the kind of a wood is told how it is written. */
    private ScaleMaterial treated(String typed, TreatmentWords said) {
        try {
            return find(said.wood() + TREATED + said.treatment());
        } catch (UnknownIdException e) {
            List<String> woods = rows.values().stream()
                    .filter(row -> row.family() == Family.WOOD && row.role().equals("scale"))
                    .map(MaterialRow::id)
                    .toList();
            throw UnknownIdException.hinting(
                    "material",
                    typed,
                    said.written(NearestWord.among(said.wood(), woods).orElse(EXAMPLE_WOOD)));
        }
    }

    /** An id as the table writes it, whatever capitals it was typed with, or the one whose words were typed. */
    private String asListed(String typed) {
        String lower = typed.strip().toLowerCase(Locale.ROOT);
        if (rows.containsKey(typed) || rows.containsKey(lower)) {
            return rows.containsKey(typed) ? typed : lower;
        }
        return isTreated(lower)
                ? typed
                : spokenNames.only(typed).map(MaterialRow::id).orElse(typed);
    }

    /** True of SPECIES+TREATMENT, whatever the species. */
    private boolean isTreated(String id) {
        int plus = id.indexOf(TREATED);
        return plus >= 0 && treatments.containsKey(id.substring(plus + 1));
    }

    /** The row of an id; empty where it is made up of others or no table has it. */
    public Optional<MaterialRow> row(String id) {
        return Optional.ofNullable(rows.get(asListed(id)));
    }

    /**
     * Composes a plain material.
     *
     * @param id id of a row that is neither treated nor hybrid; the name of a listed wood; or the name of another wood,
     *     which takes the figures of its nearest class and knows nothing of its own
     * @throws UnknownIdException when no table has it and it does not say that it is a wood
     */
    public Material plain(String id) {
        MaterialRow row = rows.get(asListed(id));
        if (row != null && row.family() != Family.HYBRID) {
            return composed(row);
        }
        return woodNames
                .listed(id)
                .map(this::composed)
                .or(() -> woodNames.unlisted(id).map(this::standIn))
                .orElseThrow(() -> unknown(id));
    }

    /**
     * Id of the row that a plain material has its figures from: its own, or its class where no table has the wood.
     *
     * @throws UnknownIdException as {@link #plain}
     */
    public String figuresFrom(String id) {
        return row(id).or(() -> woodNames.listed(id))
                .map(MaterialRow::id)
                .or(() -> woodNames.unlisted(id).map(wood -> wood.woodClass().id()))
                .orElseThrow(() -> unknown(id));
    }

    private UnknownIdException unknown(String id) {
        return spokenNames
                .hint(id)
                .map(hint -> UnknownIdException.hinting("material", id, hint))
                .orElseGet(() -> new UnknownIdException(
                        "material",
                        id,
                        new TreeSet<>(rows.keySet()),
                        "hafthold materials lists them all; a wood that is not listed goes as wood:NAME, or under its"
                                + " class, such as hardwood-dense:NAME"));
    }

    private Material standIn(UnlistedWood wood) {
        Material like = composed(wood.row());
        return new Material(
                like.id(),
                like.name(),
                like.family(),
                Evidence.UNKNOWN,
                like.usualCut(),
                like.sheet(),
                like.water(),
                like.thermalExpansionPerKelvin(),
                List.of(wood.finding()));
    }

    private Material composed(MaterialRow row) {
        Map<Entry, Figure> figures = new LinkedHashMap<>();
        String sorption = "";
        String swelling = "";
        for (MaterialRow ancestor : lineage(row)) {
            Map<Entry, Figure> own = sheets.getOrDefault(ancestor.id(), Map.of());
            own.keySet().stream()
                    .filter(entry -> entry.axis() == Axis.ANY)
                    .forEach(entry -> figures.keySet().removeIf(old -> old.property() == entry.property()));
            boolean borrowed = !ancestor.id().equals(row.id());
            own.forEach((entry, figure) -> figures.put(entry, borrowed ? inherited(figure, ancestor) : figure));
            sorption = ancestor.sorption().isEmpty() ? sorption : ancestor.sorption();
            swelling = ancestor.swelling().isEmpty() ? swelling : ancestor.swelling();
        }
        Set<Entry> borrowed = new LinkedHashSet<>(figures.keySet());
        borrowed.removeAll(sheets.getOrDefault(row.id(), Map.of()).keySet());
        List<Finding> findings = borrowed.isEmpty() ? List.of() : List.of(inheritance(row, borrowed));
        return new MaterialAssembly(row, sorption, swelling, new PropertySheet(figures), findings).build();
    }

    /** The chain of classes, most general first, the material itself last. */
    private List<MaterialRow> lineage(MaterialRow row) {
        Deque<MaterialRow> chain = new ArrayDeque<>();
        Set<String> seen = new HashSet<>();
        for (MaterialRow next = row; next != null; next = rows.get(next.basedOn())) {
            if (!seen.add(next.id())) {
                throw new InvalidTableException("materials.csv", "material " + row.id() + " is based on itself");
            }
            chain.addFirst(next);
            if (!next.basedOn().isEmpty() && !rows.containsKey(next.basedOn())) {
                throw new InvalidTableException(
                        "materials.csv",
                        "material " + next.id() + " is based on '" + next.basedOn() + "', which has no row");
            }
        }
        return List.copyOf(chain);
    }

    /** A borrowed figure is an estimate, unless its source states it for any species. */
    private static Figure inherited(Figure figure, MaterialRow from) {
        boolean ofAny = figure.locator().startsWith(OF_ANY_SPECIES);
        return new Figure(
                figure.band(),
                ofAny ? figure.evidence() : figure.evidence().weaker(Evidence.ESTIMATED),
                figure.sourceKey(),
                "as " + from.id() + (figure.locator().isEmpty() ? "" : ": " + figure.locator()));
    }

    private static Finding inheritance(MaterialRow row, Set<Entry> borrowed) {
        List<Message> properties = borrowed.stream()
                .map(Entry::property)
                .filter(Property::setsMovement)
                .distinct()
                .map(property -> Message.of("property." + property.word().replace('_', '-')))
                .toList();
        return new Finding(
                Finding.Kind.ESTIMATE,
                row.id(),
                Message.of(
                        "note.class-figures",
                        Map.of(
                                "class", Message.verbatim(row.basedOn()),
                                "figures", Message.list("bench.comma", properties))));
    }

    private Hybrid hybrid(MaterialRow row) {
        List<Hybrid.Part> parts = new ArrayList<>();
        for (CsvRow part : hybridParts.getOrDefault(row.id(), List.of())) {
            Cut cut = part.word(
                    "cut",
                    Cut::ofWord,
                    Arrays.stream(Cut.values()).map(Cut::word).toList());
            double factor = part.text("unit").equals("%") ? 0.01 : 1;
            parts.add(new Hybrid.Part(plain(part.required("part")), cut, part.figure(factor)));
        }
        List<Finding> findings = new ArrayList<>();
        parts.forEach(part -> findings.addAll(part.material().findings()));
        findings.add(new Finding(Finding.Kind.ESTIMATE, row.id(), Message.of("note.hybrid-parts")));
        try {
            return new Hybrid(row.id(), row.name(), parts, findings);
        } catch (IllegalArgumentException e) {
            throw new InvalidTableException("hybrids.csv", e.getMessage());
        }
    }
}
