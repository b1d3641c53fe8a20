package hafthold.report.chart;

import hafthold.quantity.Band;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * One row of a {@link BookOwnChart}, in the units of the picture.
 *
 * @param label words over it
 * @param book band by the book
 * @param own band by own figures; empty where there is none
 * @param measured what was measured; empty where nothing was
 * @param note words at its right end
 */
public record BookOwnRow(String label, Band book, Optional<Band> own, OptionalDouble measured, String note) {

    DoubleStream values() {
        return DoubleStream.concat(
                DoubleStream.concat(
                        DoubleStream.of(book.low(), book.high()),
                        own.stream().flatMapToDouble(band -> DoubleStream.of(band.low(), band.high()))),
                measured.stream());
    }
}
