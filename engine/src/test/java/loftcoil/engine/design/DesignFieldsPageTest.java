package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import loftcoil.engine.fire.WoodTable;
import loftcoil.engine.pipe.LaggingTable;
import loftcoil.engine.pipe.TubeTable;
import org.junit.jupiter.api.Test;

/**
 * The page on the fields of a design is made of the tables. To write it anew:
 * {@code mvn -o test -pl engine -Dtest=DesignFieldsPageTest -DargLine=-Dloftcoil.keep=true} writes it and fails, so that no run can
 * write and pass at once.
 */
class DesignFieldsPageTest {

    private static final Path PAGE = Path.of("models/design-fields.md");

    /** Long lists stand elsewhere. */
    private static final Map<List<String>, String> TABLES = Map.of(
            TubeTable.names(), "a name of the table of tubes",
            LaggingTable.names(), "a name of the table of laggings",
            WoodTable.known().names(), "a name of the table of woods");

    @Test
    void thePageIsTheOneTheTablesMake() throws IOException {
        String made = page();
        if (Boolean.getBoolean("loftcoil.keep")) {
            Files.writeString(PAGE, made, StandardCharsets.UTF_8);
            fail(PAGE + ": written as the tables are now");
        }
        assertEquals(made, Files.readString(PAGE, StandardCharsets.UTF_8).replace("\r\n", "\n"));
    }

    private static String page() {
        List<String> lines = new ArrayList<>(List.of(
                "# The fields of a design",
                "",
                "Made by `DesignFieldsPageTest` of the tables in `loftcoil.engine.design`; do not edit it by hand.",
                "",
                "`[]` stands for the number of an item of a list, `[0]` the first; `*` for a key of the table of fittings. Any object"
                        + " may carry a text `notes`. A field can be changed by its path; numbers have a decimal point.",
                "",
                "The object `origin` at the top says by path where values are from: "
                        + Coded.inWords(Origin.class)
                        + ". The path of a part stands for all in it. What is not named there is yours where it stands, and assumed where"
                        + " it is left out."));
        String part = "";
        for (DesignField field : DesignFields.known()) {
            String now = field.path().replaceFirst("[.\\[].*", "");
            if (!now.equals(part)) {
                part = now;
                lines.addAll(List.of(
                        "",
                        "## " + part,
                        "",
                        "| field | what it is | allowed | where left out |",
                        "|---|---|---|---|"));
            }
            lines.add(row(field));
        }
        return String.join("\n", lines) + "\n";
    }

    private static String row(DesignField field) {
        String allowed = TABLES.getOrDefault(field.options(), field.allowed());
        return List.of(
                        "`" + field.path() + "`",
                        "**" + field.label() + ".** " + field.help(),
                        allowed,
                        field.leftOut().orElse("must stand"))
                .stream()
                .collect(Collectors.joining(" | ", "| ", " |"));
    }
}
