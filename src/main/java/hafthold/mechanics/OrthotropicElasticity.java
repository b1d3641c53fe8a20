package hafthold.mechanics;

/**
 * Elastic constants of a part along the axes of the handle (generalised Hooke's law of an orthotropic body; Bodig and
 * Jayne 1982, Mechanics of wood and wood composites, chapter 3; Wood Handbook chapter 5 for the wood convention).
 *
 * <p>Poisson's ratio {@code lengthWidth} is the contraction along the width over the extension along the length under
 * stress along the length, so that nu_LW / E_L = nu_WL / E_W. In flat-sawn wood the width is tangential and the
 * thickness radial.
 *
 * @param lengthModulusPascals Young's modulus along the length, Pa, positive
 * @param widthModulusPascals Young's modulus along the width, Pa, positive
 * @param thicknessModulusPascals Young's modulus through the thickness, Pa, positive
 * @param lengthWidthShearPascals shear modulus of the wide face, Pa, positive
 * @param lengthThicknessShearPascals shear modulus of the side face, Pa, positive
 * @param widthThicknessShearPascals shear modulus of the cross-section, Pa, positive
 * @param lengthWidthPoisson nu_LW
 * @param lengthThicknessPoisson nu_LT
 * @param widthThicknessPoisson nu_WT
 */
