package loftcoil.engine.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The correlations of this room against worked examples of textbooks. */
class FilmReferenceTest {

    private static final double KELVIN = 273.15;

    /** Incropera, Fundamentals of Heat and Mass Transfer, 6th ed., table 8.1: 3.66 and 4.36. */
    @Test
    void laminarTube() {
        assertEquals(3.66, InsideFilm.nusselt(1000, 4, InsideFilm.Wall.EVEN_TEMPERATURE), 0.005);
        assertEquals(4.36, InsideFilm.nusselt(1000, 4, InsideFilm.Wall.EVEN_FLUX), 0.005);
    }

    /**
     * Gnielinski 1976, Incropera equation 8.62: Re 1e5, Pr 1.2, f 0.0185 gives 254.6268275 (a value of a general-purpose
     * library's own tests, recomputed by hand).
     */
    @Test
    void gnielinski() {
        assertEquals(254.6268275, InsideFilm.gnielinski(1e5, 1.2, 0.0185), 2e-7 * 254.6);
    }

    /**
     * The whole film, smooth tube, against Dittus and Boelter, Incropera equation 8.60 for heating: 0.023 Re^0.8 Pr^0.4.
     * The textbook gives that equation 25 % and Gnielinski's 10 %.
     */
    @Test
    void turbulentTubeNearTheOlderCorrelation() {
        for (double re = 1e4; re <= 1e5; re += 1e4) {
            double older = 0.023 * Math.pow(re, 0.8) * Math.pow(3, 0.4);
            assertEquals(older, InsideFilm.nusselt(re, 3, InsideFilm.Wall.EVEN_FLUX), 0.25 * older);
        }
    }

    /**
     * Incropera, 6th ed., example 9.4 (from memory): bare steam pipe of 0.1 m at 165 °C in a room at 23 °C; Ra 5.073e6, Pr
     * 0.697, printed Nu 23.3. Equation 9.34 with these inputs gives 23.09 by hand: (0.60 + 0.387 × 13.108 / 1.2063)². The
     * print is 0.9 % above its own equation, which is the tolerance here; the digits are held by the next test.
     */
    @Test
    void horizontalSteamPipe() {
        assertEquals(23.3, ChurchillChu.horizontalCylinder(5.073e6, 0.697), 0.01 * 23.3);
        assertEquals(23.09, ChurchillChu.horizontalCylinder(5.073e6, 0.697), 0.005);
    }

    /**
     * Cengel and Ghajar, Heat and Mass Transfer, "Heat loss from hot-water pipes" (example 9-1): level pipe of 80 mm at 70 °C
     * in a room at 20 °C, Ra 1.867e6, Pr 0.7241, k 0.02699: Nu 17.40, h 5.867 (seen in two transcriptions).
     */
    @Test
    void horizontalWaterPipe() {
        double nusselt = ChurchillChu.horizontalCylinder(1.867e6, 0.7241);
        assertEquals(17.40, nusselt, 0.015);
        assertEquals(5.867, nusselt * 0.02699 / 0.08, 0.005);
    }

    /**
     * Churchill and Chu 1975 as a general-purpose heat-transfer library evaluates them in its own tests, Pr 0.69, Gr 2.63e9:
     * vertical plate 147.16185223770603 (which is Incropera example 9.2), horizontal cylinder 139.13493970073597.
     */
    @Test
    void independentLibrary() {
        assertEquals(147.16185223770603, ChurchillChu.verticalPlate(0.69 * 2.63e9, 0.69), 1e-10);
        assertEquals(139.13493970073597, ChurchillChu.horizontalCylinder(0.69 * 2.63e9, 0.69), 1e-10);
    }

    /** The same example: radiation with an emissivity of 0.85 is 441 W for each metre. */
    @Test
    void horizontalSteamPipeRadiation() {
        assertEquals(441, Math.PI * 0.1 * GreyRadiation.fluxWPerM2(165, 23, 0.85), 2);
    }

    /**
     * Incropera, 6th ed., example 9.2 (from memory): glass door 0.71 m high at 232 °C in a room at 23 °C; Ra 1.813e9, Pr
     * 0.690 give Nu 147, h 7.0 with k 0.0338.
     */
    @Test
    void verticalGlassDoor() {
        double nusselt = ChurchillChu.verticalPlate(1.813e9, 0.690);
        assertEquals(147, nusselt, 0.5);
        assertEquals(7.0, nusselt * 0.0338 / 0.71, 0.05);
    }

    /**
     * Incropera, 6th ed., example 7.4 (from memory): air at 10 m/s across a cylinder of 12.7 mm, Re 6071, Pr 0.70 at the
     * film give Nu 40.6, h 96.0 with k 0.030.
     */
    @Test
    void crossFlow() {
        double nusselt = ChurchillBernstein.nusselt(6071, 0.70);
        assertEquals(40.6, nusselt, 0.1);
        assertEquals(96.0, nusselt * 0.030 / 0.0127, 0.3);
    }

    /**
     * Cengel, Cimbala and Turner, Thermal-Fluid Sciences, problem 19-35, as printed in its solutions: steam pipe of 80 mm in wind of
     * 50 km/h, Re 6.228e4, Pr 0.7232: Nu 159.1. Problem 7-100 of the heat-transfer book: Re 3.254e4, Pr 0.7336: Nu 107.0.
     */
    @Test
    void crossFlowOfWind() {
        assertEquals(159.1, ChurchillBernstein.nusselt(6.228e4, 0.7232), 0.1);
        assertEquals(107.0, ChurchillBernstein.nusselt(3.254e4, 0.7336), 0.1);
    }

    /**
     * Incropera, 6th ed., example 1.2 (from memory): steam pipe of 70 mm at 200 °C, emissivity 0.8, room at 25 °C: emits
     * 2270 W/m², receives 447 W/m² (for a black surface), loses 998 W/m with a convection of 15 W/(m² K). The book takes
     * 473 and 298 K.
     */
    @Test
    void steamPipeRadiation() {
        double surfaceC = 473 - KELVIN;
        double aroundC = 298 - KELVIN;
        double net = GreyRadiation.fluxWPerM2(surfaceC, aroundC, 0.8);
        assertEquals(2270 - 0.8 * 447, net, 1.5);
        assertEquals(998, Math.PI * 0.070 * (15 * 175 + net), 1);
    }

    /**
     * Insulated water pipe, worked exercise with printed answer of about 40.2 W/m: steel 106/100 mm (17 W/(m K)), 50 mm of
     * foam (0.033), water at 130 °C, air at -5 °C, films of 4500 inside and 10 W/(m² K) outside. (University exercise on
     * insulated district-heating pipe.)
     */
    @Test
    void insulatedWaterPipe() {
        double resistance = RoundWall.filmKMPerW(0.100, 4500)
                + RoundWall.layerKMPerW(0.100, 0.106, 17)
                + RoundWall.layerKMPerW(0.106, 0.206, 0.033)
                + RoundWall.filmKMPerW(0.206, 10);
        assertEquals(40.2, (130 - -5) / resistance, 0.05);
    }

    /** Incropera, example 3.5 (6th and 7th ed., from memory): k 0.055, h 5 give a critical radius of 11 mm. */
    @Test
    void criticalRadius() {
        assertEquals(0.011, RoundWall.criticalRadiusM(0.055, 5), 1e-12);
    }
}
