package loftcoil.engine.design;

import java.util.Optional;

/**
 * What the builder says about the things that can hurt somebody. Every part may be left out: what is not said is asked for,
 * never taken as a danger.
 *
 * @param vent the open vent of the tank
 * @param coldFeed how the tank is filled up again
 * @param materials what tank and pipes are made of, besides the copper of the loop
 * @param structure what carries the tank
 * @param absence when the dwelling stands empty and cold
 * @param antifreeze whether antifreeze is to be put into the water
 * @param flue distances of heater and flue
 * @param fireRoom the room the fire is in
 * @param childrenOrFrail whether children, old or ill people use the taps
 * @param signedNotForDrinking whether a sign at each tap says that its water is not for drinking or cooking
 */
public record Safety(
        Optional<Vent> vent,
        Optional<ColdFeed> coldFeed,
        Optional<Materials> materials,
        Optional<Structure> structure,
        Optional<Absence> absence,
        Optional<Boolean> antifreeze,
        Optional<Flue> flue,
        Optional<FireRoom> fireRoom,
        Optional<Boolean> childrenOrFrail,
        Optional<Boolean> signedNotForDrinking) {

    /** Nothing said at all. */
    public static final Safety UNSAID = new Safety(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
}
