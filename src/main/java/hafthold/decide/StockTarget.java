package hafthold.decide;

import hafthold.simulate.MoistureSpan;
import hafthold.simulate.StockAim;
import hafthold.source.Message;
import java.util.Optional;

/**
 * What the box is to sit at.
 *
 * @param aim air of the box, and how near to rest is near enough
 * @param moistureFraction moisture content of the usual piece at rest there, kg/kg
 * @param year driest and dampest of a scale where the knife goes; empty where nobody said where
 * @param place where it goes
 * @param isHeldBack whether the year asks for air that stock is not sent to
 */
public record StockTarget(
        StockAim aim,
        double moistureFraction,
        Optional<MoistureSpan> year,
        Optional<Message> place,
        boolean isHeldBack) {}
