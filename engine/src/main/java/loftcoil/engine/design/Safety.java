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
        Optional<Boolean> childrenOrFrail) {

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
            Optional.empty());

    /** The same with another vent, or with nothing said of it. */
    public Safety withVent(Optional<Vent> newVent) {
        return new Safety(
                newVent, coldFeed, materials, structure, absence, antifreeze, flue, fireRoom, childrenOrFrail);
    }

    /** The same with another cold feed, or with nothing said of it. */
    public Safety withColdFeed(Optional<ColdFeed> newColdFeed) {
        return new Safety(
                vent, newColdFeed, materials, structure, absence, antifreeze, flue, fireRoom, childrenOrFrail);
    }

    /** The same with another absence, or with nothing said of it. */
    public Safety withAbsence(Optional<Absence> newAbsence) {
        return new Safety(
                vent, coldFeed, materials, structure, newAbsence, antifreeze, flue, fireRoom, childrenOrFrail);
    }
}
