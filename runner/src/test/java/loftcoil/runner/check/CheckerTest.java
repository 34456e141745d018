package loftcoil.runner.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loftcoil.runner.exercise.About;
import loftcoil.runner.exercise.Choice;
import loftcoil.runner.exercise.Code;
import loftcoil.runner.exercise.Decision;
import loftcoil.runner.exercise.KnownMistake;
import loftcoil.runner.exercise.Quantity;
import loftcoil.runner.exercise.Quantity.Slip;
import loftcoil.runner.exercise.Quantity.Temperature;
import loftcoil.runner.exercise.Reckoning;
import loftcoil.runner.exercise.ReckoningException;
import loftcoil.runner.exercise.Reference;
import loftcoil.runner.exercise.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckerTest {

    /** Stands for a session: knows a few expressions, and refuses the rest as a session does. */
    private static final Reckoning RECKONING = java -> {
        Map<String, Double> known = Map.of(
                "pa",
                88.5,
                "zero",
                0.0,
                "nan",
                Double.NaN,
                "slip",
                9.02,
                "near",
                89.0,
                "level",
                60.0,
                "flow",
                0.05,
                "litres",
                3.0);
        Double value = known.get(java.strip());
        if (value == null) {
            throw new ReckoningException("“" + java + "” is not Java");
        }
        return value;
    };

    private static About about(boolean before) {
        return new About("01-a/b", "?", before, new TreeMap<>(), "s", new About.Solution("It is {{answer}}.", "pa"));
    }

    private static Quantity quantity(String java, String unit, Temperature temperature, Slip... slips) {
        return new Quantity(
                about(false),
                new Reference(java, unit),
                List.of(),
                Optional.empty(),
                temperature,
                new Tolerance(0, 0.02),
                List.of(
                        new KnownMistake("slip", "no gravity", "Times gravity."),
                        new KnownMistake("near", "x", "never")),
                List.of(slips));
    }

    private static final Quantity DRIVE = quantity("pa", "Pa", Temperature.NONE);

    private static Verdict check(Quantity quantity, String answer) {
        return Checker.check(quantity, answer, RECKONING);
    }

    @ParameterizedTest
    @CsvSource({
        "88.5",
        "88.5 Pa",
        "0.0885 kPa",
        "about 88 Pa",
        "9.02 mmH2O",
        "0.355 inH2O",
        "0.885 mbar",
        "0.01284 psi",
        "89 Pa"
    })
    void rightInAnyFittingUnit(String answer) {
        Verdict.Right right = assertInstanceOf(Verdict.Right.class, check(DRIVE, answer));
        assertTrue(Math.abs(right.offBy()) <= 0.02, right::toString);
    }

    @ParameterizedTest
    @CsvSource({"60 degrees", "60 deg.", "60°", "60 °", "60 °C", "140 degrees F", "140 °F"})
    void plainDegreesAreTheWantedOnes(String answer) {
        assertInstanceOf(Verdict.Right.class, check(quantity("level", "°C", Temperature.LEVEL), answer));
    }

    @ParameterizedTest
    @CsvSource({"88.5°", "88.5 deg", "88.5 degrees", "88.5"})
    void plainDegreesAreAnAngle(String answer) {
        assertInstanceOf(Verdict.Right.class, check(quantity("pa", "", Temperature.NONE), answer));
    }

    @Test
    void degreesAreNoLength() {
        assertInstanceOf(Verdict.Unreadable.class, check(DRIVE, "88.5 degrees"));
    }

    @Test
    void theReplySaysHowTheAnswerWasTaken() {
        Verdict.Right bare = assertInstanceOf(Verdict.Right.class, check(DRIVE, "88,5"));
        assertEquals("88.5 Pa", bare.taken().words());
        assertTrue(bare.taken().unitAssumed());
        Verdict.Right turned = assertInstanceOf(Verdict.Right.class, check(DRIVE, "0.0885 kPa"));
        assertEquals("0.0885 kPa, which is 88.5 Pa", turned.taken().words());
        assertTrue(!turned.taken().unitAssumed());
    }

    @Test
    void rightWinsOverAMistakeOfTheSameValue() {
        assertInstanceOf(Verdict.Right.class, check(DRIVE, "89"));
    }

    @Test
    void theAuthorsMistakeGetsItsHint() {
        Verdict.Wrong wrong = assertInstanceOf(Verdict.Wrong.class, check(DRIVE, "9.0 Pa"));
        assertEquals("Times gravity.", wrong.hint());
        assertEquals("no gravity", wrong.mistake());
        assertEquals(9.0 / 88.5 - 1, wrong.offBy(), 1e-12);
    }

    @Test
    void knownMistakesAreReckonedTogetherAndWhatIsLeftByItself() {
        List<String> alone = new ArrayList<>();
        Reckoning together = new Reckoning() {
            @Override
            public double number(String java) {
                alone.add(java);
                return RECKONING.number(java);
            }

            @Override
            public Map<String, Double> together(Collection<String> java) {
                assertEquals(List.of("slip", "near"), List.copyOf(java));
                return Map.of("slip", 9.02);
            }
        };
        Verdict.Wrong first = assertInstanceOf(Verdict.Wrong.class, Checker.check(DRIVE, "9.02 Pa", together));
        assertEquals("no gravity", first.mistake());
        assertEquals(List.of("pa", "near"), alone);
        assertInstanceOf(Verdict.Wrong.class, Checker.check(DRIVE, "70 Pa", together));
        assertEquals(List.of("pa", "near", "pa", "near"), alone);
    }

    @ParameterizedTest
    @CsvSource({
        "-88.5 Pa, sign",
        "88.5 kPa, thousand",
        "0.0885 Pa, thousandth",
        "-101236.5 Pa, gauge",
        "101413.5, absolute",
        "500 Pa, ''",
    })
    void slipsInAPressure(String answer, String name) {
        assertEquals(
                name,
                assertInstanceOf(Verdict.Wrong.class, check(DRIVE, answer)).mistake());
    }

    @ParameterizedTest
    @CsvSource({
        "60 °C, right",
        "60, right",
        "140 °F, right",
        "333.15 K, right",
        "140, more",
        "140 C, fahrenheit",
        "333, more",
        "333 °C, kelvin",
        "60 °F, ''",
        "-60, sign"
    })
    void levelsOfTemperature(String answer, String name) {
        assertEquals(name, name(check(quantity("level", "°C", Temperature.LEVEL), answer)));
    }

    @ParameterizedTest
    @CsvSource({
        "60 °C, right",
        "60 K, right",
        "108 °F, right",
        "108, more",
        "108 K, fahrenheit",
        "140 °F, ''",
        "333.15 K, ''"
    })
    void differencesOfTemperature(String answer, String name) {
        assertEquals(name, name(check(quantity("level", "K", Temperature.DIFFERENCE), answer)));
    }

    @ParameterizedTest
    @CsvSource({
        "0.05 kg/s, right",
        "180 kg/h, right",
        "3 kg/min, right",
        "3 kg/s, sixty",
        "180 kg/s, hours",
        "50 kg/s, thousand",
        "0.5 kg/s, tenfold",
        "0.005 kg/s, tenth",
        "3, more",
        "180, more",
        "50, more",
        "0.4, ''",
        "6.61 lb/min, right"
    })
    void massFlows(String answer, String name) {
        assertEquals(name, name(check(quantity("flow", "kg/s", Temperature.NONE), answer)));
    }

    /** Truth 22.53 mm with a tolerance of two per cent, a wrong idea at 23.4 and another at 2.253. */
    @ParameterizedTest
    @CsvSource({
        "22.5 mm, right",
        "22.5, right",
        "23 mm, more",
        "22 mm, ''",
        "2.3 cm, more",
        "2.25 cm, right",
        "0.9 in, right",
        "7/8 in, right",
        "15/16 in, swelled twice",
        "1 in, more",
        "20 mm, ''",
        "24 mm, ''",
        "23.4 mm, swelled twice",
        "2.3 mm, centimetres",
        "2.25, more",
        "0.887, more",
        "0.89 mm, ''",
        "0.02, ''",
        "0.023, more",
        "0.0225, more",
    })
    void aValueRoundedAsItIsTypedIsRightUnlessASlipRoundsTheSame(String answer, String name) {
        Reckoning values =
                java -> Map.of("mm", 22.53, "twice", 23.4, "cm", 2.253).get(java);
        Quantity climb = quantity(
                "mm", "mm", new Tolerance(0, 0.02), mistake("twice", "swelled twice"), mistake("cm", "centimetres"));
        assertEquals(name, name(Checker.check(climb, answer, values)));
    }

    @ParameterizedTest
    @CsvSource({
        "7.438, day, 7 days, right",
        "7.438, day, 8 days, ''",
        "7.438, day, 1.06 weeks, right",
        "7.438, day, 1 week, right",
        "7.438, day, 180 h, right",
        "7.438, day, 200 h, ''",
        "0.872, US gal, 0.9 gal, right",
        "0.872, US gal, 1 gal, more",
        "0.511, L, 0.5, right",
        "0.511, L, 1 L, more",
        "0.367, kg, 0.4 kg, right",
        "5.36, mm, 5, right",
        "285.7, L, 290, right",
        "285.7, L, 300, ''",
        "0.0286, m³, 29 L, right",
        "-3.44, W, -3, more",
        "-3.44, W, -3.4, right",
        "0.2, W, 0, more",
        "1.5, m, 2 m, more",
    })
    void roundingGoesByTheDigitsTyped(double value, String unit, String answer, String name) {
        Quantity asked = quantity("it", unit, new Tolerance(0, 0.005));
        assertEquals(name, name(Checker.check(asked, answer, java -> value)));
    }

    /** The most allowed is 42.7 cm, and the least needed is. */
    @ParameterizedTest
    @CsvSource({
        "42, BELOW, right",
        "42.7, BELOW, right",
        "43, BELOW, rounded to the unsafe side",
        "41, BELOW, ''",
        "16.8 in, BELOW, right",
        "40, BELOW, ''",
        "43, ABOVE, right",
        "42, ABOVE, ''",
        "44, ABOVE, ''",
        "17 in, ABOVE, right",
    })
    void theSafeSideCountsAndTheOtherNever(String answer, Tolerance.Safe safe, String name) {
        Quantity most = quantity("it", "cm", new Tolerance(0.1, 0, safe));
        assertEquals(name, name(Checker.check(most, answer, java -> 42.7)));
    }

    @Test
    void withinTheToleranceTheUnsafeSideIsRightButTold() {
        Quantity most = quantity("it", "cm", new Tolerance(0.4, 0, Tolerance.Safe.BELOW));
        Verdict.Right right = assertInstanceOf(Verdict.Right.class, Checker.check(most, "43", java -> 42.7));
        assertTrue(right.say().contains("round it down"), right::say);
        assertEquals(
                "",
                assertInstanceOf(Verdict.Right.class, Checker.check(most, "42.6", java -> 42.7))
                        .say());
    }

    @Test
    void aWrongIdeaIsToldOnlyWhereNoOtherFitsAsWell() {
        Map<String, Double> known = Map.of("it", 100.0, "one", 50.0, "other", 50.4);
        Quantity asked =
                quantity("it", "Pa", new Tolerance(0, 0.02), mistake("one", "took half"), mistake("other", "forgot g"));
        assertEquals("", name(Checker.check(asked, "50 Pa", known::get)));
        assertEquals("took half", name(Checker.check(asked, "50.0 Pa", known::get)));
        assertEquals("forgot g", name(Checker.check(asked, "50.4 Pa", known::get)));
        assertEquals("", name(Checker.check(asked, "50.2 Pa", known::get)));
    }

    @Test
    void anAbsoluteToleranceShrinksWithASmallIdea() {
        Map<String, Double> known = Map.of("it", 28.7, "cm", 2.87);
        Quantity asked = quantity("it", "mm", new Tolerance(10, 0), mistake("cm", "centimetres"));
        assertEquals("", name(Checker.check(asked, "5 mm", known::get)));
        assertEquals("centimetres", name(Checker.check(asked, "2.9 mm", known::get)));
    }

    @Test
    void whoeverShowsNoUsualSlipIsToldWhatToDoFirst() {
        Verdict.Wrong wrong = assertInstanceOf(
                Verdict.Wrong.class, Checker.check(quantity("it", "Pa", new Tolerance(0, 0.02)), "70", java -> 100));
        assertEquals("Begin with the height.", wrong.hint());
        assertEquals("", wrong.mistake());
    }

    @ParameterizedTest
    @CsvSource({
        "23, L, 87.06, 23 US gal",
        "30, mm, 762, 30 in",
        "136, kg, 61.7, 136 lb",
        "4.7, kPa, 32.4, 4.7 psi",
        "0.234, mm, 5.94, 0.234 in",
        "140, °C, 60, 140 °F",
        "14.5, kPa, 14500, 14.5 MPa",
    })
    void aMissingUnitIsAskedFor(String answer, String unit, double value, String words) {
        Quantity asked = unit.equals("°C")
                ? quantity("level", unit, Temperature.LEVEL)
                : quantity("it", unit, new Tolerance(0, 0.02));
        Verdict verdict = Checker.check(asked, answer, java -> value);
        if (words.endsWith("MPa")) {
            // No unit anybody would use there: judged as it stands.
            assertEquals("thousandth", name(verdict));
        } else {
            String said = assertInstanceOf(Verdict.More.class, verdict).words();
            assertTrue(said.contains("Do you mean " + words + "?"), said);
        }
    }

    @Test
    void aSumIsWorkedOutAndShown() {
        Verdict.Right right = assertInstanceOf(Verdict.Right.class, check(DRIVE, "0.5 * 9.81 * 18 = 88.3 Pa"));
        assertEquals("0.5 * 9.81 * 18 = 88.3 Pa", right.taken().words());
        assertInstanceOf(Verdict.Right.class, check(DRIVE, "0.5*9.81*18"));
        assertInstanceOf(Verdict.Wrong.class, check(DRIVE, "2*9.81*18"));
        assertInstanceOf(Verdict.Unreadable.class, check(DRIVE, "0.5*9.81*18 = 8.83"));
    }

    private static KnownMistake mistake(String java, String because) {
        return new KnownMistake(java, because, "Hint: " + because);
    }

    private static Quantity quantity(String java, String unit, Tolerance tolerance, KnownMistake... mistakes) {
        About about = new About(
                "01-a/b",
                "?",
                false,
                new TreeMap<>(),
                "s",
                new About.Solution("Begin with the height.", "It is so.", "pa"));
        return new Quantity(
                about,
                new Reference(java, unit),
                List.of(),
                Optional.empty(),
                Temperature.NONE,
                tolerance,
                List.of(mistakes),
                List.of());
    }

    @ParameterizedTest
    @CsvSource({
        "L, A cubic metre is 1000 litres.",
        "L/min, A cubic metre is 1000 litres.",
        "W, A kilowatt is 1000 watts.",
        "m, A metre is 1000 millimetres.",
        "Pa, A kilopascal is 1000 pascals.",
        "kg, A kilogram is 1000 grams.",
        "kg/s, Look for a kilo that was left out or taken twice."
    })
    void aThousandIsToldInTheWordsOfItsUnit(String unit, String words) {
        Quantity quantity = quantity("pa", unit, Temperature.NONE);
        Verdict.Wrong much = assertInstanceOf(Verdict.Wrong.class, check(quantity, "88500 " + unit));
        assertEquals("thousand", much.mistake());
        assertTrue(much.hint().endsWith(words), much::hint);
        Verdict.Wrong little = assertInstanceOf(Verdict.Wrong.class, check(quantity, "0.0885 " + unit));
        assertEquals("thousandth", little.mistake());
        assertTrue(little.hint().endsWith(words), little::hint);
    }

    @ParameterizedTest
    @CsvSource({"60000, ''", "0.06, ''"})
    void aTemperatureHasNoThousand(String answer, String name) {
        assertEquals(name, name(check(quantity("level", "°C", Temperature.LEVEL), answer)));
    }

    @ParameterizedTest
    @CsvSource({"L/min", "kg/s", "m/s", "s", "W"})
    void minutesAndHoursAreSuspectedInWhatHasATimeInIt(String unit) {
        Quantity quantity = quantity("pa", unit, Temperature.NONE);
        assertEquals("sixty", name(check(quantity, "5310 " + unit)));
        assertEquals("sixtieth", name(check(quantity, "1.475 " + unit)));
        assertEquals("hours", name(check(quantity, "318600 " + unit)));
        assertEquals("seconds", name(check(quantity, "0.02458 " + unit)));
    }

    @ParameterizedTest
    @CsvSource({"L", "m", "Pa", "kg"})
    void elsewhereTheyAreNot(String unit) {
        Quantity quantity = quantity("pa", unit, Temperature.NONE);
        for (String answer : List.of("5310", "1.475", "318600", "0.02458")) {
            assertEquals("", name(check(quantity, answer)), answer);
        }
    }

    @Test
    void aRatioIsSuspectedOnlyInPerCent() {
        assertEquals("ratio", name(check(quantity("pa", "%", Temperature.NONE), "0.885")));
        assertEquals("hundredth", name(check(DRIVE, "0.885 Pa")));
    }

    @Test
    void theDiameterIsSuspectedOnlyWhereTheExerciseSaysSo() {
        assertEquals("", name(check(quantity("pa", "mm", Temperature.NONE), "177 mm")));
        assertEquals("diameter", name(check(quantity("pa", "mm", Temperature.NONE, Slip.DIAMETER), "177 mm")));
        assertEquals("radius", name(check(quantity("pa", "mm", Temperature.NONE, Slip.DIAMETER), "44.25 mm")));
        assertEquals(
                "diameter", name(check(quantity("pa", "mm2", Temperature.NONE, Slip.DIAMETER_SQUARED), "354 mm²")));
    }

    private static String name(Verdict verdict) {
        return verdict instanceof Verdict.Wrong wrong
                ? wrong.mistake()
                : verdict instanceof Verdict.Right ? "right" : verdict instanceof Verdict.More ? "more" : "?";
    }

    @Test
    void aWrongDimensionIsToldAsSuch() {
        Verdict.WrongKind kind = assertInstanceOf(Verdict.WrongKind.class, check(DRIVE, "3 L/min"));
        assertEquals("L/min is a volume flow", kind.given());
        assertEquals("a pressure such as Pa", kind.wanted());
        Verdict.WrongKind flow = assertInstanceOf(
                Verdict.WrongKind.class, check(quantity("flow", "kg/s", Temperature.NONE), "0.5 gal/min"));
        assertTrue(flow.help().contains("density"), flow::help);
    }

    @ParameterizedTest
    @CsvSource({
        "L/min, kg/s, density",
        "L, kg, density",
        "W, kJ, 1 kW for 1 hour is 1 kWh",
        "m, Pa, Write mmH2O or mH2O",
        "kg, N, the mass times gravity",
    })
    void whatJoinsTwoKindsIsSaidWhicheverIsWanted(String one, String other, String help) {
        assertTrue(help(one, other).contains(help), help(one, other));
        assertTrue(help(other, one).contains(help), help(other, one));
    }

    @ParameterizedTest
    @CsvSource({"L/min, kg", "L, kg/s", "W, Pa", "m, kJ", "kg, m", "N, L", "m2, W"})
    void nothingIsSaidOfKindsThatNothingJoins(String one, String other) {
        assertEquals("", help(one, other));
        assertEquals("", help(other, one));
    }

    private static String help(String given, String wanted) {
        return assertInstanceOf(Verdict.WrongKind.class, check(quantity("pa", wanted, Temperature.NONE), "3 " + given))
                .help();
    }

    @Test
    void anotherKindIsTakenWhereTheExerciseGivesIt() {
        Quantity base = quantity("flow", "kg/s", Temperature.NONE);
        Quantity both = new Quantity(
                base.about(),
                base.reference(),
                List.of(new Reference("litres", "L/min")),
                Optional.empty(),
                Temperature.NONE,
                base.tolerance(),
                List.of(),
                List.of());
        assertEquals("right", name(check(both, "3.04 L/min")));
        assertEquals("", name(check(both, "3.5 L/min")));
        assertEquals("right", name(check(both, "0.793 gal/min")));
        assertInstanceOf(Verdict.WrongKind.class, check(both, "3 Pa"));
    }

    @Test
    void whatCannotBeReadSaysWhatWouldBe() {
        Verdict.Unreadable text = assertInstanceOf(Verdict.Unreadable.class, check(DRIVE, "lots"));
        assertEquals("“lots” does not begin with a number. A pressure is wanted, such as 6.2 Pa.", text.words());
        assertInstanceOf(Verdict.Unreadable.class, check(quantity("level", "°C", Temperature.LEVEL), "-300 °C"));
        assertInstanceOf(Verdict.Unreadable.class, check(DRIVE, "1e308 bar"));
    }

    @Test
    void aReferenceOfZeroOrNoneIsSafe() {
        Quantity zero = quantity("zero", "Pa", Temperature.NONE);
        assertEquals("right", name(check(zero, "0")));
        assertEquals(0, assertInstanceOf(Verdict.Wrong.class, check(zero, "5")).offBy());
        assertThrows(ReckoningException.class, () -> check(quantity("nan", "Pa", Temperature.NONE), "5"));
    }

    @Test
    void aPredictionIsNotedAndComparedLater() {
        Quantity base = DRIVE;
        Quantity guess = new Quantity(
                about(true),
                base.reference(),
                List.of(),
                Optional.empty(),
                Temperature.NONE,
                base.tolerance(),
                List.of(),
                List.of());
        Verdict.Noted noted = assertInstanceOf(Verdict.Noted.class, Checker.check(guess, "1 kPa", java -> {
            throw new AssertionError("a prediction is not reckoned");
        }));
        assertEquals(1000, noted.taken().value().orElseThrow(), 1e-9);
        assertInstanceOf(Verdict.Wrong.class, Checker.compare(guess, "1 kPa", RECKONING));
        assertInstanceOf(Verdict.Unreadable.class, Checker.check(guess, "", RECKONING));
    }

    @ParameterizedTest
    @CsvSource({
        "1, right",
        "At the top, right",
        "  at  the TOP , right",
        "2, choice 2",
        "2), choice 2",
        "60, choice 3",
        "3, choice 3"
    })
    void choicesByTextOrNumber(String answer, String name) {
        assertEquals(name, name(Checker.check(choice(), answer, RECKONING)));
    }

    @ParameterizedTest
    @CsvSource({"0", "4", "top", "''", "99999999999"})
    void noChoice(String answer) {
        assertInstanceOf(Verdict.Unreadable.class, Checker.check(choice(), answer, RECKONING));
    }

    private static Choice choice() {
        return new Choice(
                about(false),
                List.of(
                        new Choice.Option("At the top", true, "Yes."),
                        new Choice.Option("Below", false, "No."),
                        new Choice.Option("60", false, "No.")));
    }

    @Test
    void javaIsJudgedByItsLastValue() {
        Code code = new Code(
                about(false),
                "",
                new Reference("pa", "Pa"),
                Optional.empty(),
                new Tolerance(0, 0.02),
                List.of(new KnownMistake("slip", "no gravity", "Times gravity.")),
                List.of());
        assertEquals("right", name(Checker.check(code, "near", RECKONING)));
        assertEquals("no gravity", name(Checker.check(code, "slip", RECKONING)));
        assertInstanceOf(Verdict.Unreadable.class, Checker.check(code, " ", RECKONING));
        assertInstanceOf(Verdict.Unreadable.class, Checker.check(code, "nan", RECKONING));
        Verdict.Unreadable not = assertInstanceOf(Verdict.Unreadable.class, Checker.check(code, "in(", RECKONING));
        assertEquals("That Java gives no number. “in(” is not Java", not.words());
    }

    @Test
    void decisionsAreTurnedIntoTheChangesUnit() {
        Decision height = new Decision(about(false), "tank.baseM", "m", List.of());
        assertEquals("2.4384", decided(height, "8 ft"));
        assertEquals("2.6", decided(height, "2.6"));
        assertInstanceOf(Verdict.WrongKind.class, Checker.check(height, "2 kg", RECKONING));
        assertInstanceOf(Verdict.Unreadable.class, Checker.check(height, "high", RECKONING));
        Verdict.Unreadable endless =
                assertInstanceOf(Verdict.Unreadable.class, Checker.check(height, "1e308 km", RECKONING));
        assertEquals("Nothing can measure that much.", endless.words());
        Decision tube = new Decision(about(false), "loop.tube", "", List.of("EN1057 22x0.9", "EN1057 28x0.9"));
        assertEquals("EN1057 28x0.9", decided(tube, "2"));
        assertEquals("EN1057 22x0.9", decided(tube, "en1057 22x0.9"));
        assertInstanceOf(Verdict.Unreadable.class, Checker.check(tube, "EN1057 15x0.7", RECKONING));
    }

    /** As a person said it, not as so many thousandths of a foot. */
    @ParameterizedTest
    @CsvSource({
        "m, 1 ft 11, '1 ft 11 in, which is 0.5842 m'",
        "m, '8'' 4\"', '8'' 4\", which is 2.54 m'",
        "m, 8 ft, '8 ft, which is 2.438 m'",
        "m, 2 m 5 cm, 2 m 5 cm",
        "mm/m, 1 in 50, '1 in 50, which is 20 mm/m'",
        "mm/m, 1:48, '1:48, which is 20.83 mm/m'",
        "h, 2 h 30 min, 2 h 30 min",
        "day, 7, 7 days",
        "day, 1, 1 day",
        "m, 2*1.2 m, 2*1.2 = 2.4 m",
    })
    void anAnswerIsGivenBackAsItWasSaid(String unit, String typed, String said) {
        Decision decision = new Decision(about(false), "any", unit, List.of());
        assertEquals(
                said,
                assertInstanceOf(Verdict.Decided.class, Checker.check(decision, typed, RECKONING))
                        .taken()
                        .words());
    }

    private static String decided(Decision decision, String answer) {
        return assertInstanceOf(Verdict.Decided.class, Checker.check(decision, answer, RECKONING))
                .value();
    }

    @Test
    void theWorkedSolutionHasTheAnswerInIt() {
        assertEquals("It is 88.5 Pa.", Worked.markdown(DRIVE, RECKONING));
        assertEquals("It is {{answer}}.", Worked.markdown(choice(), RECKONING));
    }
}
