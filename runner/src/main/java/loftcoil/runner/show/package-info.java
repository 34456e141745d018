/**
 * One presentation model for every face: wording and number formats live here, so that page, terminal and handout cannot
 * disagree. Read {@link loftcoil.runner.show.LearnerApp} first.
 */
@NullMarked
package loftcoil.runner.show;

import org.jspecify.annotations.NullMarked;
