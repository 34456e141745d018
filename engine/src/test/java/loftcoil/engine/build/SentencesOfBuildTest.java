package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.SafeBothy;
import loftcoil.engine.sheet.Sheet;
import loftcoil.engine.words.BareNumbers;
import loftcoil.engine.words.ClassStrings;
import loftcoil.engine.words.SaidCodes;
import loftcoil.engine.words.Sentences;
import org.junit.jupiter.api.Test;

/**
 * The sentences of the build sheet: each that is asked for is there, each that is there is said of some design, and a number in
 * one stands in a hole, so that it can be shown in any units.
 */
class SentencesOfBuildTest {

    private static final List<Path> FILES = ClassStrings.files(BuildSheet.class, ".properties");

    /** Far fewer than there are: it only has to notice a search that finds nothing. */
    private static final int LEAST_SENTENCES = 150;

    private static final Pattern CODE = Pattern.compile("[a-z]+(?:[.-][a-z]+)*");

    /** Digits that measure nothing, or no unit changes them. */
    private static final Set<String> ALLOWED = Set.of("HSG274 part 2", "WHO 2007", "Minute 0", "C16", "EN 1995-1-1, 6.1.6, 6.1.7 and 7.2", "service class 2", "EN 1993-1-1, 6.2.3");

    /** Said as the name of a part in a column, not as a sentence. */
    private static final Set<String> NAMES = Set.of("cuts.coil", "cuts.trunk");

    /** One leg past a cellar: what rises to the tank is colder than what comes down. */
    private static final String CHILLED_RISER =
            """
            [{"name": "up to the tank", "tube": "EN1057 22x0.9", "lengthM": 2.5, "riseM": 1.8, "aroundC": 5}]
            """;

    /** With {@link #STEADY} they walk every branch of every maker. */
    private static final List<Design> WITH_YEAR = List.of(
            Example.orchardBothy(),
            SafeBothy.edited(
                    List.of("/window/shutter", "{\"resistanceM2KPerW\": 1.1, \"shutFromH\": 18, \"shutForH\": 13}")),
            SafeBothy.edited(List.of("/coil/heatKW", "null", "/coil/lengthM", "2.2")));

    /** Those whose year says nothing new: it takes far longer than all the rest. */
    private static final List<Design> STEADY = List.of(
            SafeBothy.design(),
            SafeBothy.edited(List.of("/coil/heatKW", "1.0", "/window", "null")),
            SafeBothy.edited(List.of("/coil/heatKW", "null", "/coil/lengthM", "4")),
            SafeBothy.edited(List.of("/coil/heatKW", "null", "/coil/lengthM", "2", "/tank/volumeL", "40")),
            SafeBothy.edited(List.of("/coil/heatKW", "null", "/coil/lengthM", "12", "/tank/volumeL", "40")),
            SafeBothy.edited(List.of("/coil/heatKW", "0", "/fire", "null")),
            SafeBothy.edited(
                    List.of("/coil/heatKW", "0", "/fire", "null", "/window", "null", "/hotLegs", CHILLED_RISER)),
            SafeBothy.edited(List.of("/taps/0/mixerC", "45", "/coil/fittings", "{}")),
            SafeBothy.edited(
                    List.of("/trunk", "{\"tube\": \"EN1057 22x0.9\", \"lengthM\": 3}", "/taps/0/ratedLPerMin", "12")),
            SafeBothy.with("/tank/shape", "\"lying cylinder\""),
            SafeBothy.with("/tank/shape", "\"box\""),
            SafeBothy.with("/window/coating", "\"soft\""),
            SafeBothy.design().borrowed(),
            SafeBothy.edited(
                            List.of("/coil/heatKW", "0", "/fire", "null", "/window", "null", "/hotLegs", CHILLED_RISER))
                    .borrowed(),
            SafeBothy.with("/tank/radiatorKW", "2"),
            SafeBothy.with("/safety/vent", "{\"kind\": \"loose lid\"}"),
            SafeBothy.edited(List.of("/coil/windingMm", "220", "/coil/lengthM", "2.8", "/coil/fittings", "{}")),
            SafeBothy.edited(List.of("/coil/fittings", "{\"elbow45\": 4}")),
            Changes.apply(Example.orchardBothy(), "legs.tube", "22x1.5 steel"),
            SafeBothy.with("/tank/volumeL", "4000"),
            Example.orchardBothy().withElbowsPerLeg(0),
            Example.orchardBothy().withElbowsPerLeg(20),
            Changes.apply(Example.orchardBothy(), "fire.burnKgPerH", "8").withCoilHeatKW(16),
            Changes.apply(Example.orchardBothy(), "coil.tube", "22x1.5 stainless"),
            Changes.apply(Example.orchardBothy(), "legs.tube", "22x1.0"),
            Example.orchardBothy().withTankBaseM(-0.6));

    private static Set<String> codes() {
        return FILES.stream()
                .flatMap(file ->
                        Sentences.read(BuildSheet.class, file.getFileName().toString()).codes().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void thereAreSentences() {
        assertTrue(codes().size() >= LEAST_SENTENCES, codes().toString());
        assertEquals(
                List.of(),
                codes().stream().filter(code -> !CODE.matcher(code).matches()).toList());
    }

    /** What the makers' classes have as literals that begin as codes do. */
    @Test
    void everySentenceAskedForIsThereAndNoOther() {
        Set<String> codes = codes();
        Set<String> topics =
                codes.stream().map(code -> code.substring(0, code.indexOf('.'))).collect(Collectors.toSet());
        Set<String> asked = ClassStrings.beside(BuildSheet.class).stream()
                .filter(text -> text.contains(".") && topics.contains(text.split("\\.", 2)[0]))
                .filter(text -> FILES.stream().noneMatch(file -> file.endsWith(text)))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> known = codes.stream()
                .flatMap(code -> Stream.of(code, code.substring(0, code.lastIndexOf('.'))))
                .collect(Collectors.toSet());
        assertEquals(Set.of(), minus(asked, known), "asked for, but not there");
        Set<String> used = codes.stream()
                .filter(code -> asked.contains(code) || asked.contains(code.substring(0, code.lastIndexOf('.'))))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), minus(codes, used), "there, but never asked for");
    }

    /** A hole of the wrong kind, or one left open, is a fault as soon as its sentence is said. */
    @Test
    void everySentenceIsSaidOfSomeDesign() {
        Set<String> said = new TreeSet<>();
        WITH_YEAR.forEach(design -> said.addAll(SaidCodes.of(BuildSheet.of(design))));
        STEADY.forEach(design -> said.addAll(SaidCodes.of(BuildSheet.of(Sheet.of(design)))));
        assertEquals(NAMES, minus(codes(), said));
    }

    @Test
    void aNumberStandsInAHole() {
        assertEquals(Set.of(), BareNumbers.in(FILES, ALLOWED));
    }

    private static Set<String> minus(Set<String> all, Set<String> others) {
        Set<String> rest = new TreeSet<>(all);
        rest.removeAll(others);
        return rest;
    }
}
