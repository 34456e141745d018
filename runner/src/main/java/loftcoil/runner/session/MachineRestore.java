package loftcoil.runner.session;

import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import org.jspecify.annotations.Nullable;

/** Brings a fresh Java machine to the state of a lost one, quietly. */
final class MachineRestore {

    private static final int TRIES = 5;

    private final Spare spare;
    private final Replay replay;
    private final Limits limits;
    private @Nullable DonePiece endedAt;

    MachineRestore(Spare spare, Replay replay, Limits limits) {
        this.spare = spare;
        this.replay = replay;
        this.limits = limits;
    }

    /** A machine with all that can be had back; a piece that does not end is left out from then on, and one at which two machines ended: the
     * first may have been ended by somebody else. */
    Shell shell() {
        for (int i = 0; i < TRIES; i++) {
            Shell fresh = spare.take();
            if (filled(fresh)) {
                return fresh;
            }
            fresh.close();
        }
        replay.clear();
        return spare.take();
    }

    private boolean filled(Shell fresh) {
        for (DonePiece done : replay.pieces()) {
            boolean went;
            try (RunningNow watched = new RunningNow(fresh, limits)) {
                SnippetEvent event = Shell.main(fresh.eval(done.piece().source()));
                went = event.status() != Snippet.Status.REJECTED
                        && event.exception() == null
                        && !fresh.withoutCode(event)
                        && !Shell.lost(event)
                        && watched.cause().isEmpty()
                        && !fresh.ended();
            } catch (IllegalStateException e) {
                went = false;
            }
            boolean ended = fresh.ended();
            if (!went && (!ended || done.equals(endedAt))) {
                replay.drop(done);
            }
            if (ended) {
                endedAt = done;
                return false;
            }
        }
        return true;
    }
}
