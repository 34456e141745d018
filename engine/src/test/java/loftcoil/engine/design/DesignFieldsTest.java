package loftcoil.engine.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.fault.Allowed;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.words.Numeral;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Walks the tables: what holds for one field of a design holds for all, also for those that are yet to come. */
class DesignFieldsTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    /** A design in which every field stands that there can be. */
    private static final Design WHOLE = whole();

    static Stream<String> paths() {
        return DesignFields.of(WHOLE).stream().map(DesignFields.Value::path);
    }

    static List<DesignField> known() {
        return DesignFields.known();
    }

    @Test
    void everyFieldThereCanBeStandsInTheDesignThatIsWalked() {
        Set<String> standing = DesignFields.of(WHOLE).stream()
                .filter(value -> value.text().isPresent())
                .map(value -> value.field().path())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(DesignFields.paths()), standing);
        assertTrue(standing.size() > 90, standing.size() + " fields");
    }

    @ParameterizedTest
    @MethodSource("known")
    void everyFieldIsExplained(DesignField field) {
        assertFalse(
                field.label().isBlank()
                        || field.help().isBlank()
                        || field.allowed().isBlank(),
                field.path());
        assertTrue(field.help().endsWith("."), field.help());
        assertTrue(Character.isUpperCase(field.label().codePointAt(0)), field.label());
        assertTrue(field.range().isEmpty() || field.range().get().unit().equals(field.unit()), field.path());
        field.assumed().ifPresent(assumed -> {
            Allowed range = field.range().orElseThrow();
            assertTrue(range.low() <= assumed.low() && assumed.high() <= range.high(), field.path());
            assertTrue(assumed.low() <= assumed.usual() && assumed.usual() <= assumed.high(), field.path());
        });
    }

    @Test
    void someNumbersStandInForWhatNobodySays() {
        assertEquals(
                Set.of("fire.excessAir", "fire.passageCm2", "safety.flue.flueNeedsMm", "safety.flue.heaterNeedsMm"),
                known().stream()
                        .filter(field -> field.assumed().isPresent())
                        .map(DesignField::path)
                        .collect(Collectors.toSet()));
    }

    @ParameterizedTest
    @MethodSource("paths")
    void everyFieldIsWrittenAndRead(String path) throws Exception {
        assertFalse(at(MAPPER.readTree(DesignJson.write(WHOLE)), path).isMissingNode(), path);
        assertEquals(WHOLE, DesignJson.read(DesignJson.write(WHOLE)));
    }

    /** A new text for a field is found by trying; that of a design that takes it is read back the same. */
    @ParameterizedTest
    @MethodSource("paths")
    void everyFieldIsChangedByName(String path) throws Exception {
        Change change = Changes.describe(path);
        String before = Changes.current(WHOLE, path);
        List<String> refusals = new ArrayList<>();
        for (String other : others(change, before)) {
            try {
                Design changed = Changes.apply(WHOLE, path, other);
                assertEquals(other, Changes.current(changed, path));
                assertTrue(
                        DesignFields.compare(WHOLE, changed).stream()
                                .anyMatch(difference -> difference.path().equals(path)),
                        path);
                assertTrue(
                        Differences.between(WHOLE, changed).stream()
                                .anyMatch(said -> said.path().equals(path)
                                        && !said.label().isBlank()
                                        && !said.before()
                                                .metric()
                                                .equals(said.after().metric())),
                        () -> path + " is not told: " + Differences.between(WHOLE, changed));
                assertEquals(changed, DesignJson.read(DesignJson.write(changed)));
                assertEquals(
                        Origin.YOURS,
                        Changes.apply(WHOLE.borrowed(), path, other).origin(path));
                return;
            } catch (RefusedException notThis) {
                refusals.addAll(notThis.lines());
            }
        }
        throw new AssertionError(path + " takes none of " + others(change, before) + ": " + refusals);
    }

    @ParameterizedTest
    @MethodSource("paths")
    void everyFieldIsRefusedWithItsPathWhereItIsWrong(String path) throws Exception {
        DesignField field = DesignFields.at(path).orElseThrow();
        List<String> wrong = new ArrayList<>(List.of("{}", "[[]]", "\"\\u001b\""));
        field.range().ifPresent(range -> {
            wrong.add(Double.toString(range.low() - 1));
            wrong.add(Double.toString(range.high() + 1));
            wrong.add("\"1\"");
            wrong.add("1e999");
        });
        if (!field.options().isEmpty()) {
            wrong.add("\"nonsense\"");
        }
        JsonNode now = at(MAPPER.readTree(DesignJson.write(WHOLE)), path);
        for (String value : wrong) {
            String given =
                    now.isArray() && field.range().isPresent() && !value.startsWith("[") ? "[" + value + "]" : value;
            Set<String> told = faults(edited(path, given));
            assertTrue(
                    told.stream().anyMatch(fault -> fault.equals(path) || fault.startsWith(path + "[")),
                    path + " " + given + ": " + told);
        }
        if (field.range().isPresent() && !now.isArray()) {
            for (String value : List.of("NaN", "a lot", "")) {
                RefusedException refused =
                        assertThrows(RefusedException.class, () -> Changes.apply(WHOLE, path, value), path);
                assertEquals(path, refused.faults().get(0).path());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("paths")
    void whatIsMissingIsToldUnlessItMayBeLeftOut(String path) throws Exception {
        DesignField field = DesignFields.at(path).orElseThrow();
        Set<String> told = faults(edited(path, "null"));
        if (field.leftOut().isEmpty()) {
            assertEquals(Set.of(path), told);
        } else {
            // A field may be left out though another one then asks for it, as an open vent for its tube.
            assertTrue(told.isEmpty() || told.equals(Set.of(path)), told.toString());
            assertFalse(field.leftOut().get().isBlank());
        }
    }

    @Test
    void aDesignComparedWithItselfDiffersInNothing() {
        assertEquals(List.of(), DesignFields.compare(WHOLE, WHOLE));
    }

    @Test
    void twoDesignsDifferWhereTheyWereMadeDifferent() {
        Design bothy = Example.orchardBothy();
        Design raised = bothy.withTankBaseM(2.7);
        assertEquals(
                List.of(
                        "tank.baseM",
                        "coldLegs[0].lengthM",
                        "coldLegs[0].riseM",
                        "hotLegs[0].lengthM",
                        "hotLegs[0].riseM"),
                DesignFields.compare(bothy, raised).stream()
                        .map(DesignFields.Difference::path)
                        .toList());
        DesignFields.Difference base = DesignFields.compare(bothy, raised).get(0);
        assertEquals(List.of(Optional.of("2.2"), Optional.of("2.7")), List.of(base.before(), base.after()));
        Design open = Changes.apply(bothy, "window.shutter", "40 mm of foam board");
        assertEquals(
                List.of(Optional.empty(), Optional.empty(), Optional.empty()),
                DesignFields.compare(bothy, open).stream()
                        .map(DesignFields.Difference::before)
                        .toList());
        assertEquals(3, DesignFields.compare(open, bothy).size());
    }

    @Test
    void aPartOfWhichNothingMayBeAssumedIsNotStartedByAChange() {
        RefusedException refused = assertThrows(
                RefusedException.class, () -> Changes.apply(Example.orchardBothy(), "safety.flue.heightM", "4"));
        assertEquals("safety.flue.heightM", refused.faults().get(0).path());
        assertEquals("not said", Changes.current(Example.orchardBothy(), "safety.flue.heightM"));
    }

    @Test
    void aPlaceThatIsNotThereIsRefusedWithItsPath() {
        for (String path : List.of("coldLegs[9].riseM", "taps[3].name", "use[99].tap")) {
            RefusedException refused =
                    assertThrows(RefusedException.class, () -> Changes.apply(Example.orchardBothy(), path, "1"));
            assertEquals(path, refused.faults().get(0).path());
        }
        for (String path : List.of("coldLegs[].riseM", "coldLegs.riseM", "tank", "tank.base", "coil.fittings.*", "")) {
            assertThrows(RefusedException.class, () -> Changes.describe(path), path);
        }
        String none = "coil.fittings.nonsense";
        RefusedException refused =
                assertThrows(RefusedException.class, () -> Changes.apply(Example.orchardBothy(), none, "1"));
        assertEquals(none, refused.faults().get(0).path());
    }

    @Test
    void whatMayBeLeftOutIsTakenOutByName() {
        Design said = Changes.apply(Example.orchardBothy(), "taps[0].mixerC", "45");
        assertEquals(Example.orchardBothy(), Changes.apply(said, "taps[0].mixerC", "not said"));
    }

    @Test
    void theOtherLegsMakeUpForOneThatRisesLess() {
        Design changed = Changes.apply(Example.orchardBothy(), "coldLegs[1].riseM", "-0.3");
        assertEquals(-1.6, changed.coldLegs().get(0).riseM(), 1e-12);
        assertEquals(-0.3, changed.coldLegs().get(1).riseM());
    }

    @Test
    void drawsGoWithATapThatGetsAnotherName() {
        Design changed = Changes.apply(Example.orchardBothy(), "taps[1].name", "bath");
        assertEquals("bath", changed.use().get(2).tap());
        assertEquals("kitchen sink", changed.use().get(0).tap());
    }

    /** Texts that are not the present one, the likeliest to fit first. */
    private static List<String> others(Change change, String before) {
        Set<String> texts = new LinkedHashSet<>(change.options());
        if (before.matches("-?\\d+(\\.\\d+)?")) {
            double now = Double.parseDouble(before);
            for (double by : List.of(1.0, -1.0, 0.01, -0.01, 0.1, -0.1)) {
                texts.add(Numeral.typed(Math.rint((now + by) * 1000) / 1000));
            }
        }
        change.range().ifPresent(range -> {
            texts.add("2, 3");
            texts.add(String.join(", ", Collections.nCopies(12, "1.5")));
        });
        texts.add("brass, copper");
        texts.add("another name");
        // What names a part that stands elsewhere in the design, as a draw names its tap, takes only such a name.
        WHOLE.taps().forEach(tap -> texts.add(tap.name()));
        texts.remove(before);
        return List.copyOf(texts);
    }

    private static Design whole() {
        try {
            ObjectNode root = (ObjectNode) MAPPER.readTree(SafeBothy.json());
            ((ObjectNode) root.at("/safety/materials"))
                    .set(
                            "plasticPipes",
                            MAPPER.readTree("[{\"name\": \"tap run\", \"inLoop\": false, \"fromHeaterM\": 3}]"));
            ((ObjectNode) root.at("/fire")).put("litAgainFromH", 6).put("litAgainForH", 2);
            root.set(
                    "trunk",
                    MAPPER.readTree("{\"tube\": \"EN1057 22x0.9\", \"lengthM\": 2, \"fittings\": {\"elbow90\": 1}}"));
            Design design = Changes.apply(DesignJson.read(root.toString()), "window.shutter", "40 mm of foam board");
            // Whatever may be left out and is, gets a value: the middle of its range or the first of its options.
            for (DesignFields.Value value : DesignFields.of(design)) {
                if (value.text().isEmpty()) {
                    DesignField field = value.field();
                    String text = field.range()
                            .map(range -> Numeral.typed(Math.rint((range.low() + range.high()) / 2)))
                            .orElseGet(() -> field.options().get(0));
                    design = Changes.apply(design, value.path(), text);
                }
            }
            return DesignJson.read(DesignJson.write(design));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static JsonNode at(JsonNode root, String path) {
        return root.at("/" + path.replace("[", "/").replace("]", "").replace(".", "/"));
    }

    private static String edited(String path, String valueJson) throws Exception {
        JsonNode root = MAPPER.readTree(DesignJson.write(WHOLE));
        String pointer = "/" + path.replace("[", "/").replace("]", "").replace(".", "/");
        int cut = pointer.lastIndexOf('/');
        JsonNode owner = root.at(pointer.substring(0, cut));
        if (owner instanceof ArrayNode) {
            throw new IllegalArgumentException(path + " is an item of a list");
        }
        ((ObjectNode) owner).set(pointer.substring(cut + 1), MAPPER.readTree(valueJson));
        return root.toString();
    }

    private static Set<String> faults(String json) {
        try {
            DesignJson.read(json);
            return Set.of();
        } catch (RefusedException refused) {
            return refused.faults().stream().map(Fault::path).collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
