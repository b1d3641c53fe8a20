package hafthold.knife;

import hafthold.quantity.Length;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A knife whose handle is a stack of parts on a through or hidden tang, held between guard and nut.
 *
 * @param order whom it is for
 * @param tang the steel that holds it together
 * @param grip the outside
 * @param parts from the guard to the nut, 1 to 60
 * @param made the parts when the nut was drawn up and the handle sanded
 */
public record TangStackBuild(Order order, StackTang tang, Grip grip, List<StackPart> parts, WorkState made)
        implements KnifeBuild {
    private static final int MOST_PARTS = 60;

    /** Rejects parts that do not fit together. */
    public TangStackBuild {
        parts = List.copyOf(parts);
        if (parts.isEmpty()) {
            throw new UnfitBuildException("parts", "", "at least one part, from the guard to the nut");
        }
        if (parts.size() > MOST_PARTS) {
            throw new UnfitBuildException(
                    "parts[" + (MOST_PARTS + 1) + "]", parts.size() + " parts", "at most " + MOST_PARTS + " parts");
        }
        if (lengthOf(parts) > SizeRange.HANDLE_LENGTH.most().metres()) {
            throw new UnfitBuildException(
                    "parts[" + parts.size() + "].length",
                    SizeRange.millimetres(parts.get(parts.size() - 1).length()),
                    "parts that add up to no more than " + SizeRange.millimetres(SizeRange.HANDLE_LENGTH.most())
                            + ", not " + SizeRange.millimetres(new Length(lengthOf(parts))));
        }
        checkSection("width", tang.width(), grip.width());
        checkSection("thickness", tang.thickness(), grip.thickness());
    }

    private static void checkSection(String key, Length tang, Length grip) {
        if (tang.metres() >= grip.metres()) {
            throw new UnfitBuildException(
                    "tang." + key,
                    SizeRange.millimetres(tang),
                    "less than the " + key + " of the handle, " + SizeRange.millimetres(grip));
        }
    }

    private static double lengthOf(List<StackPart> parts) {
        return parts.stream().mapToDouble(part -> part.length().metres()).sum();
    }

    /** From guard to nut: the lengths of all parts. */
    public Length length() {
        return new Length(lengthOf(parts));
    }

    @Override
    public String finishId() {
        return grip.finishId();
    }

    @Override
    public Set<String> materialIds() {
        Set<String> ids = new LinkedHashSet<>();
        ids.add(tang.steelId());
        parts.forEach(part -> ids.add(part.materialId()));
        return Collections.unmodifiableSet(ids);
    }
}
