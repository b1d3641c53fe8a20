package hafthold.simulate;

import hafthold.knife.StockBlock;
import hafthold.knife.StockBlock.Sealed;
import hafthold.knife.StockBlock.SoldAs;
import hafthold.material.Family;

/**
 * What a block went through before it was bought, by what the seller says of it (a judgement).
 *
 * @param wetFraction moisture it had throughout at the beginning, kg/kg
 * @param driedDays how long it dried since then
 * @param driedInFraction relative humidity of the air it dried in, 0 to 1
 */
record StockOrigin(double wetFraction, double driedDays, double driedInFraction) {
    /** Temperature it dried at, degrees Celsius. */
    static final double CELSIUS = 18;

    /** The dampest air that anything is said to lie in, 0 to 1. */
    static final double DAMPEST = 0.97;

    /** That of a block as it may be. */
    static StockOrigin of(StockBlock block, BlockPiece piece) {
        StockInputs inputs = piece.inputs();
        return new StockOrigin(
                wetOnce(block, piece, inputs.of(StockInput.WET_ONCE)),
                driedDays(block.soldAs(), inputs.of(StockInput.DRIED_FOR)),
                0.35 + 0.45 * inputs.of(StockInput.DRIED_IN));
    }

    /** That at rest in air between two humidities, of green wood up to 70 %. Wood is dried before resin goes into it. */
    private static double wetOnce(StockBlock block, BlockPiece piece, double share) {
        boolean isDipped = block.soldAs() == SoldAs.UNKNOWN && block.sealed() == Sealed.ALL;
        Family family = block.material().family();
        if ((block.soldAs() == SoldAs.GREEN || isDipped) && family == Family.WOOD) {
            return 0.12 + share * (0.70 - 0.12);
        }
        boolean isDried = block.soldAs() == SoldAs.KILN_DRIED;
        double driest = family == Family.TREATED_WOOD ? 0.1 : isDried ? 0.25 : 0.40;
        double dampest = family == Family.TREATED_WOOD ? 0.75 : isDried ? 0.80 : DAMPEST;
        double low = piece.balance(driest, CELSIUS);
        return low + share * (piece.balance(dampest, CELSIUS) - low);
    }

    /** A day to three years, green stock to three months. */
    private static double driedDays(SoldAs soldAs, double share) {
        double most = soldAs == SoldAs.GREEN ? 90 : 1100;
        double least = soldAs == SoldAs.AIR_DRIED ? 30 : 1;
        return least * Math.pow(most / least, share);
    }
}
