package loftcoil.engine.supply;

/**
 * A pipe and what it leads to.
 *
 * @param pipe the pipe with its fittings
 * @param end an outlet, or a tee with further branches
 */
public record Branch(SupplyPipe pipe, SupplyEnd end) {}
