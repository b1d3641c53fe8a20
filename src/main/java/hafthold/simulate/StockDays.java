package hafthold.simulate;

import hafthold.material.Material;

/** Moisture of one part of the stock in the workshop, day by day. */
interface StockDays {
    int HOURS_A_DAY = 24;

    /**
     * Mean moisture content of each day of a year without a leap day, from 1 January, kg/kg.
     *
     * @return never written to
     */
    double[] under(Doubt doubt);

    /** Stock that has lain in the workshop's air for long, in which its year repeats. */
    static StockDays settled(Material material, DoubtedMoisture hourly) {
        DoubtedMoisture daily = hourly.mapped(hours -> YearSeries.dailyMean(hours, HOURS_A_DAY));
        return doubt ->
                YearSeries.scaled(daily.course(doubt.ofShop()).mean().hourly(), doubt.unsettledFactor(material));
    }
}
