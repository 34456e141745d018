package loftcoil.runner.handout;

import com.openhtmltopdf.extend.FSTextBreaker;

/** Lets a line end at a space only, so that {@code 104 °F} and {@code 1-1/2 in} stay whole. */
final class SpaceBreaker implements FSTextBreaker {

    private static final int NO_MORE = -1;

    private String text = "";
    private int at;

    @Override
    public void setText(String newText) {
        text = newText;
        at = 0;
    }

    /** Offset at which the next line may begin: behind each space, and the end of the text. */
    @Override
    public int next() {
        if (at >= text.length()) {
            return NO_MORE;
        }
        int space = text.indexOf(' ', at);
        at = space < 0 ? text.length() : space + 1;
        return at;
    }
}
