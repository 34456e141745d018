/**
 * How heat crosses a surface: one correlation or law a file, as plain numbers in and out. Uses the fault room only. Each
 * class names the paper and the textbook equation it follows, its range and how far it can be off. Read {@link
 * loftcoil.engine.heat.ChurchillChu} first.
 */
@NullMarked
package loftcoil.engine.heat;

import org.jspecify.annotations.NullMarked;
