package loftcoil.engine.run;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import loftcoil.engine.design.CoilHeating;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Outdoors;
import loftcoil.engine.design.Site;
import loftcoil.engine.design.Tank;
import loftcoil.engine.design.Use;
import loftcoil.engine.fault.Fault;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.gas.Atmosphere;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.CircuitPlan;
import loftcoil.engine.loop.Setting;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.sun.Climate;
import loftcoil.engine.sun.Glazing;
import loftcoil.engine.sun.Place;
import loftcoil.engine.sun.SkyYear;
import loftcoil.engine.sun.Weather;
import loftcoil.engine.sun.WindowYear;
import loftcoil.engine.tank.LayerPlan;
import loftcoil.engine.tank.Ports;
import loftcoil.engine.use.DrawOff;
import loftcoil.engine.water.Saturation;

/**
 * All that a march needs and that does not change from step to step, worked out once from a design. Immutable.
 *
 * @param design the design
 * @param pace how finely it is marched
 * @param heating the heat of the coil
 * @param layers the tank cut into layers
 * @param loop the loop, tabulated for the months
 * @param window the sun behind the panes; empty where there are none
 * @param losses the tank's standing loss
 * @param draws daily draws in the order of the day
 */
record SystemPlan(
        Design design,
        Pace pace,
        CoilHeating heating,
        LayerPlan layers,
        LoopTables loop,
        Optional<WindowYear> window,
        StandingLosses losses,
        List<PlannedDraw> draws) {

    private static final int SKY_STEP_MIN = 10;

    private static final Recent<Under, SkyYear> SKIES = new Recent<>(2);
    private static final Recent<Behind, WindowYear> WINDOWS = new Recent<>(6);
    private static final Recent<Searched, LoopTable> TABLES = new Recent<>(6);

    /** All that the sky of a year depends on but for the altitude, which is that of the sea. */
    private record Under(Place place, Climate climate) {
        SkyYear sky() {
            return SkyYear.of(place, climate, SKY_STEP_MIN);
        }
    }

    /** All that the sun behind panes depends on. */
    private record Behind(Under under, double altitudeM, Glazing panes, Weather weather) {
        WindowYear window() {
            SkyYear sky = SKIES.of(under, Under::sky).atAltitudeM(altitudeM);
            return WindowYear.of(sky.under(weather), panes);
        }
    }

    /** All that a loop's table depends on, but for the heat and the tank's temperature that circuits are made with. */
    private record Searched(
            CircuitPlan lit, CircuitPlan out, Setting setting, CoilHeating heating, double boilC, LoopAxes.Mesh mesh) {}

    static SystemPlan of(Design design, Pace pace, CoilHeating heating) {
        return of(design, pace, heating, mesh(pace)).with(sun(design));
    }

    /** The same system under other weather, whose air is round pipes outdoors too. */
    SystemPlan under(Weather weather) {
        SystemPlan sunny = with(repathed("site.monthly.", () -> window(design, weather)));
        return Outdoors.any(design) && weather.warmerK() != 0
                ? sunny.with(heating, tables(design, heating, layers.boilC(), mesh(pace), weather.warmerK()))
                : sunny;
    }

    private SystemPlan with(CoilHeating newHeating, LoopTables tables) {
        return new SystemPlan(design, pace, newHeating, layers, tables, window, losses, draws);
    }

    /** The system without its sun, the loop on another mesh. */
    static SystemPlan of(Design design, Pace pace, CoilHeating heating, LoopAxes.Mesh mesh) {
        design.checked();
        LayerPlan layers = layerPlan(design, pace);
        return new SystemPlan(
                design,
                pace,
                heating,
                layers,
                tables(design, heating, layers.boilC(), mesh, 0),
                Optional.empty(),
                standingLosses(design, layers),
                draws(design));
    }

    /** The tank cut into layers, all as cold as the supply. */
    static LayerPlan layerPlan(Design design, Pace pace) {
        return repathed("tank.", () -> layers(design, pace));
    }

    /** What the tank loses through its lagging; what the panes lose is the window's. */
    static StandingLosses standingLosses(Design design, LayerPlan layers) {
        return new StandingLosses(design.coatedTank(), design.tank().aroundC());
    }

    /** The same system marched more finely or coarsely; nothing is searched anew. */
    SystemPlan with(Pace newPace) {
        return new SystemPlan(design, newPace, heating, layers(design, newPace), loop, window, losses, draws);
    }

    /** The same system with another heat in the coil; sun and tank are not worked out anew. */
    SystemPlan with(CoilHeating newHeating) {
        return with(newHeating, tables(design, newHeating, layers.boilC(), mesh(pace), 0));
    }

    /** Whether cold water refills the tank as it is drawn. */
    boolean refilledAsDrawn() {
        return refillAtH().isEmpty();
    }

    /** The hour at which it is filled by hand. */
    OptionalDouble refillAtH() {
        return design.tank().refillAtH();
    }

    private static LoopAxes.Mesh mesh(Pace pace) {
        return pace.equals(Pace.ROUGH) ? LoopAxes.Mesh.ROUGH : LoopAxes.Mesh.USUAL;
    }

    /**
     * The loop's tables.
     *
     * @param warmerK how much warmer than the means of the months it is outdoors, K
     */
    private static LoopTables tables(
            Design design, CoilHeating heating, double boilC, LoopAxes.Mesh mesh, double warmerK) {
        return Outdoors.any(design)
                ? LoopTables.of(
                        design.site().monthly().meanAirC().stream()
                                .map(airC -> airC + warmerK)
                                .toList(),
                        airC -> table(Outdoors.at(design, airC), heating, boilC, mesh))
                : LoopTables.of(table(design, heating, boilC, mesh));
    }

    private static LoopTable table(Design design, CoilHeating heating, double boilC, LoopAxes.Mesh mesh) {
        double anyC = Math.min(40, boilC / 2);
        Circuit lit = design.circuit(anyC);
        Circuit out = design.circuitFireOut(anyC);
        return TABLES.of(
                new Searched(lit.plan(), out.plan(), lit.setting(), heating, boilC, mesh),
                searched -> LoopTable.of(lit, out, heating, boilC, mesh));
    }

    /** The same system with the sun of another window. */
    SystemPlan with(Optional<WindowYear> sun) {
        return new SystemPlan(design, pace, heating, layers, loop, sun, losses, draws);
    }

    private static LayerPlan layers(Design design, Pace pace) {
        Tank tank = design.tank();
        double boreM = Math.max(
                TubeTable.require("coldLegs.tube", design.coldLegs().get(0).tube())
                        .boreM(),
                TubeTable.require(
                                "hotLegs.tube",
                                design.hotLegs()
                                        .get(design.hotLegs().size() - 1)
                                        .tube())
                        .boreM());
        Ports ports = new Ports(tank.coldPortM(), tank.returnPortM(), tank.drawPortM(), tank.waterlineM(), boreM);
        double boilC = Saturation.tempC(Atmosphere.pressurePa(design.site().altitudeM()));
        double startC = Math.min(boilC, design.site().coldSupplyC());
        return new LayerPlan(tank.shape(), ports, pace.layers(), startC, boilC, pace.cutAtPorts());
    }

    /** The sun behind the design's panes under the month's mean weather. */
    static Optional<WindowYear> sun(Design design) {
        return repathed("site.monthly.", () -> window(design, Weather.MEAN));
    }

    private static Optional<WindowYear> window(Design design, Weather weather) {
        return design.glazing().map(panes -> {
            Site site = design.site();
            Place place = new Place(site.latitudeDeg(), site.longitudeDeg(), 0, site.utcOffsetH());
            Climate climate = new Climate(
                    site.monthly().globalKWhPerM2Day(), site.monthly().meanAirC());
            return WINDOWS.of(new Behind(new Under(place, climate), site.altitudeM(), panes, weather), Behind::window);
        });
    }

    private static List<PlannedDraw> draws(Design design) {
        return design.use().stream()
                .filter(use -> use.litres() > 0)
                .map(use -> planned(design, use))
                .sorted(Comparator.comparingDouble(planned -> planned.draw().atH()))
                .toList();
    }

    private static PlannedDraw planned(Design design, Use use) {
        // 24 o'clock is the first minute of the day.
        DrawOff draw = new DrawOff(use.atH() % 24, use.litres(), use.mixedC(), use.tap());
        double waterlineM = design.tank().waterlineLevelM();
        boolean runs =
                design.taps().stream().anyMatch(tap -> tap.name().equals(use.tap()) && tap.levelM() < waterlineM);
        return new PlannedDraw(draw, runs);
    }

    /** Faults of a room's own records, told with the path they have in the design. */
    private static <T> T repathed(String prefix, Supplier<T> made) {
        try {
            return made.get();
        } catch (RefusedException refused) {
            throw new RefusedException(refused.faults().stream()
                    .map(fault -> new Fault(prefix + fault.path(), fault.given(), fault.allowed(), fault.why()))
                    .toList());
        }
    }
}
