/**
 * The course in a text terminal, over {@link loftcoil.runner.show.LearnerApp} alone: the same words and outcomes as the page,
 * with the numbers of each plot as a table. Read {@link loftcoil.runner.terminal.TerminalFace} first.
 */
@NullMarked
package loftcoil.runner.terminal;

import org.jspecify.annotations.NullMarked;
