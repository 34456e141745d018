package loftcoil.runner.session;

import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;

/** Brings a fresh Java machine to the state of a lost one, quietly. */
final class MachineRestore {

    private static final int TRIES = 3;

    private final Spare spare;
    private final Replay replay;
    private final Limits limits;

    MachineRestore(Spare spare, Replay replay, Limits limits) {
        this.spare = spare;
        this.replay = replay;
        this.limits = limits;
    }

    /** A machine with all that can be had back; a piece that ends the machine or does not end is left out from then on. */
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
            if (!went) {
                replay.drop(done);
            }
            if (fresh.ended()) {
                return false;
            }
        }
        return true;
    }
}
