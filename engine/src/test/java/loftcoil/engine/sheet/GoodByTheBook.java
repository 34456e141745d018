package loftcoil.engine.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Safety;
import loftcoil.engine.design.Use;
import loftcoil.engine.design.Vent;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;

/**
 * What an old hand would call a good design, from rules of the trade and a balance on paper. It knows nothing of the loop's search,
 * the year, the starts or the cautions. Each rule is common practice, no source, unless it names one.
 */
final class GoodByTheBook {

    private static final double J_PER_L_K = 4187;
    private static final double WOOD_KWH_PER_KG = 4.1;

    private GoodByTheBook() {}

    static boolean good(Design design) {
        return coil(design)
                && pipes(design)
                && tank(design)
                && openVent(design)
                && taps(design)
                && hottestC(design) <= 70;
    }

    /** The coil climbs 0.3 m, is one bent length with a wall of a millimetre, and leaves the room most of the fire. */
    private static boolean coil(Design design) {
        Tube tube = TubeTable.require("coil.tube", design.coil().tube());
        double heatKW = design.coil().heatKW().orElse(0);
        double fireKW = design.fire().orElseThrow().burnKgPerH() * WOOD_KWH_PER_KG;
        return design.coil().outletM() - design.coil().inletM() >= 0.3
                && tube.wallM() >= 0.00099
                && List.of("bend90").containsAll(design.coil().fittings().keySet())
                && heatKW <= 0.2 * fireKW;
    }

    /**
     * One bore all round, 22 to 35 mm; 2 kW on 22 mm, 3 kW on 28 mm and wider (28 mm for gravity primaries of solid fuel:
     * BS 8303, from memory); all climbs or falls by 1 in 40 at least; lagged; no valve; few bends.
     */
    private static boolean pipes(Design design) {
        List<Leg> legs = Stream.concat(design.coldLegs().stream(), design.hotLegs().stream())
                .toList();
        Tube coil = TubeTable.require("coil.tube", design.coil().tube());
        double outerMm = coil.outerM() * 1000;
        double mostKW = outerMm < 27 ? 2 : 3;
        return outerMm > 21
                && outerMm < 36
                && design.coil().heatKW().orElse(0) <= mostKW
                && legs.stream().allMatch(leg -> leg.tube().equals(design.coil().tube()))
                && legs.stream().allMatch(leg -> leg.lagging().isPresent())
                && design.coldLegs().stream().allMatch(leg -> -leg.riseM() >= leg.lengthM() / 40)
                && design.hotLegs().stream().allMatch(leg -> leg.riseM() >= leg.lengthM() / 40)
                && legs.stream()
                        .flatMap(leg -> leg.fittings().entrySet().stream())
                        .allMatch(fitting -> fitting.getKey().startsWith("elbow") && fitting.getValue() <= 3);
    }

    /** A metre from the coil up to the return port, which stands a hand's breadth under the water; a coat of 50 mm. */
    private static boolean tank(Design design) {
        return design.tank().returnPortLevelM() - design.coil().outletM() >= 1
                && design.tank().waterlineM() - design.tank().returnPortM() >= 0.1
                && design.tank()
                        .lagging()
                        .filter(coat -> coat.thicknessMm() >= 50)
                        .isPresent();
    }

    /** An open pipe of 22 mm that nothing can shut, as high as UK Water Regulations guide G20.3 asks (as restated in public). */
    private static boolean openVent(Design design) {
        Optional<Vent> vent = design.safety().flatMap(Safety::vent);
        double headM = design.tank().waterlineLevelM() - design.coil().inletM();
        return vent.filter(open -> !open.valve().orElse(true))
                .filter(open -> open.aboveWaterlineM().orElse(0) >= 0.04 * headM + 0.15)
                .flatMap(Vent::tube)
                .filter(tube -> TubeTable.require("vent", tube).outerM() >= 0.0219)
                .isPresent();
    }

    /** A mixer at each tap, at 48 °C at most (Approved Document G). */
    private static boolean taps(Design design) {
        return design.taps().stream().allMatch(tap -> tap.mixerC().orElse(100) <= 48);
    }

    /**
     * The hottest that the tank comes to with the whole of it at one temperature, °C: a month of the same days, hour by hour. The fire
     * first, then what is drawn at the hour, then the coat (0.04 W/(m K), a third more for ports and joints); sun on a day of
     * 6 kWh/m², of which 0.6 come through, spread over eight hours in which no fire burns.
     */
    static double hottestC(Design design) {
        double litres = design.tank().volumeL()
                * design.tank().waterlineM()
                / design.tank().heightM();
        double coldC = design.site().coldSupplyC();
        double radiusM = Math.sqrt(
                design.tank().volumeL() / 1000 / (Math.PI * design.tank().heightM()));
        double areaM2 = 2 * Math.PI * radiusM * (radiusM + design.tank().heightM());
        double coatM = design.tank().lagging().map(coat -> coat.thicknessMm()).orElse(1.0) / 1000;
        double wPerK = 1.33 * areaM2 * 0.04 / coatM;
        double sunW = design.window().map(panes -> panes.areaM2()).orElse(0.0) * 6000 * 0.6 / 8;
        double litFromH = design.fire().orElseThrow().litFromH();
        double litForH = design.fire().orElseThrow().litForH();
        double tankC = 40;
        double hottestC = 0;
        for (int hour = 0; hour < 30 * 24; hour++) {
            int ofDay = hour % 24;
            double lit = Math.max(0, Math.min(1, Math.min(ofDay + 1, litFromH + litForH) - Math.max(ofDay, litFromH)));
            double inW = lit * 1000 * design.coil().heatKW().orElse(0) + (ofDay >= 8 && ofDay < 16 ? sunW : 0);
            tankC += (inW - wPerK * (tankC - design.tank().aroundC())) * 3600 / (litres * J_PER_L_K);
            hottestC = hour > 20 * 24 ? Math.max(hottestC, tankC) : 0;
            for (Use use : design.use()) {
                if ((int) use.atH() == ofDay) {
                    double hot = use.litres() * Math.min(1, (use.mixedC() - coldC) / Math.max(1, tankC - coldC));
                    tankC += (coldC - tankC) * Math.min(1, hot / litres);
                }
            }
        }
        return hottestC;
    }
}
