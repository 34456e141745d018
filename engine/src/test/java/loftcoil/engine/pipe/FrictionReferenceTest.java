package loftcoil.engine.pipe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wall friction against the Moody chart and worked examples. */
class FrictionReferenceTest {

    /** Hagen and Poiseuille: 64/Re, any textbook. */
    @ParameterizedTest
    @CsvSource({"128, 0.5", "640, 0.1", "2000, 0.032"})
    void laminar(double reynolds, double darcy) {
        assertEquals(darcy, Friction.darcy(reynolds, 1e-4), 1e-12);
    }

    /**
     * Colebrook 1939 solved to ten digits at Re 1e5, e/D 1e-4: 0.0185138661 (a value of a general-purpose library's own
     * tests, recomputed by hand).
     */
    @Test
    void colebrook() {
        assertEquals(0.0185138661, Friction.darcy(1e5, 1e-4), 5e-11);
    }

    /** Smooth pipe at Re 1e5, Moody chart and textbooks: 0.0180; the equation of Colebrook 1939 gives 0.01799. */
    @Test
    void smoothPipe() {
        assertEquals(0.01799, Friction.darcy(1e5, 0), 5e-6);
    }

    /** Points of the Moody chart, computed from Colebrook 1939 apart from this code and printed to four digits. */
    @ParameterizedTest
    @CsvSource({"4000, 0, 0.03991", "5000, 1e-4, 0.03750", "1e4, 0, 0.03088", "2e4, 1e-4, 0.02610", "1e6, 1e-3, 0.01994"
    })
    void moodyChart(double reynolds, double roughness, double darcy) {
        assertEquals(darcy, Friction.darcy(reynolds, roughness), 5e-6);
    }

    /**
     * Measured smooth pipe: B. J. McKeon, C. J. Swanson, M. V. Zagarola, R. J. Donnelly, A. J. Smits, J. Fluid Mech. 511 (2004) 41-44,
     * as tabulated in an open library of fluid mechanics (the paper itself was not read). The last column is how far this code
     * lies from the point, in per cent, worked
     * out apart from this code from the two laws and the step between them; the page of the models states it.
     */
    @ParameterizedTest(name = "Re {0}: measured {1}, apart {2} %")
    @CsvSource({
        "1390, 0.04815, -4.4",
        "1669, 0.04304, -10.9",
        "1994, 0.03739, -14.2",
        "2227, 0.03405, -15.6",
        "2554, 0.03091, -17.6",
        "2868, 0.02804, 11.0",
        "2903, 0.03182, 3.8",
        "2926, 0.03846, -10.5",
        "2991, 0.04124, -6.3",
        "2997, 0.03500, 11.5",
        "3080, 0.04285, 0.2",
        "3980, 0.03995, 0.0",
        "4835, 0.03797, -0.6",
        "8162, 0.03364, -3.1",
        "10900, 0.03088, -2.2",
        "18990, 0.02670, -1.8"
    })
    void measuredSmoothPipe(double reynolds, double measured, double apartPercent) {
        assertEquals(apartPercent, 100 * (Friction.darcy(reynolds, 0) / measured - 1), 0.06);
    }

