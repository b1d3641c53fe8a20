package hafthold.source;

/**
 * One published or unpublished place a figure comes from: a row of {@code sources.csv}.
 *
 * @param key short kebab-case name used in tables and annotations
 * @param type handbook, standard, paper, dataset, trade, judgement, memory
 * @param authors authors or issuing body
 * @param year year of issue, empty where unknown
 * @param title title
 * @param locator DOI, report number or publisher
 * @param seen how it was seen: read, second-hand, memory, own
 */
public record Source(String key, String type, String authors, String year, String title, String locator, String seen) {}
