package hafthold.table;

import hafthold.material.FillScale;
import hafthold.quantity.Band;
import java.util.ArrayList;
import java.util.List;

/** What {@code treatments.csv} tells of resin in lumens, by how far they are filled. */
public final class FillTable {
    private static final List<String> FILLINGS = List.of("lumen-resin-light", "lumen-resin", "lumen-resin-full");

    private FillTable() {}

    /**
     * The fillings of the tables.
     *
     * @throws InvalidTableException when they lack one, or what it fills
     */
    public static FillScale read(MaterialLibrary library) {
        List<FillScale.Point> points = new ArrayList<>();
        Band density = null;
        for (String id : FILLINGS) {
            Treatment treatment = library.treatments().get(id);
            if (treatment == null
                    || !treatment
                            .figures()
                            .keySet()
                            .containsAll(List.of(TreatmentProperty.LUMENS_FILLED, TreatmentProperty.FILLING_DENSITY))) {
                throw new InvalidTableException(
                        "treatments.csv", "treatment " + id + " needs rows lumens_filled and filling_density");
            }
            density = treatment.figures().get(TreatmentProperty.FILLING_DENSITY).band();
            points.add(new FillScale.Point(
                    treatment.figures().get(TreatmentProperty.LUMENS_FILLED).value(),
                    treatment.earlyUptake().value()));
        }
        return new FillScale(density, points);
    }
}
