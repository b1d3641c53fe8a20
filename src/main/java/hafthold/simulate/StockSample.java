package hafthold.simulate;

import hafthold.transport.BlockMoisture;
import java.util.List;

/**
 * A block as it may be, and its past.
 *
 * @param piece the block
 * @param mean moisture over the block on the day it was bought and at the end of each span of its past, kg/kg
 * @param core likewise, in its middle
 * @param told what the readings say to it
 * @param now its moisture today
 */
record StockSample(
        BlockPiece piece, List<Double> mean, List<Double> core, StockReadings.Told told, BlockMoisture now) {}
