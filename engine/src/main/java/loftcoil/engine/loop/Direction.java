package loftcoil.engine.loop;

/** Index of the two ways water can go round. */
final class Direction {
    static final int FORWARD = 0;
    static final int BACKWARD = 1;

    private Direction() {}

    static double sign(int direction) {
        return direction == FORWARD ? 1 : -1;
    }
}
