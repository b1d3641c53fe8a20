package hafthold.simulate;

import hafthold.knife.FillTrial;
import hafthold.knife.RoomAir;
import hafthold.knife.StockBlock;
import hafthold.knife.StockBlock.Sealed;
import hafthold.knife.StockBlock.SoldAs;
import hafthold.knife.StockReading;
import hafthold.material.Cut;
import hafthold.material.Material;
import hafthold.quantity.Length;
import hafthold.quantity.Mass;
import hafthold.quantity.RelativeHumidity;
import hafthold.quantity.Temperature;
import hafthold.table.FinishTable;
import hafthold.table.MaterialLibrary;
import hafthold.table.TableSet;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Invented blocks. */
final class StockBlocks {
    static final MaterialLibrary LIBRARY = MaterialLibrary.read(TableSet.builtIn());
    static final LocalDate BOUGHT = LocalDate.of(2026, 1, 10);
    static final double CELSIUS = 20;

    private StockBlocks() {}

    static Material walnut() {
        return LIBRARY.plain("walnut-black");
    }

    static StockStore shelf(double humidity, double balanceGrams) {
        return new StockStore(
                StockAir.held(air(humidity)),
                true,
                Mass.ofGrams(balanceGrams),
                FinishTable.read(TableSet.builtIn()).find("wax-dipped"));
    }

    static RoomAir air(double humidity) {
        return new RoomAir(new RelativeHumidity(humidity), new Temperature(CELSIUS));
    }

    /** A block of 150 x 45 x 32 mm with these readings. */
    static StockBlock block(Material material, Sealed sealed, List<StockReading> readings) {
        return block(material, sealed, size(150, 45, 32), readings, Optional.empty());
    }

    static StockBlock block(
            Material material,
            Sealed sealed,
            StockBlock.Size size,
            List<StockReading> readings,
            Optional<FillTrial> tests) {
        return new StockBlock(
                "invented",
                material,
                material,
                Cut.FLAT,
                size,
                sealed,
                BOUGHT,
                SoldAs.UNKNOWN,
                readings,
                Optional.empty(),
                tests);
    }

    static StockBlock.Size size(double length, double width, double thickness) {
        return new StockBlock.Size(
                Length.ofMillimetres(length), Length.ofMillimetres(width), Length.ofMillimetres(thickness));
    }

    static StockReading weighed(int day, double grams) {
        return new StockReading(
                BOUGHT.plusDays(day),
                Optional.of(Mass.ofGrams(grams)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
