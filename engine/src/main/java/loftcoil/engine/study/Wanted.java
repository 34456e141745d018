package loftcoil.engine.study;

import loftcoil.engine.design.Design;

/**
 * What a proposal is asked for.
 *
 * @param design the design whose loop is to be chosen
 * @param aims what it has to do
 * @param choices what may be chosen
 * @param prices what things cost
 */
public record Wanted(Design design, Aims aims, Choices choices, Prices prices) {}