    /** The same points: the middle of the errors and their scatter where the engine claims to follow them, Re 2800 and more. */
    @Test
    void measuredTransitionHasNoBias() {
        double[] reynolds = {2868, 2903, 2926, 2991, 2997, 3080, 3980, 4835, 8162, 10900, 18990};
        double[] measured = {
            0.02804, 0.03182, 0.03846, 0.04124, 0.03500, 0.04285, 0.03995, 0.03797, 0.03364, 0.03088, 0.02670
        };
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < reynolds.length; i++) {
            double apart = Friction.darcy(reynolds[i], 0) / measured[i] - 1;
            sum += apart;
            squares += apart * apart;
        }
        assertEquals(0, sum / reynolds.length, 0.02);
        assertEquals(
                0,
                Math.sqrt(squares / reynolds.length),
                0.10,
                "the turbulent law itself scatters by about ten per cent");
    }

    /** Fully rough, von Karman: e/D 1e-4 tends to 0.0119736515 (a library's own tests); at Re 1e8 0.4 % are left. */
    @Test
    void fullyRough() {
        assertEquals(0.0119736515, Friction.darcy(1e8, 1e-4), 0.005 * 0.01197);
    }

    /** Blasius, 0.3164 Re^-0.25 for smooth pipe; the textbooks give it 3 % between 4000 and 1e5. */
    @ParameterizedTest
    @CsvSource({"4000", "1e4", "5e4", "1e5"})
    void blasius(double reynolds) {
        double blasius = 0.3164 / Math.sqrt(Math.sqrt(reynolds));
        assertEquals(blasius, Friction.darcy(reynolds, 0), 0.03 * blasius);
    }

    /** The equation of Colebrook itself, put back: what is left over is below 1e-10 everywhere. */
    @Test
    void colebrookResidual() {
        int points = 0;
        for (double re = 4000; re <= 1e8; re *= 1.3) {
            for (double rough : new double[] {0, 1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 0.05}) {
                double root = 1 / Math.sqrt(Friction.darcy(re, rough));
                double residual = root + 2 * Math.log10(rough / 3.7 + 2.51 * root / re);
                assertEquals(0, residual, 1e-10, "Re " + re + ", e/D " + rough);
                points++;
            }
        }
        assertEquals(39 * 7, points);
    }

    /**
     * Cengel and Cimbala, Fluid Mechanics, "Determining the head loss in a water pipe" (example 8-3 in the 1st and 2nd ed.,
     * from memory): Re 126 400, e/D 4.2e-5 give f 0.0174; 200 ft of 2 in pipe at 9.17 ft/s lose 1700 lbf/ft².
     */
    @Test
    void waterPipeExample() {
        double darcy = Friction.darcy(126_400, 4.2e-5);
        assertEquals(0.0174, darcy, 5e-5);
        double poundPerFoot2 = darcy * 200 / (2.0 / 12) * 62.36 / 32.174 * 9.17 * 9.17 / 2;
        assertEquals(1700, poundPerFoot2, 5);
    }

    /**
     * Cengel and Cimbala, "Gravity-driven water flow in a pipe" (example 8-8, 3rd ed., from memory): water at 10 °C, 6 L/s
     * between two reservoirs through 89 m of cast iron pipe of 5 cm (0.26 mm), fittings of 2.36 velocity heads: velocity
     * 3.06 m/s, f 0.0315, head 27.9 m, upper level 31.9 m. The book takes g as 9.81.
     */
    @Test
    void gravityPipelineExample() {
        double velocity = 0.006 / (Math.PI / 4 * 0.05 * 0.05);
        double reynolds = 999.7 * velocity * 0.05 / 1.307e-3;
        double darcy = Friction.darcy(reynolds, 0.26 / 50);
        double head = (darcy * 89 / 0.05 + 2.36) * velocity * velocity / (2 * 9.81);
        assertEquals(3.06, velocity, 0.005);
        assertEquals(0.0315, darcy, 5e-5);
        assertEquals(27.9, head, 0.005 * 27.9);
        assertEquals(31.9, 4 + head, 0.005 * 31.9);
    }

    /**
     * Cengel and Cimbala, "Effect of flushing on flow rate from a shower", part a (example 8-9, 3rd ed., from memory): 11 m
     * of copper pipe of 1.5 cm (1.5e-6 m), water at 20 °C, 200 kPa, outlet 2 m higher, fittings of 24.7 velocity heads:
     * velocity 2.98 m/s, f 0.0218, 0.53 L/s.
     */
    @Test
    void copperShowerLineExample() {
        double headM = 200e3 / (998 * 9.81) - 2;
        DoubleUnaryOperator left =
                velocity -> headM - (shower(velocity) * 11 / 0.015 + 24.7) * velocity * velocity / (2 * 9.81);
        double velocity = new BrentSolver(1e-10).solve(100, left::applyAsDouble, 0.1, 20);
        assertEquals(2.98, velocity, 0.005 * 2.98);
        assertEquals(0.0218, shower(velocity), 5e-5);
        assertEquals(0.53, 1000 * velocity * Math.PI / 4 * 0.015 * 0.015, 0.005);
    }

    private static double shower(double velocity) {
        return Friction.darcy(998 * velocity * 0.015 / 1.002e-3, Friction.DRAWN_TUBE_ROUGHNESS_M / 0.015);
    }
}
