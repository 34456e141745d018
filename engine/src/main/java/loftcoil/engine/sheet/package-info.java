/**
 * The answers: figures of a design, their JSON and text, the cautions that go with them, and the drawing to scale. Read {@link loftcoil.engine.sheet.Sheet} first.
 */
@NullMarked
package loftcoil.engine.sheet;

import org.jspecify.annotations.NullMarked;
