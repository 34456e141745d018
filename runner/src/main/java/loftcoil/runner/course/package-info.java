/**
 * All lessons and exercises together, checked against each other. Read {@link loftcoil.runner.course.CourseReader} first.
 */
@NullMarked
package loftcoil.runner.course;

import org.jspecify.annotations.NullMarked;
