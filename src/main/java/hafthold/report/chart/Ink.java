package hafthold.report.chart;

import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Every colour a picture may use, by its job, each in one shade for light and one for dark paper. No two light shades
 * are alike, so that a job can be told from its colour.
 */
public enum Ink {
    /** Words and figures. */
    TEXT(0x1c2328, 0xece8df),
    /** Words of less weight, tick labels. */
    MUTED(0x566068, 0xb3b6b4),
    /** What lies behind: the halo about words. */
    PAPER(0xfdfcf8, 0x1b1f22),
    /** Lines that only guide the eye. */
    GRID(0xdcd9d0, 0x3a4045),
    /** The tang line. */
    STEEL(0x3d4a54, 0xc3ccd2),
    /** Limits. */
    LIMIT(0x7a7468, 0xa59f90),
    /** Scale below the steel. */
    SHY(0xb23a12, 0xf08a5d),
    /** Scale above the steel. */
    PROUD(0x2b6f8f, 0x7dbbd8),
    /** The scale in a sketch. */
    SCALE(0xc8a878, 0x8d7149),
    /** Glue and liners in a section. */
    GLUE(0x6b4a1f, 0xe3c489),
    /** First line. */
    FIRST(0x14292b, 0xf4ede0),
    /** Second line. */
    SECOND(0x3694cd, 0x58bdd1),
    /** Third line. */
    THIRD(0x73180c, 0xe97f63),
    /** Fourth line. */
    FOURTH(0x84771a, 0xeabf44),
    /** Fifth line. */
    FIFTH(0x8a397d, 0x897fea),
    /** Ground of what stays: the more ink, the worse. */
    STAYS(0xeceee0, 0x262c2e),
    /** Ground of what asks for care. */
    CARE(0xdbc899, 0x4b4534),
    /** Ground of what asks for another build. */
    CHANGE(0xbc8c58, 0x80592f),
    /** Ground of what is refused; words on it are of the paper. */
    REFUSE(0x4a2216, 0xe9cba2);

    private static final List<Ink> LINES = List.of(FIRST, SECOND, THIRD, FOURTH, FIFTH);

    private final int light;
    private final int dark;

    Ink(int light, int dark) {
        this.light = light;
        this.dark = dark;
    }

    /** The ink of the n-th line of a picture, counted from 0, at most 4. */
    static Ink ofLine(int order) {
        return LINES.get(order);
    }

    /** The ink that has a light shade. */
    static Optional<Ink> of(Color color) {
        int wanted = color.getRGB() & 0xffffff;
        return Arrays.stream(values()).filter(ink -> ink.light == wanted).findFirst();
    }

    /** Name of the class that carries it in a page, such as ink-shy. */
    public String cssClass() {
        return "ink-" + name().toLowerCase(Locale.ROOT);
    }

    /** The shade for light paper, such as #b23a12. */
    public String lightHex() {
        return String.format(Locale.ROOT, "#%06x", light);
    }

    /** The shade for dark paper. */
    public String darkHex() {
        return String.format(Locale.ROOT, "#%06x", dark);
    }

    Color color() {
        return new Color(light);
    }

    Color color(int alpha) {
        return new Color(light >> 16, light >> 8 & 0xff, light & 0xff, alpha);
    }
}
