package hafthold.mechanics;

/**
 * A pin in its drilled hole while the scale swells and shrinks around it.
 *
 * <p>A hole in an evenly swelling body grows as if it were filled with the body: d becomes d (1 + strain) along each
 * axis, so in wood it turns oval. Gap and squeeze are changes of diameter along one axis; they count from the finish.
 *
 * @param pinDiameterMetres pin diameter, m, positive
 * @param drilledClearanceMetres hole less pin diameter, m, not negative
 * @param filler what the clearance is filled with; hard filler leaves no clearance
 * @param pinExpansionPerKelvin linear thermal expansion of the pin, 1/K
 */
public record PinFit(
        double pinDiameterMetres, double drilledClearanceMetres, ClearanceFiller filler, double pinExpansionPerKelvin) {

    /** Checks sizes. */
    public PinFit {
        if (!(pinDiameterMetres > 0) || !Double.isFinite(pinDiameterMetres)) {
            throw new IllegalArgumentException(
                    "pin diameter must be more than 0, got " + 1000 * pinDiameterMetres + " mm");
        }
        if (!(drilledClearanceMetres >= 0) || !Double.isFinite(drilledClearanceMetres)) {
            throw new IllegalArgumentException(
                    "clearance must be 0 or more, got " + 1000 * drilledClearanceMetres + " mm");
        }
        if (!Double.isFinite(pinExpansionPerKelvin)) {
            throw new IllegalArgumentException("pin expansion must be a number, got " + pinExpansionPerKelvin);
        }
    }

    /** Diameter of the hole as drilled, m. */
    public double holeDiameterMetres() {
        return pinDiameterMetres + drilledClearanceMetres;
    }

    /** Clearance the scale may use up before it meets something hard, m. */
    public double openClearanceMetres() {
        return filler == ClearanceFiller.HARD ? 0 : drilledClearanceMetres;
    }

    /**
     * Room between hole and pin along one axis.
     *
     * @param scaleStrain change of the scale along that axis since the finish, all causes
     * @param warmingKelvin temperature now less that at the finish, K
     * @return m, positive for a gap, negative for a squeeze
     */
    public double gapMetres(double scaleStrain, double warmingKelvin) {
        return openClearanceMetres()
                + holeDiameterMetres() * scaleStrain
                - hardDiameterMetres() * pinExpansionPerKelvin * warmingKelvin;
    }

    /**
     * Stress of the scale around the pin.
     *
     * @param hole plate of the scale's elasticity, axis 1 along the handle
     * @param lengthStrain change of the scale along the handle
     * @param widthStrain change of the scale across the handle
     * @param warmingKelvin temperature now less that at the finish, K
     */
    public PinContact contact(LekhnitskiiHole hole, double lengthStrain, double widthStrain, double warmingKelvin) {
        return hole.pinContact(
                -gapMetres(lengthStrain, warmingKelvin) / hardDiameterMetres(),
                -gapMetres(widthStrain, warmingKelvin) / hardDiameterMetres());
    }

    /**
     * Pin head against the face of the scale.
     *
     * @param halfLengthMetres from the tang's mid-plane to the head, m
     * @param faceMetres movement of the face away from the mid-plane at the pin since the finish, m
     * @param warmingKelvin temperature now less that at the finish, K
     * @return m, positive where the head stands proud
     */
    public double headProudMetres(double halfLengthMetres, double faceMetres, double warmingKelvin) {
        return halfLengthMetres * pinExpansionPerKelvin * warmingKelvin - faceMetres;
    }

    private double hardDiameterMetres() {
        return holeDiameterMetres() - openClearanceMetres();
    }
}
