package loftcoil.engine.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CautionKindTest {

    @Test
    void thePageOfModelsListsEveryCautionWithItsSeverityAndSource() throws IOException {
        List<String> rows = Files.readAllLines(Path.of("models/caution.md")).stream()
                .filter(line -> line.startsWith("| LC-"))
                .map(line -> line.split(" \\| ", -1))
                .map(cells ->
                        cells[0].substring(2) + "|" + cells[1] + "|" + cells[3].substring(0, cells[3].length() - 2))
                .toList();
        assertEquals(
                CautionKind.all().stream()
                        .map(kind -> kind.code() + "|"
                                + kind.severity().toString().toLowerCase(Locale.ROOT) + "|" + kind.source())
                        .toList(),
                rows);
    }

    @Test
    void eachSaysWhoDecidesAndWhereItComesFrom() {
        for (CautionKind kind : CautionKind.all()) {
            assertFalse(kind.decides().isBlank() || kind.source().isBlank(), kind.code());
        }
    }

    @Test
    void aCodeWithoutARowIsAFaultOfTheProgram() {
        assertThrows(IllegalStateException.class, () -> CautionKind.of("LC-NOBODY"));
    }
}
