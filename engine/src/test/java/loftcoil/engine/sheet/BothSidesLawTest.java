package loftcoil.engine.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Collectors;
import loftcoil.engine.caution.CautionKind;
import loftcoil.engine.caution.Severity;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Design;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.run.YearRun;
import loftcoil.engine.start.Start;
import loftcoil.engine.start.Starts;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The verdict from both sides: it lets nothing through that boils or stands, and does not cry wolf. Ten thousand designs in the
 * thorough run, two hundred in every run; those that need their year and starts are fewer, as each takes seconds.
 */
class BothSidesLawTest {

    private static final int SOME = 200;
    private static final int ALL = 10_000;
    private static final int SOME_WHOLE = 3;
    private static final int ALL_WHOLE = 60;
    private static final int STATES = 6;
    private static final int SOME_PLACES = 5;
    private static final int ALL_PLACES = 100;

    /** States by chance, searched here with the heat set here: none of a design without a danger boils or stands. */
    @Test
    void noDesignWithoutADangerBoilsOrStandsInAnyState() {
        nothingBoilsOrStands(SOME);
    }

    @Test
    @Tag("thorough")
    void noDesignWithoutADangerBoilsOrStandsInAnyStateOfAll() {
        nothingBoilsOrStands(ALL);
    }

    private static void nothingBoilsOrStands(int designs) {
        Random random = new Random(20261129);
        int without = 0;
        for (Design design : RandomDesigns.some(designs, 1)) {
            if (SafetyVerdict.quick(design).dangerous()) {
                continue;
            }
            without++;
            double heatW = design.coil().heatKW().orElseThrow() * 1000;
            Circuit loop = design.circuit(40);
            double coldC = design.site().coldSupplyC();
            for (int i = 0; i < STATES; i++) {
                double tankC = coldC + (70 - coldC) * random.nextDouble();
                double stateW = heatW * (1 + 0.5 * random.nextDouble());
                assertTrue(
                        loop.withTankC(tankC).withHeatW(stateW).search().circulates(),
                        tankC + " °C, " + stateW + " W: " + design);
            }
        }
        assertTrue(without > designs / 10, without + " of " + designs);
    }

    /** Year and starts, marched here: a design that is let through neither boils in the year nor fails to start. */
    @Test
    void noDesignWithoutADangerBoilsInItsYearOrFailsToStart() {
        noYearBoilsAndNoStartFails(SOME_WHOLE);
    }

    @Test
    @Tag("thorough")
    void noDesignWithoutADangerBoilsInItsYearOrFailsToStartOfAll() {
        noYearBoilsAndNoStartFails(ALL_WHOLE);
    }

    private static void noYearBoilsAndNoStartFails(int whole) {
        List<Design> without = RandomDesigns.some(20 * whole, 2).stream()
                .filter(design -> !SafetyVerdict.quick(design).dangerous())
                .limit(whole)
                .toList();
        assertEquals(whole, without.size());
        for (Design design : without) {
            if (SafetyVerdict.whole(design).dangerous()) {
                continue;
            }
            YearRun year = YearRun.of(design);
            assertEquals(0, year.boilingMin(), design.toString());
            Optional<Starts> starts = Starts.of(design, OptionalDouble.of(year.hottestC()));
            assertEquals(Optional.empty(), starts.flatMap(Starts::failing).map(Start::ends), design.toString());
        }
    }

    /** Taps and places of pipe by chance: what nothing is said of neither scalds nor stands in frost, by the drawing and the year alone. */
    @Test
    void noDesignWithoutACautionScaldsOrFreezes() {
        neitherScaldsNorFreezes(SOME_PLACES);
    }

    @Test
    @Tag("thorough")
    void noDesignWithoutACautionScaldsOrFreezesOfAll() {
        neitherScaldsNorFreezes(ALL_PLACES);
    }

    private static void neitherScaldsNorFreezes(int designs) {
        Random random = new Random(20261130);
        int scalding = 0;
        int freezing = 0;
        for (Design drawn : RandomDesigns.some(designs, 5)) {
            String mixer = List.of("none", "set to 48 °C", "set to 45 °C").get(random.nextInt(3));
            Design mixed = Changes.apply(drawn, "taps.mixer", mixer);
            double placeC = -8 + 20 * random.nextDouble();
            Design design = Changes.apply(mixed, "coldLegs[0].aroundFireOutC", Double.toString(placeC));
            SafetyVerdict verdict = SafetyVerdict.withoutStarts(design);
            double drawC = YearRun.of(design).extremes().hottestDrawC();
            // 48 °C at a bath: Approved Document G.
            boolean scalds = drawC > 48 && mixer.equals("none");
            boolean freezes = placeC <= 0;
            assertTrue(!scalds || says(verdict, CautionKind.SCALD), drawC + " °C, mixer " + mixer + ": " + design);
            assertTrue(!freezes || says(verdict, CautionKind.FROST_LOOP), placeC + " °C: " + design);
            scalding += scalds ? 1 : 0;
            freezing += freezes ? 1 : 0;
        }
        assertTrue(scalding > 0 && freezing > 0, scalding + " scald, " + freezing + " freeze");
    }

    private static boolean says(SafetyVerdict verdict, CautionKind kind) {
        return verdict.cautions().stream().anyMatch(caution -> caution.kind() == kind);
    }

    /** Of designs that the trade's rules call good at most one in ten is called dangerous for what its steady states show. */
    @Test
    void ofGoodDesignsAtMostOneInTenIsCalledDangerous() {
        fewGoodOnesAreDangerous(SOME);
    }

    @Test
    @Tag("thorough")
    void ofGoodDesignsAtMostOneInTenIsCalledDangerousOfAll() {
        fewGoodOnesAreDangerous(ALL);
    }

    private static void fewGoodOnesAreDangerous(int designs) {
        List<Design> good = RandomDesigns.some(designs, 3).stream()
                .filter(GoodByTheBook::good)
                .toList();
        assertTrue(good.size() > designs / 50, good.size() + " of " + designs);
        List<String> dangers = good.stream()
                .map(SafetyVerdict::quick)
                .filter(SafetyVerdict::dangerous)
                .map(BothSidesLawTest::codes)
                .toList();
        assertTrue(dangers.size() <= good.size() / 10, dangers.size() + " of " + good.size() + ": " + dangers);
    }

    /** The same with year and starts. */
    @Test
    void ofGoodDesignsAtMostOneInTenIsCalledDangerousWithYearAndStarts() {
        fewGoodOnesAreDangerousWithYearAndStarts(SOME_WHOLE);
    }

    @Test
    @Tag("thorough")
    void ofGoodDesignsAtMostOneInTenIsCalledDangerousWithYearAndStartsOfAll() {
        fewGoodOnesAreDangerousWithYearAndStarts(ALL_WHOLE);
    }

    private static void fewGoodOnesAreDangerousWithYearAndStarts(int whole) {
        List<Design> good = RandomDesigns.some(30 * whole, 4).stream()
                .filter(GoodByTheBook::good)
                .limit(whole)
                .toList();
        List<String> dangers = good.stream()
                .map(SafetyVerdict::whole)
                .filter(SafetyVerdict::dangerous)
                .map(BothSidesLawTest::codes)
                .toList();
        assertTrue(
                dangers.size() <= Math.ceil(good.size() / 10.0),
                dangers.size() + " of " + good.size() + ": " + dangers);
    }

    private static String codes(SafetyVerdict verdict) {
        return verdict.of(Severity.DANGER).stream()
                .map(caution -> caution.code())
                .collect(Collectors.joining(" "));
    }
}
