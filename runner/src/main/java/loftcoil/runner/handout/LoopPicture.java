package loftcoil.runner.handout;

import java.util.Map;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.sheet.Currents;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.words.Units;
import loftcoil.runner.show.Html;

/** A loop in elevation within a lesson on paper. */
final class LoopPicture {

    private static final DrawingScale.Room ROOM = new DrawingScale.Room(110, 88);

    private LoopPicture() {}

    /**
     * The drawing with words beneath.
     *
     * @param caption plain text
     */
    static String of(Design design, String caption, Units units) {
        Drawing drawing = Drawing.of(design);
        DrawingScale scale = DrawingScale.fitting(drawing.bounds(), ROOM, units);
        String svg = ElevationSvg.of(
                drawing, Optional.of(Currents.of(design, Sheet.USUAL_TANK_C)), Map.of(), new MeasureText(units), scale);
        return Html.element("div", "drawing", svg + Html.element("p", "small", Html.text(caption)));
    }
}
