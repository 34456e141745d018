/**
 * Exercises: read from JSON, and given each learner's own numbers. Knows nothing of answers. Read
 * {@link loftcoil.runner.exercise.Exercise} first.
 */
@NullMarked
package loftcoil.runner.exercise;

import org.jspecify.annotations.NullMarked;
