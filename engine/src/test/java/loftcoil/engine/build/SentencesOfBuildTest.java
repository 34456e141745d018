package loftcoil.engine.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.design.SafeBothy;
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
    private static final Set<String> ALLOWED = Set.of("WHO 2007", "Minute 0");

    /** Between them they walk every branch of every maker. */
    private static final List<Design> DESIGNS = List.of(
            Example.orchardBothy(),
            SafeBothy.design(),
            SafeBothy.edited(List.of("/coil/heatKW", "1.0", "/window", "null")),
            SafeBothy.edited(List.of("/window/shutter", "{\"resistanceM2KPerW\": 1.1, \"shutFromH\": 18, \"shutForH\": 13}")),
            SafeBothy.edited(List.of("/coil/heatKW", "null", "/coil/lengthM", "2.2")),
            SafeBothy.edited(List.of("/coil/heatKW", "0", "/fire", "null")),
            SafeBothy.edited(List.of("/taps/0/mixerC", "45", "/coil/fittings", "{}")),
            Example.orchardBothy().withTankBaseM(-0.6));

    private static Set<String> codes() {
        return FILES.stream()
                .flatMap(file -> Sentences.read(BuildSheet.class, file.getFileName().toString()).codes().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void thereAreSentences() {
        assertTrue(codes().size() >= LEAST_SENTENCES, codes().toString());
        assertEquals(List.of(), codes().stream().filter(code -> !CODE.matcher(code).matches()).toList());
    }

    /** What the makers' classes have as literals that begin as codes do. */
    @Test
    void everySentenceAskedForIsThereAndNoOther() {
        Set<String> codes = codes();
        Set<String> topics = codes.stream().map(code -> code.split("\\.")[0]).collect(Collectors.toSet());
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
        for (Design design : DESIGNS) {
            said.addAll(SaidCodes.of(BuildSheet.of(design)));
        }
        assertEquals(Set.of(), minus(codes(), said));
    }

    @Test
    void aNumberStandsInAHole() throws IOException {
        List<String> bare = new ArrayList<>();
        Set<String> needed = new TreeSet<>();
        for (Path file : FILES) {
            for (Object sentence : raw(file).values()) {
                String text = sentence.toString().replaceAll("\\{[^{}]*}", "");
                for (String allowed : ALLOWED) {
                    if (text.contains(allowed)) {
                        needed.add(allowed);
                        text = text.replace(allowed, "");
                    }
                }
                if (text.matches("(?s).*[\\d°].*")) {
                    bare.add(sentence.toString());
                }
            }
        }
        assertEquals(List.of(), bare);
        assertEquals(ALLOWED, needed, "an exception that no sentence needs");
    }

    private static Properties raw(Path file) throws IOException {
        Properties sentences = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
            sentences.load(in);
        }
        return sentences;
    }

    private static Set<String> minus(Set<String> all, Set<String> others) {
        Set<String> rest = new TreeSet<>(all);
        rest.removeAll(others);
        return rest;
    }
}
