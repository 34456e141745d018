package loftcoil.runner.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Example;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.session.SharedSession;
import loftcoil.runner.show.CourseApp;
import loftcoil.runner.show.TryCourse;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DesignsWalkTest {

    @TempDir
    private Path temp;

    private CourseApp bench;

    @BeforeEach
    void open() {
        bench = CourseApp.open(TryCourse.read(), ProgressFile.open(temp.resolve("learner")), SharedSession::lent, 7);
    }

    @AfterEach
    void close() {
        bench.close();
    }

    private String walk(String... typed) {
        ScriptedConsole console = new ScriptedConsole(typed);
        new DesignsWalk(bench.designs(), console).walk();
        assertEquals(0, console.left(), console.all());
        return console.all();
    }

    @Test
    void anotherIsBegunAndTheFirstTakenUpAgain() {
        String all = walk("new", "marsh-hut", "Hut two", "list", "up 1", "name 0", "First house", "q");
        assertTrue(all.contains("“Hut two” is taken up. “Orchard bothy” lies on the shelf"), all);
        assertTrue(all.contains("It is called “First house” now."), all);
        assertEquals("First house", bench.design().name());
    }

    @Test
    void theHistoryIsWalkedByTyping() {
        bench.rebuild().takeOver(bench.rebuild().own().json(), java.util.Map.of("tank.baseM", "2.6"));
        String all = walk("history", "undo", "redo", "back 0", "undo", "history all", "q");
        assertTrue(all.contains("Tank: Tank base above the floor, 2.20 m → 2.60 m"), all);
        assertTrue(all.contains("rebuild taken over"), all);
        assertTrue(
                bench.rebuild().own().json().contains("\"baseM\" : 2.6"),
                bench.rebuild().own().json());
    }

    @Test
    void aDesignIsWrittenToAPathAndOpenedFromOneAndNothingIsWrittenOver() throws IOException {
        Path file = temp.resolve("out.json");
        String all = walk(
                "save 0 " + file,
                "save 0 " + file,
                "open " + file,
                "remove 1",
                "bring 1",
                "open " + temp.resolve("none"),
                "q");
        assertEquals(DesignJson.write(Example.orchardBothy().borrowed()), Files.readString(file));
        assertTrue(all.contains("is there already"), all);
        assertTrue(all.contains("It lies on the shelf again."), all);
        assertTrue(all.replace("\n", " ").contains("cannot be read"), all);
    }

    @Test
    void whatMeansNothingIsSaid() {
        String all = walk("dance", "up 9", "back soon", "copy 0", "", "q").replace("\n", " ");
        assertTrue(all.contains("“dance” means nothing here"), all);
        assertTrue(all.contains("There is no number 9 in the list."), all);
        assertTrue(all.contains("A number of the list is wanted, not “soon”."), all);
        assertTrue(all.contains("name: "), all);
    }
}
