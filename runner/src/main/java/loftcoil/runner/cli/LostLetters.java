package loftcoil.runner.cli;

import java.util.Arrays;
import java.util.Optional;

/**
 * Names of files that Java could not take from the system whole. Where the language setting knows ASCII alone, as
 * {@code LC_ALL=C} does, every other letter becomes the replacement character; files would then be looked for, and made,
 * in places of other names.
 */
final class LostLetters {

    private static final String REPLACEMENT = "\uFFFD";

    private LostLetters() {}

    /**
     * What is to be said of the first name with a lost letter, in one line.
     *
     * @param args the command line
     * @param workingFolder the folder the program was started in
     */
    static Optional<String> fault(String[] args, String workingFolder) {
        return Arrays.stream(args)
                .filter(arg -> arg.contains(REPLACEMENT))
                .findFirst()
                .or(() -> Optional.of(workingFolder).filter(folder -> folder.contains(REPLACEMENT)))
                .map(name -> name.replace(REPLACEMENT, "?")
                        + ": letters were lost, because the language setting knows only those of English; allowed: any"
                        + " name, with LC_ALL=C.UTF-8 or another setting of UTF-8");
    }
}
