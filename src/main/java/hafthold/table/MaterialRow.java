package hafthold.table;

import hafthold.material.Cut;
import hafthold.material.Family;
import java.util.Arrays;
import java.util.List;

/**
 * A row of {@code materials.csv}: what a material is called and which models it follows; its figures stand in
 * {@code properties.csv}.
 *
 * @param id kebab-case id; SPECIES+TREATMENT for a treated wood that is stocked
 * @param name name for people
 * @param detail botanical name, grade or make
 * @param family family
 * @param role what it is listed as
 * @param basedOn id whose figures fill the gaps; empty for none
 * @param usualCut cut it is usually sold in
 * @param sorption isotherm: hailwood-horrobin, power, gab, none; empty means as {@code basedOn}
 * @param swelling law of movement: shrinkage, linear, none; empty means as {@code basedOn}
 * @param note remark for people
 */
public record MaterialRow(
        String id,
        String name,
        String detail,
        Family family,
        String role,
        String basedOn,
        Cut usualCut,
        String sorption,
        String swelling,
        String note) {
    static final List<String> COLUMNS =
            List.of("id", "name", "detail", "family", "role", "based_on", "usual_cut", "sorption", "swelling", "note");
    private static final List<String> ROLES = List.of("scale", "class", "steel", "pin", "liner", "adhesive");
    private static final List<String> SORPTIONS = List.of("", "hailwood-horrobin", "power", "gab", "none");
    private static final List<String> SWELLINGS = List.of("", "shrinkage", "linear", "none");

    static MaterialRow of(CsvRow row) {
        return new MaterialRow(
                row.required("id"),
                row.required("name"),
                row.text("detail"),
                row.word(
                        "family",
                        Family::ofWord,
                        Arrays.stream(Family.values()).map(Family::word).toList()),
                oneOf(row, "role", ROLES),
                row.text("based_on"),
                row.word(
                        "usual_cut",
                        Cut::ofWord,
                        Arrays.stream(Cut.values()).map(Cut::word).toList()),
                oneOf(row, "sorption", SORPTIONS),
                oneOf(row, "swelling", SWELLINGS),
                row.text("note"));
    }

    private static String oneOf(CsvRow row, String column, List<String> words) {
        return row.word(column, text -> words.stream().filter(text::equals).findFirst(), words);
    }
}
