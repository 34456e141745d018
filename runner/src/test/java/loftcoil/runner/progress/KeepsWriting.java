package loftcoil.runner.progress;

import java.nio.file.Path;
import loftcoil.runner.progress.Progress.LessonWork;

/** A process of its own that keeps progress without end, to be killed in the middle of it. */
final class KeepsWriting {

    /** Length of a snippet's text: so long that one write takes several blocks of the disk. */
    static final int LENGTH = 40_000;

    private KeepsWriting() {}

    @SuppressWarnings("InfiniteLoopStatement") // ended from outside: that is what it is for
    public static void main(String[] args) {
        try (ProgressFile file = ProgressFile.open(Path.of(args[0]))) {
            for (int round = Integer.parseInt(args[1]); ; round++) {
                char letter = (char) ('a' + round % 26);
                String text = String.valueOf(letter).repeat(LENGTH);
                LessonWork work = LessonWork.NONE.withSnippet("s", text);
                file.keep(Progress.start(round).withWork("01-warm", work));
                file.keepDesign(text);
            }
        }
    }
}
