package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.pipe.LaggingTable;
import loftcoil.engine.pipe.TubeTable;

/** The named changes of tank, taps and site. */
final class TankChanges {

    /** The name of a bare pipe or tank among the laggings. */
    static final String BARE = "none";

    private TankChanges() {}

    /** All laggings, and none. */
    static List<String> laggings() {
        List<String> options = new ArrayList<>(LaggingTable.names());
        options.add(BARE);
        return options;
    }

    static void into(ChangeTable table) {
        table.number("tank.baseM", "Tank base above the floor", DesignRanges.LEVEL)
                .as(design -> design.tank().baseM(), Design::withTankBaseM);
        table.number("tank.volumeL", "Water the tank holds when full to the brim", DesignRanges.VOLUME)
                .as(design -> design.tank().volumeL(), Design::withTankVolumeL);
        table.number("tank.heightM", "Inside height of the tank", DesignRanges.TANK_HEIGHT)
                .as(design -> design.tank().heightM(), Design::withTankHeightM);
        table.number("tank.waterlineM", "Waterline above the tank's base", DesignRanges.IN_TANK)
                .as(design -> design.tank().waterlineM(), Design::withWaterlineM);
        table.number("tank.coldPortM", "Port to the coil above the tank's base", DesignRanges.IN_TANK)
                .as(design -> design.tank().coldPortM(), Design::withColdPortM);
        table.number("tank.returnPortM", "Port of the hot pipe above the tank's base", DesignRanges.IN_TANK)
                .as(design -> design.tank().returnPortM(), Design::withReturnPortM);
        table.number("tank.drawPortM", "Port to the taps above the tank's base", DesignRanges.IN_TANK)
                .as(design -> design.tank().drawPortM(), Design::withDrawPortM);
        table.number("tank.laggingMm", "Thickness of lagging round the tank", DesignRanges.LAGGING)
                .as(
                        design -> design.tank()
                                .lagging()
                                .map(LaggingChoice::thicknessMm)
                                .orElse(0.0),
                        Design::withTankLaggingMm);
        table.choice("tank.laggingMaterial", "Lagging round the tank", laggings())
                .as(
                        design -> design.tank()
                                .lagging()
                                .map(LaggingChoice::material)
                                .orElse(BARE),
                        Design::withTankLaggingMaterial);
        table.choice("tank.refill", "How cold water follows", List.of(WithTank.AS_DRAWN, WithTank.ONCE_A_DAY))
                .as(
                        design -> design.tank().refillAtH().isPresent() ? WithTank.ONCE_A_DAY : WithTank.AS_DRAWN,
                        Design::withTankRefill);
        table.choice("taps.tube", "Tube of the pipe to every tap", TubeTable.names())
                .as(design -> WithTaps.orStarted(design).get(0).tube(), Design::withTapTube);
        table.whole("taps.elbows", "Sharp 90° elbows on the way to every tap", DesignRanges.FITTINGS)
                .as(
                        design -> WithTaps.orStarted(design).get(0).fittings().getOrDefault("elbow90", 0),
                        Design::withTapElbows);
        table.choice("taps.mixer", "Mixing valve before every tap", WithTaps.MIXERS)
                .as(WithTaps::mixer, Design::withTapMixer);
        table.number("site.altitudeM", "Altitude of the site", DesignRanges.ALTITUDE)
                .as(design -> design.site().altitudeM(), Design::withAltitudeM);
    }
}
