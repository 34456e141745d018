package loftcoil.engine.run;

import java.util.Optional;

/**
 * What a year of mean days leaves out: a clear week and a dull one.
 *
 * @param clear the hottest clear week; empty where there are no panes
 * @param dull the worst dull week; empty where there are no panes or nothing is drawn
 */
public record Weeks(Optional<ClearSpell> clear, Optional<DullWeek> dull) {

    /** Neither. */
    public static final Weeks NONE = new Weeks(Optional.empty(), Optional.empty());
}
