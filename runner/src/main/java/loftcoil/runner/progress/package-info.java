/**
 * What the learner has done, kept in the learner's own folder by atomic replace. Read {@link loftcoil.runner.progress.Progress} first.
 */
@NullMarked
package loftcoil.runner.progress;

import org.jspecify.annotations.NullMarked;
