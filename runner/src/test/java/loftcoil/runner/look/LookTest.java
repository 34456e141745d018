package loftcoil.runner.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The colours: they can be read in both schemes, are told apart by every eye, and stand in one file. */
class LookTest {

    private static final Path RESOURCES = Path.of("src/main/resources/loftcoil/runner");

    /** WCAG 2.2, success criterion 1.4.3, level AA: text. */
    private static final double TEXT = 4.5;
    /** WCAG 2.2, success criterion 1.4.11, level AA: signs, lines and edges that carry meaning. */
    private static final double SIGN = 3;
    /**
     * Of two curves, CIE 1976. A difference of 2.3 is just noticed side by side (Mahy, Van Eycken and Oosterlinck 1994, from
     * memory); eight times that is plain on thin lines (common practice, no source).
     */
    private static final double APART = 18.4;

    private static final List<String> CURVES =
            List.of("curve-1", "curve-2", "curve-3", "curve-4", "curve-5", "curve-6");
    private static final List<String> WARMTHS = List.of("warm-0", "warm-1", "warm-2", "warm-3", "warm-4", "warm-5");

    private static final List<String> GROUNDS = List.of("ground", "paper", "well");

    private static List<Colours> schemes() {
        return List.of(Colours.light(), Colours.dark());
    }

    @Test
    void theContrastOfBlackOnWhiteIsTwentyOne() {
        assertEquals(21, Seen.of("#000000").contrastWith(Seen.of("#ffffff")), 1e-9);
        // Worked examples of WCAG's technique G18 and its tools: #777777 on white just misses, #767676 just holds (from
        // memory).
        assertTrue(Seen.of("#777777").contrastWith(Seen.of("#ffffff")) < TEXT);
        assertTrue(Seen.of("#767676").contrastWith(Seen.of("#ffffff")) >= TEXT);
    }

    @Test
    void greyStaysGreyForEveryEye() {
        for (Seen.Eye eye : Seen.Eye.values()) {
            Seen grey = Seen.of("#808080");
            assertEquals(0, grey.by(eye).differenceFrom(grey), 0.01, eye.toString());
        }
    }

