package loftcoil.engine.loop;

/**
 * The place in the loop that is nearest to boiling.
 *
 * @param marginK boiling temperature there minus water temperature there, K
 * @param where the place in words, such as {@code outlet of the coil}
 * @param levelM its level above the floor, m
 * @param boilingC boiling temperature at the pressure there, °C
 */
public record BoilMargin(double marginK, String where, double levelM, double boilingC) {}
