package hafthold.report;

import hafthold.report.chart.XmlText;

/** HTML being written; everything given as text is escaped. */
final class Markup {
    private final StringBuilder html = new StringBuilder();

    /** Opens an element; attributes are name and value in turn. */
    Markup open(String tag, String... attributes) {
        html.append('<').append(tag);
        for (int i = 0; i < attributes.length; i += 2) {
            html.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(XmlText.escape(attributes[i + 1]))
                    .append('"');
        }
        html.append('>');
        return this;
    }

    /** Closes an element and its line. */
    Markup close(String tag) {
        html.append("</").append(tag).append(">\n");
        return this;
    }

    /** Text, numbers held to their units. */
    Markup text(String text) {
        html.append(XmlText.escape(Paragraph.held(text)));
        return this;
    }

    /** Text as it is, to be copied. */
    Markup verbatim(String text) {
        html.append(XmlText.escape(text));
        return this;
    }

    /** An element that holds text only. */
    Markup element(String tag, String text, String... attributes) {
        return open(tag, attributes).text(text).close(tag);
    }

    /** Markup of our own that is already safe, such as a picture. */
    Markup trusted(String markup) {
        html.append(markup);
        return this;
    }

    @Override
    public String toString() {
        return html.toString();
    }
}
