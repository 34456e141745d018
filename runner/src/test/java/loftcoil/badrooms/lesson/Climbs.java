package loftcoil.badrooms.lesson;

import java.time.Instant;
import jdk.jshell.JShell;
import loftcoil.badrooms.terminal.Prints;
import loftcoil.engine.water.Water;

/** Breaks the ladder, the clock's room, the streams' room, the exit's room, JShell's room and the engine's doors. */
final class Climbs {

    private Climbs() {}

    static Prints later() {
        System.err.println(Instant.now() + " " + Water.densityKgPerM3(20) + " " + JShell.class);
        if (System.nanoTime() == 0) {
            System.exit(1);
        }
        return new Prints();
    }
}
