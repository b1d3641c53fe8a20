package hafthold.report.chart;

/**
 * Where things lie in {@link MonthPanels}.
 *
 * @param panels number of panels
 * @param beside true where they stand side by side, false where they stand below each other
 * @param width of the sheet
 * @param plotWidth of each panel
 * @param plotHeight of each panel
 */
record MonthPanelsLayout(int panels, boolean beside, int width, int plotWidth, int plotHeight) {
    private static final int LEFT = 44;
    private static final int GAP = 16;
    private static final int FONT = 12;
    private static final int HEAD = 40;
    private static final int FOOT = 20;
    private static final int SIDE_WORDS = 16;
    private static final int ALL_MONTHS_FROM = 300;

    static MonthPanelsLayout of(SheetFormat format, int panels) {
        if (panels == 1) {
            return new MonthPanelsLayout(1, false, 372, 322, 126);
        }
        if (format == SheetFormat.NARROW) {
            return new MonthPanelsLayout(panels, false, 336, 286, 96);
        }
        int plot = (720 - LEFT - 4 - (panels - 1) * GAP) / panels;
        return new MonthPanelsLayout(panels, true, 720, plot, 92);
    }

    boolean isSingle() {
        return panels == 1;
    }

    int fontSize() {
        return FONT;
    }

    int head() {
        return isSingle() ? HEAD - 16 : HEAD + 4;
    }

    int height() {
        int row = head() + plotHeight + FOOT;
        return beside ? row : panels * row + (isSingle() ? SIDE_WORDS : 0);
    }

    double left(int order) {
        return LEFT + (beside ? order * (plotWidth + GAP) : 0.0);
    }

    double top(int order) {
        return beside ? head() : head() + order * (head() + plotHeight + (double) FOOT);
    }

    boolean hasTicks(int order) {
        return !beside || order == 0;
    }

    int nameCharacters() {
        return (int) (plotWidth / (0.56 * FONT));
    }

    double x(double day) {
        return plotWidth * day / YearDays.DAYS;
    }

    double y(Span span, double value) {
        return plotHeight * (span.highest() - value) / (span.highest() - span.lowest());
    }

    /** The month as there is room for it. */
    String monthWord(String shortName) {
        return plotWidth >= ALL_MONTHS_FROM ? shortName : shortName.substring(0, shortName.offsetByCodePoints(0, 1));
    }
}
