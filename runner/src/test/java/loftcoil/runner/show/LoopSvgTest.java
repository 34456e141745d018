package loftcoil.runner.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loftcoil.engine.design.Example;
import loftcoil.engine.sheet.Drawing;
import loftcoil.engine.words.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The picture of a loop stays readable however low its tank stands. */
class LoopSvgTest {

    private static final Pattern LABEL =
            Pattern.compile("<text x=\"[-\\d.]+\" y=\"([-\\d.]+)\"[^>]*>−?\\d+\\.\\d\\d m ");
    private static final Pattern VIEW = Pattern.compile("viewBox=\"0 (-?\\d+) (\\d+) (\\d+)\"");

    @ParameterizedTest
    @ValueSource(doubles = {-2, -0.1, 0.0, 0.2, 0.25, 2.2, 6})
    void labelsNeitherTouchNorLeaveThePicture(double tankBaseM) {
        String svg = LoopSvg.picture(
                        "Your loop", Drawing.of(Example.orchardBothy().withTankBaseM(tankBaseM)), Units.METRIC)
                .svg();
        List<Double> baselines = LABEL.matcher(svg)
                .results()
                .map(found -> Double.valueOf(found.group(1)))
                .sorted()
                .toList();
        assertEquals(7, baselines.size(), svg);
        for (int i = 1; i < baselines.size(); i++) {
            // The letters are 22 tall.
            assertTrue(baselines.get(i) - baselines.get(i - 1) >= 22, baselines::toString);
        }
        Matcher view = VIEW.matcher(svg);
        assertTrue(view.find(), svg);
        MatchResult box = view.toMatchResult();
        double top = Double.parseDouble(box.group(1));
        assertTrue(baselines.get(0) - 18 >= top, svg);
        assertTrue(baselines.get(6) + 5 <= top + Double.parseDouble(box.group(3)), svg);
    }
}
