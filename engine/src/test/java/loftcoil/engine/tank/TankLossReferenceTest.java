package loftcoil.engine.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.heat.GreyRadiation;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.pipe.LaggingTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Standing loss against worked examples and closed forms. */
class TankLossReferenceTest {

    private static final UprightCylinder TANK = new UprightCylinder(0.12, 0.70);
    private static final Standing AT = new Standing(60, 15);

    /**
     * Janna, Engineering Heat Transfer, example 8.5: top of an oven, 2 ft by 2 ft at 100 °F in air of 60 °F, area over perimeter
     * 0.5 ft. Ra 7.69e6, h = 0.54 k/L Ra^¼ = 0.862 BTU/(h ft² °F) = 4.895 W/(m² K). The book takes expansion at the air's
     * temperature rather than the film's and air properties to three digits: 3 %.
     */
    @Test
    void lidOfAnOven() {
        double surfaceC = (100 - 32) / 1.8;
        double airC = (60 - 32) / 1.8;
        double film = Face.LID.filmWPerM2K(0.1524, surfaceC, airC);
        double convection = film - GreyRadiation.filmWPerM2K(surfaceC, airC, Face.EMISSIVITY);
        assertEquals(4.895, convection, 0.03 * 4.895);
    }

    /** Incropera, 6th ed., equations 9.30 to 9.32 (Lloyd and Moran 1974): each branch, and which face takes which. */
    @ParameterizedTest
    @CsvSource({
        "LID, 1e6, true, 17.076",
        "LID, 1e9, true, 150",
        "LID, 1e8, false, 27",
        "BASE, 1e8, true, 27",
        "BASE, 1e6, false, 17.076",
        "BASE, 1e9, false, 150"
    })
    void flatFacesFollowTheirCorrelation(Face face, double rayleigh, boolean warmer, double nusselt) {
        assertEquals(nusselt, face.nusselt(rayleigh, 0.71, warmer), 1e-3 * nusselt);
    }

    /** ISO 12241:2008 section 4.1: with all resistance in the lagging a round wall passes 2πλH/ln(D₂/D₁). Film under 5 % here. */
    @Test
    void thickLaggingLeavesOnlyItsOwnResistance() {
        TankLoss loss = TankLoss.of(TANK, TankLagging.allRound(new Lagging("stone wool", 0.3)), AT);
        double conductivity = LaggingTable.require("", "stone wool").conductivityWPerMK((60 + 16) / 2.0);
        double inner = TANK.diameterM();
        double bare = 2 * Math.PI * conductivity * 0.70 / Math.log((inner + 0.6) / inner);
        assertTrue(loss.sideWPerK() < bare, "the film adds resistance");
        assertEquals(bare, loss.sideWPerK(), 0.05 * bare);
        double flat = conductivity / 0.3 * TANK.footprintM2();
        assertEquals(flat, loss.topWPerK(), 0.05 * flat);
    }

    /** Series resistances worked outside the class: 80 mm of stone wool, film 5 to 10 W/(m² K) whatever the correlation. */
    @Test
    void laggedTankOfTheBothyLosesOneToTwoWattsPerKelvin() {
        TankLoss loss = TankLoss.of(TANK, TankLagging.allRound(new Lagging("stone wool", 0.08)), AT);
        double k = 0.0357;
        double d1 = TANK.diameterM();
        double d2 = d1 + 0.16;
        double lagging = Math.log(d2 / d1) / (2 * Math.PI * k * 0.7);
        double weak = 1 / (lagging + 1 / (4 * Math.PI * d2 * 0.7));
        double strong = 1 / (lagging + 1 / (12 * Math.PI * d2 * 0.7));
        assertTrue(loss.sideWPerK() > weak && loss.sideWPerK() < strong, weak + " " + loss + " " + strong);
        assertEquals(loss.totalWPerK() * 45, loss.watts(AT), 1e-9);
    }

    /** Common practice, no source: a bare tank in a still room loses about 10 W/(m² K); correlations scatter by 20 %. */
    @Test
    void bareTankLosesAboutTenWattsPerSquareMetreKelvin() {
        double total = TankLoss.of(TANK, TankLagging.allRound(Lagging.NONE), AT).totalWPerK();
        assertEquals(10, total / TANK.surfaceM2(), 2);
    }

    @Test
    void roundWallLosesLessThanFlatOneOfTheSameInnerArea() {
        TankLagging lagging = TankLagging.allRound(new Lagging("stone wool", 0.001));
        double side = TANK.sideM2() / 4 / 0.70;
        TankLoss round = TankLoss.of(TANK, lagging, AT);
        TankLoss box = TankLoss.of(new Box(side, side, 0.70), lagging, AT);
        assertEquals(box.sideWPerK(), round.sideWPerK(), 0.01 * box.sideWPerK());
    }

    @ParameterizedTest
    @CsvSource({"60, 15", "15, 40", "20, 20", "5, -30", "100, -40"})
    void moreLaggingNeverLosesMoreOnFlatFacesWhateverTheTemperatures(double waterC, double aroundC) {
        double before = Double.POSITIVE_INFINITY;
        for (double thick : new double[] {0, 0.01, 0.02, 0.05, 0.1, 0.2}) {
            TankLoss loss = TankLoss.of(
                    TANK, TankLagging.allRound(new Lagging("stone wool", thick)), new Standing(waterC, aroundC));
            assertTrue(loss.totalWPerK() > 0 && loss.totalWPerK() < before, thick + " m: " + loss);
            before = loss.totalWPerK();
        }
    }

    @Test
    void namesALaggingThatIsNotInTheTable() {
        TankLagging lagging = TankLagging.allRound(new Lagging("sheeps wool", 0.05));
        RefusedException refused = assertThrows(RefusedException.class, () -> TankLoss.of(TANK, lagging, AT));
        assertEquals("side.material", refused.faults().get(0).path());
    }
}
