package hafthold.report.chart;

/** Text made safe for SVG and HTML. */
public final class XmlText {
    private XmlText() {}

    /** The text with the five characters that mean something to markup written out; control characters become blanks. */
    public static String escape(String text) {
        return text.replaceAll("[\\p{Cntrl}&&[^\\n\\t]]", " ")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
