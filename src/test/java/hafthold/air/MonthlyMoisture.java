package hafthold.air;

import hafthold.material.SorptionIsotherm;

/** Mean of the hourly equilibrium moisture content of wood, by month and over the year, percent. */
record MonthlyMoisture(double[] months, double yearPercent) {
    static MonthlyMoisture of(AirSeries year, SorptionIsotherm wood) {
        double[] months = new double[12];
        double sum = 0;
        for (int i = 0; i < year.size(); i++) {
            double percent = 100 * wood.moistureFraction(year.relativeHumidityFraction(i), year.temperatureCelsius(i));
            int month = CommonYear.monthOfHour(i);
            months[month - 1] += percent / (24 * CommonYear.daysOfMonth(month));
            sum += percent;
        }
        return new MonthlyMoisture(months, sum / year.size());
    }

    double percent(int month) {
        return months[month - 1];
    }
}
