package loftcoil.engine.tank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.hummeling.if97.IF97;
import loftcoil.engine.fault.RefusedException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Enthalpy against IAPWS R7-97(2012), region 1, by an independent library. */
class WaterHeatReferenceTest {

    /**
     * Both formulations state cp to 0.1 % or so; their enthalpy differences must agree within that. The library is asked at
     * 0.1 MPa, so only up to 99 °C.
     */
    @ParameterizedTest
    @ValueSource(doubles = {5, 10, 20, 30, 40, 50, 60, 70, 80, 90, 99})
    void heatAboveZeroAgreesWithIf97(double tempC) {
        IF97 if97 = new IF97(IF97.UnitSystem.SI);
        double fromLibrary = if97.specificEnthalpyPT(1e5, tempC + 273.15) - if97.specificEnthalpyPT(1e5, 273.15);
        assertEquals(1, WaterHeat.jPerKg(tempC) / fromLibrary, 5e-4);
    }

    /** Steam tables: saturated water at 100 °C holds 419.1 kJ/kg above 0 °C (IF97; every printed table gives 419.0 to 419.2). */
    @org.junit.jupiter.api.Test
    void boilingWaterHoldsWhatTheSteamTablesSay() {
        assertEquals(419.1e3, WaterHeat.jPerKg(100), 0.2e3);
    }

    @Property
    void temperatureAndHeatUndoEachOther(@ForAll @DoubleRange(min = 0, max = 110) double tempC) {
        assertEquals(tempC, WaterHeat.tempC(WaterHeat.jPerKg(tempC)), 1e-10);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 110.1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesWhatIsNotLiquid(double tempC) {
        RefusedException refused = assertThrows(RefusedException.class, () -> WaterHeat.jPerKg(tempC));
        assertEquals("tempC", refused.faults().get(0).path());
    }
}
