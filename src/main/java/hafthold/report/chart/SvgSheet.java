package hafthold.report.chart;

import java.awt.BasicStroke;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** One SVG picture being set: plot, rules and words, with a title and a description for those who cannot see it. */
final class SvgSheet {
    private final String id;
    private final int width;
    private final int height;
    private final int fontSize;
    private final StringBuilder body = new StringBuilder();

    /** An empty sheet; the id must be unique in the page that will hold it. */
    SvgSheet(String id, int width, int height, int fontSize) {
        this.id = id;
        this.width = width;
        this.height = height;
        this.fontSize = fontSize;
    }

    /** An empty sheet in one of the common formats. */
    SvgSheet(String id, SheetFormat format, int height) {
        this(id + "-" + format.name().charAt(0), format.width(), height, format.fontSize());
    }

    /** Where a text is held. */
    enum Anchor {
        START("start"),
        MIDDLE("middle"),
        END("end");

        private final String word;

        Anchor(String word) {
            this.word = word;
        }
    }

    /** Sets words with their base line at a point, with a halo of paper. */
    void text(double x, double y, Anchor anchor, Ink ink, String words) {
        text(x, y, anchor, ink, "", words);
    }

    /** Sets heavy words. */
    void strongText(double x, double y, Anchor anchor, Ink ink, String words) {
        text(x, y, anchor, ink, " font-weight=\"600\"", words);
    }

    /** Sets words on a ground of their own, without a halo. */
    void plainText(double x, double y, Anchor anchor, Ink ink, String words) {
        body.append("<text x=\"")
                .append(number(x))
                .append("\" y=\"")
                .append(number(y))
                .append("\" text-anchor=\"")
                .append(anchor.word)
                .append('"')
                .append(colour(ink, "fill"))
                .append('>')
                .append(XmlText.escape(words))
                .append("</text>\n");
    }

    /** Puts a traced plot with its upper left corner at a point. */
    void plot(double x, double y, String paths) {
        body.append("<g transform=\"translate(")
                .append(number(x))
                .append(' ')
                .append(number(y))
                .append(")\">\n")
                .append(paths)
                .append("</g>\n");
    }

    /** Draws a straight rule. */
    void rule(double x1, double y1, double x2, double y2, Ink ink, BasicStroke stroke) {
        body.append("<path d=\"M")
                .append(number(x1))
                .append(' ')
                .append(number(y1))
                .append('L')
                .append(number(x2))
                .append(' ')
                .append(number(y2))
                .append('"')
                .append(colour(ink, "stroke"))
                .append(stroke(stroke))
                .append("/>\n");
    }

    /** Draws a filled shape from its path data. */
    void shape(String pathData, Ink ink) {
        body.append("<path d=\"")
                .append(pathData)
                .append('"')
                .append(colour(ink, "fill"))
                .append("/>\n");
    }

    /** Puts traced paths as they are. */
    void paths(String paths) {
        body.append(paths);
    }

    /** The whole picture, for a page that gives it a heading and a ground. */
    String svg(String title, String description) {
        return picture(title, description, 0, body.toString());
    }

    /** The whole picture for a file of its own: with its title in sight, on paper. */
    String fileSvg(String title, String description) {
        int head = 2 * fontSize + 8;
        String ground = "<rect width=\"" + width + "\" height=\"" + (height + head) + "\" fill=\""
                + Ink.PAPER.lightHex() + "\"/>\n<text x=\"4\" y=\"" + (fontSize + 8) + "\" font-size=\""
                + (fontSize + 3)
                + "\" font-weight=\"600\" fill=\"" + Ink.TEXT.lightHex() + "\">" + XmlText.escape(title)
                + "</text>\n";
        return picture(
                title, description, head, ground + "<g transform=\"translate(0 " + head + ")\">\n" + body + "</g>\n");
    }

    private String picture(String title, String description, int head, String content) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + width + " " + (height + head)
                + "\" width=\""
                + width + "\" height=\"" + (height + head) + "\" role=\"img\" aria-labelledby=\"" + id + "-t " + id
                + "-d\" font-family=\"system-ui, &#39;Segoe UI&#39;, &#39;Noto Sans&#39;, &#39;DejaVu Sans&#39;,"
                + " sans-serif\" font-size=\"" + fontSize + "\">\n<title id=\"" + id + "-t\">"
                + XmlText.escape(title) + "</title>\n<desc id=\"" + id + "-d\">" + XmlText.escape(description)
                + "</desc>\n" + content + "</svg>\n";
    }

    /** A coordinate with at most one decimal. */
    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Colour as an attribute for a file of its own, and as a class that a page may recolour. */
    static String colour(Ink ink, String what) {
        return " class=\"" + ink.cssClass() + "\" color=\"" + ink.lightHex() + "\" " + what + "=\"currentColor\"";
    }

    /** Width, joint and dash. */
    static String stroke(BasicStroke stroke) {
        StringBuilder text = new StringBuilder(" stroke-width=\"")
                .append(number(stroke.getLineWidth()))
                .append('"');
        if (stroke.getLineJoin() == BasicStroke.JOIN_ROUND) {
            text.append(" stroke-linejoin=\"round\"");
        }
        float[] dash = stroke.getDashArray();
        if (dash != null) {
            text.append(" stroke-dasharray=\"");
            for (int i = 0; i < dash.length; i++) {
                text.append(i == 0 ? "" : " ").append(number(dash[i]));
            }
            text.append('"');
        }
        return text.toString();
    }

    private void text(double x, double y, Anchor anchor, Ink ink, String extra, String words) {
        body.append("<text x=\"")
                .append(number(x))
                .append("\" y=\"")
                .append(number(y))
                .append("\" text-anchor=\"")
                .append(anchor.word)
                .append("\" class=\"halo ")
                .append(ink.cssClass())
                .append("\" color=\"")
                .append(ink.lightHex())
                .append("\" fill=\"currentColor\" stroke=\"")
                .append(Ink.PAPER.lightHex())
                .append("\" stroke-width=\"3.5\" stroke-linejoin=\"round\" paint-order=\"stroke\"")
                .append(extra)
                .append('>')
                .append(XmlText.escape(words))
                .append("</text>\n");
    }
}
