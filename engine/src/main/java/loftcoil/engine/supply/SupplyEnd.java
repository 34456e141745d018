package loftcoil.engine.supply;

/** What a branch of the supply leads to. */
public sealed interface SupplyEnd permits Outlet, Tee {}
