package loftcoil.engine.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Suggestions for a name that is not in a set. */
class KnownNamesTest {

    private static final KnownNames MONTHS =
            new KnownNames("month", List.of("January", "February", "March", "April", "May", "June", "July"));

    @Example
    void theNearestComesFirst() {
        assertEquals("February", MONTHS.nearest("febuary").get(0));
        assertEquals("March", MONTHS.nearest("MARCH").get(0));
        assertEquals(5, MONTHS.nearest("x").size());
    }

    @Example
    void numbersCountMoreThanLetters() {
        KnownNames tubes = new KnownNames("tube", List.of("B88 M 1", "B88 L 3/4", "EN1057 15x1.0", "EN1057 22x0.9"));
        assertEquals("EN1057 22x0.9", tubes.nearest("22 mm").get(0));
        assertEquals("B88 L 3/4", tubes.nearest("3/4 in").get(0));
    }

    @Example
    void nearerNumbersComeBeforeFartherOnes() {
        KnownNames tubes = new KnownNames(
                "tube",
                List.of(
                        "EN1057 15x1.0",
                        "EN1057 22x1.0",
                        "EN1057 28x1.2",
                        "EN1057 35x1.2",
                        "EN1057 35x1.5",
                        "EN1057 42x1.2",
                        "EN1057 54x2.0"));
        assertEquals(
                List.of("EN1057 35x1.2", "EN1057 35x1.5", "EN1057 22x1.0", "EN1057 15x1.0", "EN1057 42x1.2"),
                tubes.nearest("EN1057 35x1.0"));
        assertEquals("EN1057 42x1.2", tubes.nearest("EN1057 40x1.2").get(0));
        assertEquals(5, tubes.nearest("1.2.3/0 and 00/0.0 and 9/9/9").size());
    }

    @Example
    void theFaultTellsPathGivenAndAllowed() {
        List<String> thirteen = Stream.concat(
                        MONTHS.names().stream(), Stream.of("Winter", "Spring", "Summer", "Autumn", "Night", "Noon"))
                .toList();
        Fault fault = new KnownNames("month", thirteen).unknown("fire.months[2]", "Juny");
        assertEquals("fire.months[2]", fault.path());
        assertEquals("\"Juny\"", fault.given());
        assertTrue(fault.allowed().startsWith("13 names, the nearest: Ju"), fault.allowed());
        assertEquals("no month of that name is known", fault.why());
    }

    @Example
    void aShortSetIsListedWhole() {
        Fault fault = new KnownNames("side", List.of("hot", "cold")).unknown("side", "warm");
        assertEquals("hot, cold", fault.allowed());
    }

    @Example
    void theSetIsItsOwnCopy() {
        List<String> given = new ArrayList<>(List.of("hot"));
        KnownNames known = new KnownNames("side", given);
        given.add("cold");
        assertEquals(List.of("hot"), known.names());
        assertThrows(UnsupportedOperationException.class, () -> known.names().add("cold"));
    }

    @Example
    void aVeryLongNameStaysOnOneShortLine() {
        Fault fault = MONTHS.unknown("month", "May\n" + "x".repeat(5_000_000));
        assertTrue(fault.line().length() < 250, fault.line());
        assertEquals(1, fault.line().lines().count());
        assertTrue(fault.given().startsWith("\"May x") && fault.given().endsWith("…\""));
    }

    @Property(seed = "20261125", tries = 200)
    void anyTextFindsSuggestions(@ForAll String given) {
        assertEquals(5, MONTHS.nearest(given).size());
        assertTrue(MONTHS.names().containsAll(MONTHS.nearest(given)));
    }
}
