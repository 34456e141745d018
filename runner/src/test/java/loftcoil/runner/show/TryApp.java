package loftcoil.runner.show;

import java.nio.file.Path;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.session.SharedSession;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A test of the course of {@link TryCourse}, opened before each try over a folder that is empty. */
public abstract class TryApp {

    /** The learner's folder. */
    @TempDir
    protected Path folder;

    /** The course, open. */
    protected CourseApp bench;

    @BeforeEach
    protected void open() {
        bench = CourseApp.open(TryCourse.read(), ProgressFile.open(folder), SharedSession::lent, 7);
    }

    @AfterEach
    protected void close() {
        bench.close();
    }
}
