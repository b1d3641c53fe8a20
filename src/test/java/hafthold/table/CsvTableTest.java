package hafthold.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.Test;

class CsvTableTest {
    private static final List<String> REQUIRED = List.of("id", "size");

    @Test
    void aByteOrderMarkCrlfAndAMissingLastLineEndAreSimplyRead() {
        CsvTable table = read("\uFEFF# title: t\r\nid,size\r\na,1\r\n\"b, c\",2");
        assertEquals(2, table.rows().size());
        assertEquals("b, c", table.rows().get(1).text("id"));
        assertEquals(2, table.rows().get(1).number("size", 0, 10), 0);
    }

    @Test
    void anEmptyFileIsNamed() {
        assertMessage("sizes.csv: is empty; expected a header row with id, size", "");
    }

    @Test
    void aMissingColumnIsNamed() {
        assertMessage("column size: 'id,length' is not right: expected a column named size", "id,length\na,1\n");
    }

    @Test
    void aColumnNamedTwiceIsRefused() {
        assertMessage("column id: 'id' is not right: expected each column once", "id,size,id\n");
    }

    @Test
    void aDecimalCommaInACommaSeparatedFileIsExplained() {
        assertMessage("write decimals with a point", "id,size\na,1,5\n");
    }

    @Test
    void aQuotedDecimalCommaIsExplained() {
        CsvRow row = read("# x\nid,size\na,\"1,5\"\n").rows().get(0);
        InvalidTableException fault = assertThrows(InvalidTableException.class, () -> row.number("size", 0, 10));
        assertEquals(
                "sizes.csv line 3, column size: '1,5' is not right: expected a number from 0 to 10 with a decimal"
                        + " point",
                fault.getMessage());
    }

    @Test
    void textNaNAndNumbersOutOfRangeAreRefused() {
        for (String wrong : List.of("text", "NaN", "Infinity", "-1", "11", "")) {
            CsvRow row = read("id,size\na," + wrong + "\n").rows().get(0);
            InvalidTableException fault =
                    assertThrows(InvalidTableException.class, () -> row.number("size", 0, 10), wrong);
            assertTrue(fault.getMessage().startsWith("sizes.csv line 2, column size: '" + wrong + "'"));
        }
    }

    @Test
    void aMisspeltWordIsAnsweredWithTheNearestOne() {
        assertEquals(
                "singapore",
                NearestWord.of("Singapur", List.of("london", "singapore", "oslo"))
                        .orElseThrow());
        assertEquals(
                "walnut-black",
                NearestWord.of("walnut", List.of("beech", "walnut-black")).orElseThrow());
        assertTrue(NearestWord.of("xyz", List.of("london", "singapore")).isEmpty());
    }

    private static CsvTable read(String text) {
        return CsvTable.read("sizes.csv", new StringReader(text), REQUIRED);
    }

    private static void assertMessage(String part, String text) {
        InvalidTableException fault = assertThrows(InvalidTableException.class, () -> read(text));
        assertTrue(fault.getMessage().contains(part), fault.getMessage());
    }
}
