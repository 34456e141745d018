package loftcoil.runner.session;

import java.util.List;
import java.util.Set;

/**
 * A piece that ran to its end.
 *
 * @param piece the piece
 * @param declares names it declares, with what kind each is
 * @param type the Java type of its value; empty where it has none
 * @param invocations how its compiled code was entered
 */
record DonePiece(Piece piece, Set<String> declares, String type, List<HostControl.Invocation> invocations) {

    DonePiece {
        declares = Set.copyOf(declares);
        invocations = List.copyOf(invocations);
    }
}