    @Test
    void bothSchemesHaveTheSameColours() {
        assertEquals(
                new TreeSet<>(Colours.light().values().keySet()),
                new TreeSet<>(Colours.dark().values().keySet()));
        assertTrue(Colours.light().values().size() > 40);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ink", "soft", "link", "act", "right", "wrong", "caution"})
    void textCanBeReadOnEveryGround(String text) {
        for (Colours scheme : schemes()) {
            GROUNDS.forEach(ground -> contrast(scheme, text, ground, TEXT));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "on-act, act",
        "on-act, act-deep",
        "on-slate, slate",
        "slate-mark, slate",
        "ink, right-ground",
        "ink, wrong-ground",
        "ink, caution-ground",
        "ink, noted-ground",
        "ink, picked",
        "soft, noted-ground",
        "soft, right-ground",
        "soft, wrong-ground",
        "soft, caution-ground",
        "link, noted-ground",
        "link, right-ground",
        "link, wrong-ground",
        "link, caution-ground",
        "right, right-ground",
        "wrong, wrong-ground",
        "caution, caution-ground",
        "danger-ink, danger-ground",
        "danger-soft, danger-ground",
        "danger-mark, danger-ground",
        "danger-link, danger-ground",
        "ink, code",
        "act, code",
        "link, code",
        "right, code",
        "soft, code",
        "act, picked",
        "right, picked",
        "soft, picked",
        "ink, water-ground",
        "ink, hot-ground"
    })
    void textCanBeReadOnItsOwnGround(String text, String ground) {
        schemes().forEach(scheme -> contrast(scheme, text, ground, TEXT));
    }

    @ParameterizedTest
    @ValueSource(strings = {"edge", "iron", "board", "pane", "bare", "ghost"})
    void signsStandOutFromTheirGround(String sign) {
        for (Colours scheme : schemes()) {
            contrast(scheme, sign, "ground", SIGN);
            contrast(scheme, sign, "paper", SIGN);
        }
    }

    @Test
    void curvesAndPipesStandOutFromTheirGround() {
        for (Colours scheme : schemes()) {
            for (String ground : List.of("ground", "paper")) {
                CURVES.forEach(curve -> contrast(scheme, curve, ground, SIGN));
                WARMTHS.forEach(warmth -> contrast(scheme, warmth, ground, SIGN));
            }
        }
        CURVES.forEach(curve -> assertTrue(
                seen(Colours.light(), curve).contrastWith(Seen.of("#ffffff")) >= SIGN, curve + " on white paper"));
    }

    private static void contrast(Colours scheme, String front, String ground, double least) {
        double contrast = seen(scheme, front).contrastWith(seen(scheme, ground));
        assertTrue(contrast >= least, front + " on " + ground + ": " + contrast + " in " + name(scheme));
    }

    @Test
    void everyEyeTellsCurvesApart() {
        for (Colours scheme : schemes()) {
            for (int i = 0; i < CURVES.size(); i++) {
                for (int j = 0; j < i; j++) {
                    apart(scheme, CURVES.get(j), CURVES.get(i), APART);
                }
            }
        }
    }

    @Test
    void everyEyeTellsHotFromColdAndRightFromWrong() {
        for (Colours scheme : schemes()) {
            apart(scheme, "warm-0", "warm-5", 2 * APART);
            apart(scheme, "right", "wrong", APART / 2);
            apart(scheme, "caution", "right", APART / 2);
            for (int i = 1; i < WARMTHS.size(); i++) {
                apart(scheme, WARMTHS.get(i - 1), WARMTHS.get(i), APART / 4);
            }
        }
    }

    private static void apart(Colours scheme, String one, String other, double least) {
        for (Seen.Eye eye : Seen.Eye.values()) {
            double difference =
                    seen(scheme, one).by(eye).differenceFrom(seen(scheme, other).by(eye));
            assertTrue(
                    difference >= least,
                    one + " and " + other + ": " + difference + " for an eye " + eye + " in " + name(scheme));
        }
    }

    /** Hues of L*a*b*: red from 10 to 50 degrees, blue from 225 to 300; what is nearly grey has no hue. */
    @Test
    void redAndBlueAreForHotAndColdAlone() {
        for (Colours scheme : schemes()) {
            for (Map.Entry<String, String> each : scheme.values().entrySet()) {
                Seen.Lab lab = Seen.of(each.getValue()).lab();
                boolean redOrBlue =
                        (lab.hueDeg() > 10 && lab.hueDeg() < 50) || (lab.hueDeg() > 225 && lab.hueDeg() < 300);
                boolean ofWater = each.getKey().matches("warm-.|water-ground|hot-ground");
                assertTrue(
                        ofWater || lab.chroma() < 12 || !redOrBlue,
                        each + " has hue " + lab.hueDeg() + " in " + name(scheme));
            }
        }
    }

    @Test
    void everyStyleSheetTakesItsColoursFromTheOneFile() throws IOException {
        Pattern used = Pattern.compile("var\\(--([a-z0-9-]+)");
        Pattern own = Pattern.compile("--([a-z0-9-]+):");
        Pattern colour = Pattern.compile("#[0-9a-fA-F]{3,8}(?=[;\\s,)])|\\brgb\\(");
        List<String> strays = new ArrayList<>();
        int variables = 0;
        TreeSet<String> known = new TreeSet<>(Colours.light().values().keySet());
        for (Path file : sheets()) {
            own.matcher(Files.readString(file)).results().forEach(found -> known.add(found.group(1)));
        }
        for (Path file : sheets()) {
            String css = Files.readString(file);
            for (Matcher matcher = used.matcher(css); matcher.find(); variables++) {
                if (!known.contains(matcher.group(1))) {
                    strays.add(file + ": no colour is called " + matcher.group(1) + "; colours.css has them all");
                }
            }
            // A curtain behind a dialog and plain white paper are no colours.
            String bare = css.replaceAll("rgb\\(0 0 0 / 50%\\)|#fff\\b|#ffffff|#000\\b", "");
            if (!file.endsWith("colours.css") && colour.matcher(bare).find()) {
                strays.add(file + " has a colour of its own");
            }
        }
        assertEquals(List.of(), strays);
        assertTrue(variables > 150, variables + " uses of a colour");
    }

    private static List<Path> sheets() throws IOException {
        try (Stream<Path> files = Files.walk(RESOURCES)) {
            return files.filter(file -> file.toString().endsWith(".css"))
                    .sorted()
                    .toList();
        }
    }

    private static Seen seen(Colours scheme, String name) {
        return Seen.of(scheme.of(name));
    }

    private static String name(Colours scheme) {
        return scheme == Colours.light() ? "light" : "dark";
    }
}
