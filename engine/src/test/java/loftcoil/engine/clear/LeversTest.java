package loftcoil.engine.clear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Example;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.study.NamedValue;
import org.junit.jupiter.api.Test;

class LeversTest {

    /** Codes of the sentences that name no lever. */
    static final Set<String> BESIDE_LEVERS = Set.of(
            "and",
            "because-comes",
            "because-open",
            "because-stays",
            "because-unsure",
            "head",
            "item",
            "none",
            "none-because",
            "not-searched",
            "rarer");

    /** Dangers against which nothing is built; the page of models says why. */
    private static final Set<CautionKind> NOTHING_BUILT = EnumSet.of(CautionKind.DRY_FIRE, CautionKind.FROST_EMPTY);

    @Test
    void everyDangerHasALeverOrIsListedAsHavingNone() {
        Set<CautionKind> without = Stream.of(CautionKind.values())
                .filter(kind -> kind.severity() == Severity.DANGER)
                .filter(kind -> Levers.ALL.stream()
                        .noneMatch(lever -> !lever.conduct() && lever.clears().contains(kind)))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(CautionKind.class)));
        assertEquals(NOTHING_BUILT, without);
    }

    /** A row for each lever, in their order: code, relative cost, cost of a further step, and the reason for it. */
    @Test
    void thePageOfModelsListsEveryLeverWithItsCostAndTheReason() throws IOException {
        List<List<String>> rows = Files.readAllLines(Path.of("models/clear.md")).stream()
                .filter(line -> line.startsWith("| `"))
                .map(line -> line.substring(2, line.lastIndexOf('|')).strip())
                .map(line -> List.of(line.split(" \\| ", -1)))
                .toList();
        assertEquals(
                Levers.ALL.stream()
                        .map(lever ->
                                List.of("`" + lever.code() + "`", number(lever.cost()), number(lever.costAStep())))
                        .toList(),
                rows.stream().map(cells -> cells.subList(0, 3)).toList());
        assertEquals(
                List.of(),
                rows.stream()
                        .filter(cells -> cells.size() != 5 || cells.get(4).split(" ").length < 3)
                        .toList());
    }

    @Test
    void everySentenceIsOfALeverOrOfTheFaces() {
        Set<String> strays = new TreeSet<>(Steps.SENTENCES.codes());
        Levers.ALL.forEach(lever -> strays.remove(lever.code()));
        assertEquals(new TreeSet<>(BESIDE_LEVERS), strays);
    }

    /** What is stated of the world is no lever, and the coil's heat never by itself: it only follows a coil with less tube in the fire. */
    @Test
    void noLeverTouchesWhatIsStated() {
        Set<String> stated =
                Set.of("coil.heatKW", "coil.heat", "site", "use", "fire.burnKgPerH", "fire.moisturePct", "fire.wood");
        List<String> touched = Stream.of(
                        Example.orchardBothy(),
                        Changes.apply(Example.orchardBothy(), "coil.heat", "worked out from the fire"))
                .flatMap(design -> Levers.ALL.stream()
                        .filter(lever -> !Levers.isLastResort(lever))
                        .flatMap(lever -> lever.steps().of(design).stream())
                        .flatMap(step -> step.changes().stream())
                        .map(NamedValue::name))
                .filter(name -> stated.contains(name) || stated.contains(name.replaceFirst("[.\\[].*", "")))
                .toList();
        assertEquals(List.of(), touched);
    }

    @Test
    void aCoilIsShorterOnlyWhereItsHeatIsWorkedOut() {
        Lever shorter = Levers.ALL.stream()
                .filter(lever -> lever.code().equals("coil-shorter"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of(), shorter.steps().of(Example.orchardBothy()));
        assertTrue(shorter.steps()
                        .of(Changes.apply(Example.orchardBothy(), "coil.heat", "worked out from the fire"))
                        .size()
                > 3);
    }

    /** A shorter coil stands in hotter gas: it loses less heat than tube, and by the engine's own fire each step loses some. */
    @Test
    void theHeatThatIsStatedFollowsASmallerCoilByLessThanItsTube() {
        Design bothy = Example.orchardBothy();
        double lengthM = bothy.coil().lengthM();
        double heatKW = bothy.coil().heatKW().orElseThrow();
        List<Lever.Step> steps = lever("coil-smaller").steps().of(bothy);
        assertEquals((int) Math.floor(lengthM / 2 / 0.1), steps.size());
        double beforeKW = heatKW;
        for (Lever.Step step : steps) {
            assertEquals(
                    List.of("coil.lengthM", "coil.heatKW"),
                    step.changes().stream().map(NamedValue::name).toList());
            double share = Double.parseDouble(step.changes().get(0).value()) / lengthM;
            double nowKW = Double.parseDouble(step.changes().get(1).value());
            String words = step.words().metric();
            assertTrue(nowKW < beforeKW && nowKW > share * heatKW, words);
            assertEquals(heatKW * reckonedShare(bothy, step), nowKW, 0.01, words);
            assertTrue(words.contains("stated as 2000 W") && words.contains("has to be measured anew"), words);
            beforeKW = nowKW;
        }
        assertEquals(
                List.of(),
                lever("coil-smaller").steps().of(Changes.apply(bothy, "coil.heat", "worked out from the fire")));
    }

    /** Of the heat that the fire of a design gives by the engine's own reckoning, how much is left with a step's coil. */
    private static double reckonedShare(Design design, Lever.Step step) {
        Design worked = Changes.apply(design, "coil.heat", "worked out from the fire");
        Design shorter =
                Changes.apply(worked, "coil.lengthM", step.changes().get(0).value());
        return shorter.coilHeatW(0.02, 40).mid() / worked.coilHeatW(0.02, 40).mid();
    }

    /** Ten litres, half a decimetre, and tubes that are on the shelf. */
    @Test
    void stepsAreThoseThatCanBeBought() {
        List<Lever.Step> larger =
                lever("tank-larger").steps().of(Changes.apply(Example.orchardBothy(), "tank.volumeL", "123"));
        assertEquals("130", larger.get(0).changes().get(0).value());
        assertEquals("a tank 7.0 L larger, 130 L in all", larger.get(0).words().metric());
        List<Lever.Step> smaller =
                lever("tank-smaller").steps().of(Changes.apply(Example.orchardBothy(), "tank.volumeL", "123"));
        assertEquals("120", smaller.get(0).changes().get(0).value());
        assertEquals(List.of("EN1057 22x0.9", "EN1057 28x0.9", "EN1057 35x1.0"), Steps.wider("EN1057 15x0.7", false));
        assertEquals(List.of("EN1057 28x1.2", "EN1057 35x1.2", "EN1057 42x1.2"), Steps.wider("EN1057 22x0.9", true));
        assertEquals(
                List.of("28x1.5 stainless", "35x1.5 stainless", "42x1.5 stainless"),
                Steps.wider("22x1.5 stainless", true));
        assertEquals(List.of("B88 L 1", "B88 L 1-1/4", "B88 L 1-1/2"), Steps.wider("B88 L 3/4", false));
    }

    private static Lever lever(String code) {
        return Levers.ALL.stream()
                .filter(lever -> lever.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Integer.toString((int) value) : Double.toString(value);
    }

    /** A loop built anew has tubes of 22 to 42 mm: narrower ones choke it, wider ones nobody sells for it. */
    @Test
    void aLoopBuiltAnewIsOfferedTubesThatAreSoldForOne() {
        List<Double> outerMm = Steps.forLoop("EN1057 22x0.9").stream()
                .map(name -> TubeTable.require("tube", name).outerM() * 1000)
                .toList();
        assertEquals(
                List.of(22.0, 28.0, 35.0, 42.0),
                outerMm.stream().map(mm -> Math.rint(mm * 10) / 10).toList());
    }

    /** All fittings of a kind are taken out at once; where there are none, there is no step. */
    @Test
    void fittingsOfAKindAreTakenOutOfEveryPipe() {
        Lever.Ladder swept = Steps.without("swept", "(coldLegs|hotLegs)\\[\\d+]", "elbow90");
        List<Lever.Step> steps = swept.of(Example.orchardBothy());
        assertEquals(1, steps.size());
        assertEquals(
                List.of("coldLegs[0]", "coldLegs[1]", "hotLegs[0]", "hotLegs[1]").stream()
                        .map(leg -> new NamedValue(leg + ".fittings.elbow90", "0"))
                        .toList(),
                steps.get(0).changes());
        assertEquals(
                List.of(), Steps.without("swept", "taps\\[\\d+]", "nothing").of(Example.orchardBothy()));
    }
}
