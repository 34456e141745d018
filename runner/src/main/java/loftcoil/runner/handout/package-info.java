/**
 * What is printed and carried to the workshop: the build sheet, and the handout of a lesson with its key, as one file of HTML
 * or as PDF; and the snippets of the lessons for the JDK's own shell. Read {@link loftcoil.runner.handout.Printing} first.
 *
 * <p>Reads no clock: the date on a sheet is handed down.
 */
@NullMarked
package loftcoil.runner.handout;

import org.jspecify.annotations.NullMarked;
