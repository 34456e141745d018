package loftcoil.runner.handout;

import java.time.LocalDate;
import loftcoil.engine.words.Units;

/**
 * How a sheet is to be made.
 *
 * @param paper what it is printed on
 * @param units whose units it is written in
 * @param date the day that stands on it
 */
public record SheetSetting(Paper paper, Units units, LocalDate date) {}