public record OrthotropicElasticity(
        double lengthModulusPascals,
        double widthModulusPascals,
        double thicknessModulusPascals,
        double lengthWidthShearPascals,
        double lengthThicknessShearPascals,
        double widthThicknessShearPascals,
        double lengthWidthPoisson,
        double lengthThicknessPoisson,
        double widthThicknessPoisson) {

    /** Rejects constants that no stable body can have. */
    public OrthotropicElasticity {
        requirePositive("length modulus", lengthModulusPascals);
        requirePositive("width modulus", widthModulusPascals);
        requirePositive("thickness modulus", thicknessModulusPascals);
        requirePositive("length-width shear modulus", lengthWidthShearPascals);
        requirePositive("length-thickness shear modulus", lengthThicknessShearPascals);
        requirePositive("width-thickness shear modulus", widthThicknessShearPascals);
        double lw = lengthWidthPoisson * lengthWidthPoisson * widthModulusPascals / lengthModulusPascals;
        double lt = lengthThicknessPoisson * lengthThicknessPoisson * thicknessModulusPascals / lengthModulusPascals;
        double wt = widthThicknessPoisson * widthThicknessPoisson * thicknessModulusPascals / widthModulusPascals;
        double triple = 2
                * lengthWidthPoisson
                * widthThicknessPoisson
                * lengthThicknessPoisson
                * thicknessModulusPascals
                / lengthModulusPascals;
        if (!(lw < 1 && lt < 1 && wt < 1 && 1 - lw - lt - wt - triple > 0)) {
            throw new IllegalArgumentException(
                    "Poisson's ratios " + lengthWidthPoisson + ", " + lengthThicknessPoisson + ", "
                            + widthThicknessPoisson + " do not go with these moduli: the body would gain energy"
                            + " when stressed; check which direction each ratio is stated for");
        }
    }

    /**
     * The same in every direction.
     *
     * @param youngPascals Young's modulus, Pa, positive
     * @param poisson Poisson's ratio, above -1 and below 0.5
     */
    public static OrthotropicElasticity isotropic(double youngPascals, double poisson) {
        double shear = youngPascals / (2 * (1 + poisson));
        return new OrthotropicElasticity(
                youngPascals, youngPascals, youngPascals, shear, shear, shear, poisson, poisson, poisson);
    }

    /** Young's modulus along an axis, Pa. */
    public double modulusPascals(HandleAxis axis) {
        return switch (axis) {
            case LENGTH -> lengthModulusPascals;
            case WIDTH -> widthModulusPascals;
            case THICKNESS -> thicknessModulusPascals;
        };
    }

    /** Shear modulus of the plane of two different axes, Pa. */
    public double shearPascals(HandleAxis a, HandleAxis b) {
        if (a == b) {
            throw new IllegalArgumentException("a plane needs two different axes, got " + a + " twice");
        }
        return a != HandleAxis.LENGTH && b != HandleAxis.LENGTH
                ? widthThicknessShearPascals
                : a != HandleAxis.WIDTH && b != HandleAxis.WIDTH
                        ? lengthThicknessShearPascals
                        : lengthWidthShearPascals;
    }

    /** Compliance between two normal directions, 1/Pa: strain along a from stress along b; symmetric. */
    public double compliancePerPascal(HandleAxis a, HandleAxis b) {
        if (a == b) {
            return 1 / modulusPascals(a);
        }
        if (a != HandleAxis.LENGTH && b != HandleAxis.LENGTH) {
            return -widthThicknessPoisson / widthModulusPascals;
        }
        return -(a == HandleAxis.WIDTH || b == HandleAxis.WIDTH ? lengthWidthPoisson : lengthThicknessPoisson)
                / lengthModulusPascals;
    }

    /**
     * Stress along an axis of the wide face in a thin layer that is held in its plane and free through its thickness, Pa
     * for each unit of strain that it is held back from; no strain through the thickness makes any.
     *
     * @param along axis of the stress: length or width
     * @param strain axis of the strain
     */
    public double heldStressPascals(HandleAxis along, HandleAxis strain) {
        if (along == HandleAxis.THICKNESS) {
            throw new IllegalArgumentException("nothing holds a layer through its thickness");
        }
        if (strain == HandleAxis.THICKNESS) {
            return 0;
        }
        HandleAxis out = along == HandleAxis.WIDTH ? HandleAxis.LENGTH : HandleAxis.WIDTH;
        double cross = compliancePerPascal(along, out);
        double determinant = compliancePerPascal(along, along) * compliancePerPascal(out, out) - cross * cross;
        return (strain == along ? compliancePerPascal(out, out) : -cross) / determinant;
    }

    /**
     * The same material with its axes laid another way, as in a cross-cut scale whose grain runs through the thickness.
     *
     * @param a present axis that becomes the length
     * @param b present axis that becomes the width
     * @param c present axis that becomes the thickness
     */
    public OrthotropicElasticity laid(HandleAxis a, HandleAxis b, HandleAxis c) {
        return new OrthotropicElasticity(
                modulusPascals(a),
                modulusPascals(b),
                modulusPascals(c),
                shearPascals(a, b),
                shearPascals(a, c),
                shearPascals(b, c),
                -compliancePerPascal(a, b) * modulusPascals(a),
                -compliancePerPascal(a, c) * modulusPascals(a),
                -compliancePerPascal(b, c) * modulusPascals(b));
    }

    /**
     * The same material turned about the handle's length, as wood is when the scale is cut at a ring angle: with the
     * width tangential and the thickness radial before, 0 leaves flat-sawn, a right angle makes quarter-sawn.
     *
     * <p>Engineering constants of the turned compliance (Jones 1999, Mechanics of composite materials, equations 2.91 to
     * 2.97). Between 0 and a right angle stress along the width also shears the section; a handle's section has no room
     * for that here, and the coupling is left out.
     *
     * @param ringAngleRadians any angle
     */
    public OrthotropicElasticity turnedAboutLength(double ringAngleRadians) {
        double c = Math.pow(Math.cos(ringAngleRadians), 2);
        double s = 1 - c;
        double s11 = 1 / widthModulusPascals;
        double s22 = 1 / thicknessModulusPascals;
        double s12 = -widthThicknessPoisson / widthModulusPascals;
        double s66 = 1 / widthThicknessShearPascals;
        double width = 1 / (s11 * c * c + (2 * s12 + s66) * s * c + s22 * s * s);
        double thickness = 1 / (s11 * s * s + (2 * s12 + s66) * s * c + s22 * c * c);
        double across = s12 * (s * s + c * c) + (s11 + s22 - s66) * s * c;
        double shear = 1 / (2 * (2 * s11 + 2 * s22 - 4 * s12 - s66) * s * c + s66 * (s * s + c * c));
        return new OrthotropicElasticity(
                lengthModulusPascals,
                width,
                thickness,
                1 / (c / lengthWidthShearPascals + s / lengthThicknessShearPascals),
                1 / (s / lengthWidthShearPascals + c / lengthThicknessShearPascals),
                shear,
                c * lengthWidthPoisson + s * lengthThicknessPoisson,
                s * lengthWidthPoisson + c * lengthThicknessPoisson,
                -across * width);
    }

    /** Stiffness in the section that runs along an axis and through the thickness. */
    PlaneStiffness inSection(HandleAxis along) {
        HandleAxis out = along == HandleAxis.WIDTH ? HandleAxis.LENGTH : HandleAxis.WIDTH;
        double s11 = compliancePerPascal(along, along);
        double s22 = compliancePerPascal(HandleAxis.THICKNESS, HandleAxis.THICKNESS);
        double s33 = compliancePerPascal(out, out);
        double s12 = compliancePerPascal(along, HandleAxis.THICKNESS);
        double s13 = compliancePerPascal(along, out);
        double s23 = compliancePerPascal(HandleAxis.THICKNESS, out);
        double determinant =
                s11 * (s22 * s33 - s23 * s23) - s12 * (s12 * s33 - s23 * s13) + s13 * (s12 * s23 - s22 * s13);
        return new PlaneStiffness(
                (s22 * s33 - s23 * s23) / determinant,
                (s11 * s33 - s13 * s13) / determinant,
                (s11 * s22 - s12 * s12) / determinant,
                (s13 * s23 - s12 * s33) / determinant,
                (s12 * s23 - s13 * s22) / determinant,
                (s12 * s13 - s11 * s23) / determinant,
                shearPascals(along, HandleAxis.THICKNESS));
    }

    private static void requirePositive(String what, double pascals) {
        if (!(pascals > 0) || !Double.isFinite(pascals)) {
            throw new IllegalArgumentException(what + " must be a positive number of pascals, got " + pascals);
        }
    }
}
