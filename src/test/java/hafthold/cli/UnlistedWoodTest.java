package hafthold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class UnlistedWoodTest {

    @Test
    void aWoodThatNoTableHasIsAnsweredWithANoteInPlaceOfAnError() {
        Bench bench = Bench.run("compare", "--place", "oslo", "--material", "amboina wood,teak", "--format", "json");
        assertEquals(ExitCode.DONE, bench.code(), bench.err());
        assertTrue(bench.err().contains("note: No table has 'amboina wood'. The class tropical-medium"), bench.err());
        assertTrue(
                bench.out().contains("\"material\": \"amboina-wood\"")
                        || bench.out().contains("\"material\":\"amboina-wood\""),
                bench.out());
        assertTrue(bench.out().contains("unknown"), bench.out());
    }

    /** Woods of any kind shrink by 3 to 12 % tangentially: no verdict can be honest in a place that moves wood much. */
    @Test
    void theVerdictIsOpenWhereTheBandSpansThreeClassesOfWork() {
        Bench any = Bench.run(
                "compare", "--place", "yakutsk", "--made-rh", "60 %", "--material", "zorgwood", "--format", "json");
        assertTrue(any.out().replace(" ", "").contains("\"verdict\":\"unknown\""), any.out());
        Bench told =
                Bench.run("compare", "--place", "singapore", "--material", "hardwood-dense:zorg", "--format", "json");
        assertTrue(told.out().replace(" ", "").contains("\"verdict\":\"change\""), told.out());
    }
}
