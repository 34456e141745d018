package loftcoil.runner.lesson;

/**
 * One thing wrong in a lesson file.
 *
 * @param file the file as its writer knows it, such as {@code lessons/02-tank-above.md}
 * @param line line in the file, from 1
 * @param column column in that line, from 1, in UTF-16 units
 * @param what what stands there and is not allowed
 * @param allowed what would be
 */
public record LessonFault(String file, int line, int column, String what, String allowed) {

    /** The fault on one line, the place first. */
    public String words() {
        return file + ":" + line + ":" + column + ": " + what + "; allowed: " + allowed;
    }
}
