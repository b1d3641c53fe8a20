package hafthold.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class SettlingTimeTest {

    /** Roots of Crank 1975, table 4.2, evaluated to more digits. */
    @ParameterizedTest
    @CsvFileSource(resources = "film-first-root.csv", commentCharacter = '#', useHeadersInDisplayName = true)
    void theFirstRootIsThatOfTheTable(double biot, double beta) {
        assertEquals(beta, SettlingTime.firstRoot(biot), 1e-10);
    }

    @Test
    void withoutFilmItIsFourThicknessSquaredOverPiSquaredD() {
        double seconds =
                SettlingTime.eFoldingSeconds(Sheet.withFilm(Sheet.NO_FILM), Sheet.CELSIUS, 0.5, Sheet.SATURATION);
        assertEquals(4 / (Math.PI * Math.PI), seconds / Sheet.UNIT_SECONDS, 1e-6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 3, 30})
    void aSheetLeftAloneLosesAFactorEOfWhatIsStillToComeInThatTime(double biot) {
        Slab slab = Sheet.withFilm(biot);
        double folding = SettlingTime.eFoldingSeconds(slab, Sheet.CELSIUS, 0.5, Sheet.SATURATION);
        MoistureHistory history = TransientMoisture.from(
                slab, new double[] {0}, Sheet.constantAir(0.5, folding / 20, 81), 0, Sheet.SATURATION, Sheet.FINE);
        double end = 0.5 * Sheet.HENRY;
        assertEquals(Math.E, (end - history.meanFraction(60)) / (end - history.meanFraction(80)), 1e-4);
    }
}
