package hafthold.knife;

import hafthold.quantity.Mass;
import hafthold.source.PublishedModel;
import java.time.LocalDate;

/**
 * A slice sawn from a block, weighed and dried in the oven: moisture content as its definition has it, dried at 103 C until
 * the weight holds.
 *
 * @param on the day it was sawn
 * @param wet weight as sawn
 * @param dry weight out of the oven
 */
@PublishedModel(
        source = "astm-d4442",
        locator = "terminology: water as a share of the oven-dry mass",
        validity = "wood without much that evaporates at 103 C besides water: no resin, oil or wax")
public record StockCoupon(LocalDate on, Mass wet, Mass dry) {

    /** Rejects a slice that the oven made heavier, or took nearly all of. */
    public StockCoupon {
        if (!(dry.kilograms() > 0) || wet.kilograms() < dry.kilograms() || wet.kilograms() > 4 * dry.kilograms()) {
            throw new UnfitBuildException(
                    "dry",
                    dry.grams() + " g",
                    "the weight out of the oven, at most that as sawn, " + wet.grams() + " g");
        }
    }

    /** Water over oven-dry mass, kg/kg. */
    public double moistureFraction() {
        return wet.kilograms() / dry.kilograms() - 1;
    }
}
