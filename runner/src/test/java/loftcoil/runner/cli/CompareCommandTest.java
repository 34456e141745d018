package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class CompareCommandTest {

    private static final Design BOTHY = Example.orchardBothy();
    private static final Design HIGHER = BOTHY.withTankBaseM(2.6);

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private String file(String name, Design design) throws IOException {
        return Files.writeString(folder.resolve(name), DesignJson.write(design)).toString();
    }

    private int run(String... args) {
        CommandLine commandLine = Loftcoil.commandLine();
        commandLine.setOut(new PrintWriter(out, true));
        commandLine.setErr(new PrintWriter(err, true));
        return commandLine.execute(args);
    }

    @Test
    void textNamesEachChangedFigureAndTheChangeThatMadeIt() throws IOException {
        assertEquals(0, run("compare", file("old.json", BOTHY), file("new.json", HIGHER)), err.toString());
        String text = out.toString();
        assertTrue(
                text.lines().anyMatch(line -> line.matches("\\s+flow round the loop \\[L/min\\]\\s+.*better")), text);
        assertTrue(text.contains("Each change by itself"), text);
        assertTrue(text.contains("Tank base above the floor: 2.6 m"), text);
        assertTrue(text.lines().anyMatch(line -> line.matches("Year +before +after +difference")), text);
        assertFalse(text.contains("Months of the year"), text);
        String own = folder.toString();
        assertTrue(text.lines().allMatch(line -> line.length() <= 88 || line.contains(own)), text);
    }

    @Test
    void jsonHasThePlainNumbersOfBothSheets() throws IOException {
        assertEquals(0, run("compare", file("old.json", BOTHY), file("new.json", HIGHER), "--json", "--no-year"));
        JsonNode json = new ObjectMapper().readTree(out.toString());
        JsonNode flow = null;
        for (JsonNode figure : json.path("figures")) {
            assertFalse(figure.path("key").asText().startsWith("year"), figure.toString());
            if (figure.path("key").asText().equals("loop.flowKgPerS")) {
                flow = figure;
            }
        }
        assertEquals(Sheet.of(BOTHY).loop().flowKgPerS(), flow.path("before").asDouble());
        assertEquals(Sheet.of(HIGHER).loop().flowKgPerS(), flow.path("after").asDouble());
        assertEquals("better", flow.path("turn").asText());
        assertEquals("tank.baseM", json.path("changes").path(0).path("name").asText());
    }

    /** A northern year in the south: the pipes can be compared all the same, and it says why the years are not. */
    @Test
    void whereAYearCannotBeTheRestIsComparedAndItSaysWhy() throws IOException {
        Design south = Changes.apply(BOTHY, "site.latitudeDeg", "-52");
        assertEquals(0, run("compare", file("old.json", BOTHY), file("new.json", south)), err.toString());
        String text = out.toString();
        assertTrue(text.replaceAll("\\s+", " ").contains("that of the new design could not be judged:"), text);
        assertTrue(text.contains("Latitude"), text);
        assertFalse(text.lines().anyMatch(line -> line.matches("Year +before +after +difference")), text);

        assertEquals(0, run("compare", file("old.json", south), file("new.json", HIGHER), "--json"), err.toString());
        JsonNode json = new ObjectMapper().readTree(out.toString().substring(text.length()));
        assertTrue(
                json.path("noYear").asText().contains("that of the old design"),
                json.path("noYear").asText());
        assertFalse(json.path("verdictAfter").path("yearJudged").asBoolean());
    }

    @Test
    void twiceTheSameFileDiffersInNothing() throws IOException {
        String same = file("same.json", BOTHY);
        assertEquals(0, run("compare", same, same, "--no-year"));
        assertTrue(out.toString().contains("No figure differs."), out.toString());
    }

    @Test
    void aFileThatIsNoDesignIsRefusedByItsOwnName() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.json"), "{}");
        assertEquals(2, run("compare", file("old.json", BOTHY), broken.toString()));
        assertTrue(err.toString().contains("broken.json"), err.toString());
        assertEquals(2, run("compare", folder.resolve("missing.json").toString(), broken.toString()));
        assertTrue(err.toString().contains("no such file"), err.toString());
    }

    @Test
    void whatNoNamedChangeExplainsIsSaid() throws IOException {
        // A tap's level is no named change.
        String json = DesignJson.write(HIGHER).replaceFirst("\"levelM\"\\s*:\\s*1.05", "\"levelM\": 0.55");
        Path file = Files.writeString(folder.resolve("other.json"), json);
        assertEquals(0, run("compare", file("old.json", BOTHY), file.toString(), "--no-year"), err.toString());
        assertTrue(out.toString().contains("the rest of what differs"), out.toString());
        assertTrue(out.toString().contains("Outlet above the floor: 1.05 m → 0.55 m"), out.toString());
    }

    @Test
    void whatIsBoughtAndLeftOverStandsInTheText() throws IOException {
        String fourPanes = file("new.json", Changes.apply(BOTHY, "window.panes", "4"));

        assertEquals(0, run("compare", file("old.json", BOTHY), fourPanes, "--no-year"), err.toString());

        assertTrue(out.toString().contains("to buy or find: 1 pane of"), out.toString());
        assertTrue(out.toString().contains("lines of the list stay"), out.toString());
        assertFalse(out.toString().contains("left over: 1 pane"), out.toString());
    }
}
