package hafthold.report;

import java.util.List;
import java.util.Optional;

/**
 * A card in words and pictures, ready to be set as page, text or markdown.
 *
 * @param language code of its language
 * @param title heading of the card
 * @param lines what stands below the heading
 * @param sections in reading order
 * @param footer last line
 */
record CardSheet(String language, String title, List<String> lines, List<Section> sections, String footer) {

    /** Keeps its own copies. */
    CardSheet {
        lines = List.copyOf(lines);
        sections = List.copyOf(sections);
    }

    /**
     * One part of a card.
     *
     * @param id short name
     * @param heading over it
     * @param lead its main sentence
     * @param sentences further ones
     * @param points a list, after the sentences
     * @param chart picture with its numbers
     */
    record Section(
            String id,
            String heading,
            Optional<String> lead,
            List<String> sentences,
            List<String> points,
            Optional<ReportChart> chart) {

        /** Keeps its own copies. */
        Section {
            sentences = List.copyOf(sentences);
            points = List.copyOf(points);
        }

        /** A part of sentences and points only. */
        static Section of(String id, String heading, List<String> sentences, List<String> points) {
            return new Section(id, heading, Optional.empty(), sentences, points, Optional.empty());
        }
    }
}
