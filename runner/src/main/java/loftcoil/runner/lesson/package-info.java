/**
 * Markdown text in, {@link loftcoil.runner.lesson.Lesson} out. Uses a CommonMark library; knows nothing of sessions or faces. Read
 * {@link loftcoil.runner.lesson.Step} first.
 */
@NullMarked
package loftcoil.runner.lesson;

import org.jspecify.annotations.NullMarked;
