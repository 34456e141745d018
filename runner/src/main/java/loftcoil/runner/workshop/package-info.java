/**
 * A class: the progress files of its learners in, a summary for the teacher out, as a page and as a table for other programs.
 * It only looks at the files. Read {@link loftcoil.runner.workshop.ClassSummary} first.
 */
@NullMarked
package loftcoil.runner.workshop;

import org.jspecify.annotations.NullMarked;
