package hafthold.report.chart;

/** Sizes a picture is drawn in. */
public enum SheetFormat {
    /** For a screen or a printed page: 760 units wide. */
    WIDE(760, 13),
    /** For a phone: 336 units wide. */
    NARROW(336, 12);

    private final int width;
    private final int fontSize;

    SheetFormat(int width, int fontSize) {
        this.width = width;
        this.fontSize = fontSize;
    }

    /** Width in user units. */
    public int width() {
        return width;
    }

    /** Height of letters in user units. */
    public int fontSize() {
        return fontSize;
    }

    /** Rough width of a text: 0.54 of the letter height a character, which is wide for most faces. */
    double widthOf(String text) {
        return 0.54 * fontSize * text.length();
    }
}
