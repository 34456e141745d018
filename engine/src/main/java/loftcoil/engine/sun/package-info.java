/**
 * The sun on the dark tank: where it stands, what a monthly climate means hour by hour, what falls on a tilted window, what
 * the panes let through and keep, and what the warm tank loses back through them. Uses the fault and gas rooms. The rules
 * are those of Duffie and Beckman, Solar Engineering of Thermal Processes, for the sun, and of EN 673 for the U value of
 * panes. Read {@link loftcoil.engine.sun.Glazing} and {@link loftcoil.engine.sun.WindowYear} first.
 */
@NullMarked
package loftcoil.engine.sun;

import org.jspecify.annotations.NullMarked;
