package hafthold.decide;

import hafthold.air.CommonYear;
import hafthold.knife.BenchStock;
import hafthold.knife.FitLimits;
import hafthold.knife.SeasonLimits;
import hafthold.simulate.Conditions;
import hafthold.source.Finding;
import java.time.LocalDate;
import java.util.List;

/**
 * When to glue up and to sand flush for one customer, through the workshop's own year.
 *
 * @param conditions handle, finish, destination
 * @param shop the workshop's air
 * @param stock how it is kept, what was read of it, how long it lies glued
 * @param today the day that is asked about
 * @param held class of work whose limits must hold
 * @param limits when stock is fit for it
 * @param answers one a material and cut, as asked for
 * @param samples years that were sampled; 0 for values only
 * @param findings choices common to all answers
 */
public record Season(
        Conditions conditions,
        ShopAir shop,
        BenchStock stock,
        LocalDate today,
        FitLimits held,
        SeasonLimits limits,
        List<SeasonAnswer> answers,
        int samples,
        List<Finding> findings) {

    /** Keeps its own copies. */
    public Season {
        answers = List.copyOf(answers);
        findings = List.copyOf(findings);
    }

    /** Today in a year without a leap day, from 0 on 1 January. */
    public int day() {
        return day(today);
    }

    static int day(LocalDate date) {
        int ofMonth = Math.min(date.getDayOfMonth(), CommonYear.daysOfMonth(date.getMonthValue()));
        return CommonYear.firstDay(date.getMonthValue()) + ofMonth - 1;
    }

    /** True where every material may be glued up and sanded flush today. */
    public boolean isGo() {
        return answers.stream()
                .allMatch(answer -> answer.finish().call() == SeasonAnswer.Call.GO
                        && answer.glue().isGo());
    }
}
