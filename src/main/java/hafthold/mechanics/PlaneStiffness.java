package hafthold.mechanics;

/**
 * Stiffness of a material in a section: axis 1 along the section, 2 through the thickness, 3 out of the section, all in
 * pascals; s1 = c11 e1 + c12 e2 + c13 e3, t12 = c66 g12.
 */
record PlaneStiffness(double c11, double c22, double c33, double c12, double c13, double c23, double c66) {

    double stress1(double e1, double e2, double e3) {
        return c11 * e1 + c12 * e2 + c13 * e3;
    }

    double stress2(double e1, double e2, double e3) {
        return c12 * e1 + c22 * e2 + c23 * e3;
    }

    double stress3(double e1, double e2, double e3) {
        return c13 * e1 + c23 * e2 + c33 * e3;
    }
}
