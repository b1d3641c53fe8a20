package hafthold.knife;

import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.quantity.MoistureContent;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What was read on a block on one day.
 *
 * @param on the day
 * @param weight what the balance showed
 * @param width what the caliper showed across its width
 * @param thickness likewise, through its thickness
 * @param meter what a moisture meter showed
 * @param air where it had lain since the reading before; empty where that was the storage
 */
public record StockReading(
        LocalDate on,
        Optional<Mass> weight,
        Optional<Length> width,
        Optional<Length> thickness,
        Optional<MoistureContent> meter,
        Optional<RoomAir> air) {}
