package loftcoil.engine.build;

import java.util.List;
import java.util.Optional;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/**
 * How the pipes are held, how far they grow, how one turns from the next, and the room that the coil takes.
 *
 * @param holds the pipes of loop and taps, in the order of the cutting list
 * @param turns from each leg of the loop to the next, coil and ports left out
 * @param coil room of the coil in the firebox
 * @param rules how to hold and bend
 */
public record Fixings(List<Hold> holds, List<Turn> turns, CoilRoom coil, List<MeasuredText> rules) {

    /** Keeps copies of the lists. */
    public Fixings {
        holds = List.copyOf(holds);
        turns = List.copyOf(turns);
        rules = List.copyOf(rules);
    }

    /**
     * How a pipe is held.
     *
     * @param mark its mark on the cutting list, such as {@code H1}
     * @param leg what the builder calls it
     * @param tube name of its tube
     * @param upright whether it climbs more than it goes along; a pipe to a tap is taken to lie
     * @param clips clips on it
     * @param apart longest way from clip to clip, m
     * @param growth how much longer it is at boiling than when it was built, mm
     */
    public record Hold(
            String mark, String leg, String tube, boolean upright, int clips, Measure apart, Measure growth) {}

    /**
     * How one leg turns from the one before it.
     *
     * @param from mark of the leg that comes
     * @param to mark of the leg that goes on
     * @param straightOn angle of the bend where both run on in one line seen from above, degrees
     * @param aside angle of the bend where the second leaves square to the first seen from above, degrees
     * @param ninetyAt how far the second turns seen from above so that a bend of 90° fits, degrees; empty where none does
     * @param fortyFiveAt the same for a bend of 45°; empty where none does
     * @param bend the bend as it is built, degrees: known where one of both stands upright or both have a compass direction
     * @param turned how far the second turns to the right seen from above, degrees, negative to the left; empty where one of both stands
     *     upright or nobody took their directions
     */
    public record Turn(
            String from,
            String to,
            Measure straightOn,
            Measure aside,
            Optional<Measure> ninetyAt,
            Optional<Measure> fortyFiveAt,
            Optional<Measure> bend,
            Optional<Measure> turned) {}

    /**
     * The room that the coil takes, tube included.
     *
     * @param wideM its width, m
     * @param deepM its depth, m
     * @param highM its height, m
     * @param shape how it was taken to be bent
     */
    public record CoilRoom(Measure wideM, Measure deepM, Measure highM, MeasuredText shape) {}
}
