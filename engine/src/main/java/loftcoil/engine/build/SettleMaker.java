package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.sheet.Headings;
import loftcoil.engine.tank.Box;
import loftcoil.engine.tank.LyingCylinder;
import loftcoil.engine.tank.TankShape;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/** What somebody who builds from this sheet alone would still have to ask, so that it is settled before the saw is in the tube. */
final class SettleMaker {

    private static final Sentences SENTENCES = Sentences.read(SettleMaker.class, "settle.properties");
    private static final double ALONG_M = 0.01;

    private SettleMaker() {}

    static List<MeasuredText> of(Design design, Headings headings) {
        List<MeasuredText> open = new ArrayList<>();
        boolean unled = Stream.concat(design.hotLegs().stream(), design.coldLegs().stream())
                .filter(leg -> leg.levelRunM() > ALONG_M)
                .map((Leg leg) -> headings.of(leg))
                .anyMatch(heading -> heading.isEmpty());
        if (unled) {
            open.add(SENTENCES.say("settle.leads"));
        }
        open.add(through(design));
        open.add(SENTENCES.say("settle.ports"));
        open.add(SENTENCES.say("settle.coil-ends"));
        design.window().ifPresent(window -> open.add(panes(design.tank().shape(), window.areaM2())));
        open.add(SENTENCES.say("settle.ways"));
        open.add(SENTENCES.say("settle.holds"));
        if (!design.taps().isEmpty()) {
            open.add(SENTENCES.say("settle.taps"));
        }
        return open;
    }

    /** An area as a square, and as high to its width as the tank that it warms. */
    private static MeasuredText panes(TankShape shape, double areaM2) {
        double highM = Math.sqrt(areaM2 * shape.heightM() / shape.frontM());
        return SENTENCES.say(
                "settle.panes",
                "area",
                new Measure(areaM2, MeasureKind.AREA_M2),
                "square",
                Measure.metres(Math.sqrt(areaM2)),
                "wide",
                Measure.metres(areaM2 / highM),
                "high",
                Measure.metres(highM));
    }

    private static MeasuredText through(Design design) {
        TankShape shape = design.tank().shape();
        double highM = design.tank().heightM();
        double wideM = shape.frontM();
        double deepM = wideM;
        if (shape instanceof LyingCylinder) {
            deepM = highM;
        } else if (shape instanceof Box box) {
            deepM = box.widthM();
        }
        return SENTENCES.say(
                "settle.through",
                "wide",
                Measure.metres(wideM),
                "deep",
                Measure.metres(deepM),
                "high",
                Measure.metres(highM));
    }
}
