package hafthold.mechanics;

/** Parts that several tests build from. */
final class Handles {
    static final OrthotropicElasticity STEEL = OrthotropicElasticity.isotropic(200e9, 0.29);
    static final OrthotropicElasticity EPOXY = OrthotropicElasticity.isotropic(2e9, 0.38);
    static final OrthotropicElasticity ACRYLIC = OrthotropicElasticity.isotropic(3.2e9, 0.37);

    /** Flat-sawn: the width is tangential, the thickness radial. */
    static final OrthotropicElasticity WALNUT_FLAT =
            new OrthotropicElasticity(12700e6, 710e6, 1350e6, 790e6, 1080e6, 270e6, 0.632, 0.495, 0.378);

    private Handles() {}

    /** Steel 4 mm, glue 0.1 mm, scale 7 mm. */
    static Layup layup(OrthotropicElasticity scale) {
        return new Layup(new SectionLayer(4e-3, STEEL), new SectionLayer(0.1e-3, EPOXY), new SectionLayer(7e-3, scale));
    }

    /** 26 mm wide. */
    static BondedSection walnut() {
        return BondedSection.acrossWidth(13e-3, layup(WALNUT_FLAT));
    }
}
