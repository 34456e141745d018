package loftcoil.engine.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every number given from outside is refused by name when it is not a number or out of range. */
class RefusalTest {

    private static final Place ORCHARD = new Place(46.2, 7.4, 620, 1);
    private static final List<Double> GLOBAL = List.of(1.4, 2.3, 3.5, 4.6, 5.3, 6.0, 6.2, 5.3, 4.0, 2.6, 1.6, 1.2);
    private static final List<Double> AIR = Collections.nCopies(12, 8.0);
    private static final WindowYear YEAR = WindowYear.of(
            SkyYear.of(ORCHARD, new Climate(GLOBAL, AIR), 60), Glazing.salvaged(2, 0.012, 0.92, new Facing(35, 180)));

    static Stream<Arguments> fields() {
        PaneStack two = new PaneStack(2, Glass.SALVAGED_FLOAT);
        return Stream.of(
                field("latitudeDeg", 90.1, v -> new Place(v, 0, 0, 0)),
                field("longitudeDeg", -181, v -> new Place(0, v, 0, 0)),
                field("altitudeM", 6000, v -> new Place(0, 0, v, 0)),
                field("utcOffsetH", 15, v -> new Place(0, 0, 0, v)),
                field("tiltDeg", 91, v -> new Facing(v, 0)),
                field("azimuthDeg", 361, v -> new Facing(0, v)),
                field("globalWPerM2", -1, v -> new SkyLight(v, 0, 1367)),
                field("diffuseWPerM2", -1, v -> new SkyLight(100, v, 1367)),
                field("outsideNormalWPerM2", 100, v -> new SkyLight(100, 10, v)),
                field("thicknessM", 4, v -> new Glass(v, 25, 1.526, 0.837)),
                field("extinctionPerM", -1, v -> new Glass(0.004, v, 1.526, 0.837)),
                field("refractiveIndex", 1, v -> new Glass(0.004, 25, v, 0.837)),
                field("emissivity", 1.1, v -> new Glass(0.004, 25, 1.526, v)),
                field("absorptance", 1.01, v -> new TankFace(v, 0.95, 0.02)),
                field("emissivity", 0, v -> new TankFace(0.92, v, 0.02)),
                field("gapM", 12, v -> new TankFace(0.92, 0.95, v)),
                field("widthM", 0, v -> new AirGap(v, 35, 1e5)),
                field("tiltDeg", -1, v -> new AirGap(0.02, v, 1e5)),
                field("pressurePa", 1013, v -> new AirGap(0.02, 35, v)),
                field("densityKgPerM3", 0, v -> new GlazingGas(v, 1.7e-5, 0.025, 1008)),
                field("viscosityPaS", 1, v -> new GlazingGas(1.2, v, 0.025, 1008)),
                field("conductivityWPerMK", 0, v -> new GlazingGas(1.2, 1.7e-5, v, 1008)),
                field("specificHeatJPerKgK", 1, v -> new GlazingGas(1.2, 1.7e-5, 0.025, v)),
                field("windFilmWPerM2K", 0, v -> new Surroundings(v, 0, 0.2)),
                field("skyBelowAirK", -5, v -> new Surroundings(10, v, 0.2)),
                field("albedo", 2, v -> new Surroundings(10, 0, v)),
                field("resistanceM2KPerW", -1, v -> new Shutter(v, 20, 10)),
                field("shutFromH", 25, v -> new Shutter(1, v, 10)),
                field("shutForH", -1, v -> new Shutter(1, 20, v)),
                field("paneGapM", 12, v -> gapped(Glazing.salvaged(3, 0.012, 0.92, new Facing(35, 180)), v)),
                field("gapM", 12, v -> GlazingU.declaredWPerM2K(two, v)),
                field("tiltDeg", 120, v -> GlazingU.wPerM2K(two, 0.012, GlazingGas.AIR, v)),
                field("incidenceDeg", 91, two::at),
                field("incidenceDeg", -1, v -> Fresnel.perpendicular(v, 1.5)),
                field("absorptance", 2, v -> new WindowLight(two, v)),
                field("latitudeDeg", 91, v -> Extraterrestrial.dailyMJPerM2(v, 10)),
                field("declinationDeg", 30, v -> Extraterrestrial.sunsetHourAngleDeg(40, v)),
                field("hourAngleDeg", 400, v -> SunAngles.of(40, 0, v)),
                field("clearness", 1.5, v -> Erbs.monthlyDiffuseFraction(v, 90)),
                field("sunsetHourAngleDeg", 200, v -> Erbs.monthlyDiffuseFraction(0.5, v)),
                field("hourAngleDeg", 181, v -> DaySplit.globalPerHour(v, 90)),
                field("surfaceC", 111, v -> YEAR.lossWPerM2(v, 10)),
                field("airC", -61, v -> YEAR.lossWPerM2(50, v)),
                field("surfaceC", -1, v -> YEAR.lossAtMinuteWPerM2(0, v)),
                field("globalKWhPerM2Day[3]", -1, v -> new Climate(with(GLOBAL, 3, v), AIR)),
                field("meanAirC[11]", 60, v -> new Climate(GLOBAL, with(AIR, 11, v))));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("fields")
    void isRefusedByName(String path, double outside, DoubleFunction<?> use) {
        for (double bad : new double[] {outside, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            List<Fault> faults = faults(() -> use.apply(bad));
            assertEquals(List.of(path), faults.stream().map(Fault::path).toList(), "for " + bad);
            assertTrue(faults.get(0).line().contains("allowed"));
        }
    }

    @Test
    void allFaultsAreToldAtOnce() {
        assertEquals(
                List.of("latitudeDeg", "longitudeDeg", "altitudeM", "utcOffsetH"),
                faults(() -> new Place(Double.NaN, 999, 1e9, 99)).stream()
                        .map(Fault::path)
                        .toList());
        assertEquals(
                List.of("globalKWhPerM2Day", "meanAirC[0]"),
                faults(() -> new Climate(GLOBAL.subList(0, 11), with(AIR, 0, 99))).stream()
                        .map(Fault::path)
                        .toList());
    }

    @Test
    void moreSunThanTheLatitudeHasIsRefusedByMonth() {
        // Megajoules for kilowatt-hours is the usual slip.
        List<Double> mega = with(with(GLOBAL, 0, 5.04), 11, 4.32);
        List<Fault> faults = faults(() -> SkyYear.of(ORCHARD, new Climate(mega, AIR), 60));
        assertEquals(
                List.of("globalKWhPerM2Day[0]", "globalKWhPerM2Day[11]"),
                faults.stream().map(Fault::path).toList());
        assertTrue(faults.get(0).why().contains("MJ"));
    }

    @Test
    void sunInThePolarNightIsRefused() {
        Place arctic = new Place(80, 0, 0, 0);
        List<Double> none = Collections.nCopies(12, 0.0);
        assertEquals(0, SkyYear.of(arctic, new Climate(none, AIR), 60).globalWPerM2(720));
        assertEquals(
                "globalKWhPerM2Day[11]",
                faults(() -> SkyYear.of(arctic, new Climate(with(none, 11, 0.1), AIR), 60))
                        .get(0)
                        .path());
    }

    @Test
    void stepsMustFillTheHour() {
        for (int bad : new int[] {0, -10, 7, 45, 61}) {
            assertEquals(
                    "stepMinutes",
                    faults(() -> SkyYear.of(ORCHARD, new Climate(GLOBAL, AIR), bad))
                            .get(0)
                            .path());
        }
    }

    @Test
    void countsAndDatesAreRefusedByName() {
        assertEquals(
                "panes",
                faults(() -> new PaneStack(0, Glass.SALVAGED_FLOAT)).get(0).path());
        assertEquals(
                "panes",
                faults(() -> new PaneStack(7, Glass.SALVAGED_FLOAT)).get(0).path());
        assertEquals("dayNumber", faults(() -> Declination.cooperDeg(0)).get(0).path());
        assertEquals("month", faults(() -> YEAR.tiltedKWhPerM2Day(13)).get(0).path());
        assertEquals(
                "year",
                faults(() -> SunAngles.at(ORCHARD, java.time.LocalDateTime.of(1999, 1, 1, 0, 0)))
                        .get(0)
                        .path());
        assertEquals(
                "diffuseWPerM2",
                faults(() -> new SkyLight(100, 101, 1367)).get(0).path());
    }

    @Test
    void minutesOutsideTheYearAreRefused() {
        for (int minute : new int[] {-1, -60, SkyYear.MINUTES}) {
            assertThrows(ArrayIndexOutOfBoundsException.class, () -> YEAR.absorbedWPerM2(minute));
            assertThrows(ArrayIndexOutOfBoundsException.class, () -> YEAR.airC(minute));
        }
    }

    private static Arguments field(String path, double outside, DoubleFunction<?> use) {
        return Arguments.of(path, outside, use);
    }

    private static List<Double> with(List<Double> values, int index, double value) {
        List<Double> changed = new ArrayList<>(values);
        changed.set(index, value);
        return changed;
    }

    private static List<Fault> faults(Executable use) {
        return assertThrows(RefusedException.class, use).faults();
    }

    private static Glazing gapped(Glazing like, double paneGapM) {
        return new Glazing(like.panes(), paneGapM, like.face(), like.facing(), like.surroundings(), like.shutter());
    }
}
