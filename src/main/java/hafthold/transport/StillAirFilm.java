package hafthold.transport;

import hafthold.source.PublishedModel;

/**
 * The film of still air at an indoor surface as a resistance to vapour: 1/beta with beta = 2.5e-8 kg/(m2 s Pa).
 *
 * <p>By the boundary-layer analogy beta = h_c/(rho c_p R_v T Le^(2/3)): a convective coefficient h_c of 3 to 4 W/(m2 K), as
 * still room air has, gives 2.2e-8 to 3e-8. Wind makes it several times larger; for wood and slower materials the
 * film then hardly counts.
 */
@PublishedModel(
        source = "boundary-layer-analogy",
        locator = "heat and mass transfer analogy with Lewis' relation",
        validity = "still room air; moving air has a thinner film")
public final class StillAirFilm {
    /** beta, kg/(m2 s Pa). */
    public static final double KILOGRAMS_PER_SQUARE_METRE_SECOND_PASCAL = 2.5e-8;

    /** 1/beta, m2 s Pa/kg. */
    public static final double RESISTANCE_SQUARE_METRE_SECOND_PASCALS_PER_KILOGRAM =
            1 / KILOGRAMS_PER_SQUARE_METRE_SECOND_PASCAL;

    private StillAirFilm() {}
}
