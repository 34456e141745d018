package loftcoil.engine.design;

import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.pipe.Lagging;
import loftcoil.engine.tank.Box;
import loftcoil.engine.tank.CoatFit;
import loftcoil.engine.tank.CoatedTank;
import loftcoil.engine.tank.LyingCylinder;
import loftcoil.engine.tank.TankLagging;
import loftcoil.engine.tank.TankRadiator;
import loftcoil.engine.tank.TankShape;
import loftcoil.engine.tank.UprightCylinder;

/**
 * The tank. Ports and waterline are metres above its base, which is its lowest point inside; the base is metres above the floor.
 *
 * @param volumeL volume when full, L; 10 to 5000
 * @param heightM inside height, of a lying cylinder its diameter, m; 0.1 to 5
 * @param baseM level of the base above the floor, m; −10 to 15
 * @param waterlineM free surface, m above the base; not above the tank's height
 * @param coldPortM port to the cold legs, m above the base; below the return port
 * @param returnPortM port of the hot legs, m above the base; below the waterline
 * @param drawPortM port to the taps, m above the base; below the waterline
 * @param lagging lagging; empty for a bare tank
 * @param emptyMassKg mass without water, kg; 0 to 3000
 * @param aroundC temperature around the tank, °C; −30 to 60
 * @param refillAtH hour at which it is filled up by hand each day, h; 0 to 24; empty where cold water follows every draw
 * @param kind its shape; empty for an upright cylinder
 * @param lengthM inside length of a box along the panes, m; 0.05 to 10; empty for one as long as wide
 * @param coat how its lagging sits; empty for close-fitting
 * @param radiatorKW heat of a radiator joined to it, at 50 K over the place, kW; 0 to 5; empty for none
 */
public record Tank(
        double volumeL,
        double heightM,
        double baseM,
        double waterlineM,
        double coldPortM,
        double returnPortM,
        double drawPortM,
        Optional<LaggingChoice> lagging,
        double emptyMassKg,
        double aroundC,
        OptionalDouble refillAtH,
        Optional<Kind> kind,
        OptionalDouble lengthM,
        Optional<Coat> coat,
        OptionalDouble radiatorKW) {

    private static final double M3_PER_L = 0.001;
    private static final double W_PER_KW = 1000;

    /** Shapes of a tank. */
    public enum Kind implements Coded {
        /** Round, standing. */
        UPRIGHT_CYLINDER("upright cylinder"),
        /** Round, on its side, its axis level and along the panes. */
        LYING_CYLINDER("lying cylinder"),
        /** Four upright walls. */
        BOX("box");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** How lagging sits on a tank. */
    public enum Coat implements Coded {
        /** Without a gap. */
        CLOSE_FITTING("close-fitting", CoatFit.CLOSE_FITTING),
        /** Tied round by hand. */
        HAND_WRAPPED("hand-wrapped", CoatFit.HAND_WRAPPED);

        private final String code;
        private final CoatFit fit;

        Coat(String code, CoatFit fit) {
            this.code = code;
            this.fit = fit;
        }

        @Override
        public String code() {
            return code;
        }
    }

    /** An upright cylinder in a close-fitting coat, if any. */
    public Tank(
            double volumeL,
            double heightM,
            double baseM,
            double waterlineM,
            double coldPortM,
            double returnPortM,
            double drawPortM,
            Optional<LaggingChoice> lagging,
            double emptyMassKg,
            double aroundC,
            OptionalDouble refillAtH) {
        this(
                volumeL,
                heightM,
                baseM,
                waterlineM,
                coldPortM,
                returnPortM,
                drawPortM,
                lagging,
                emptyMassKg,
                aroundC,
                refillAtH,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    /**
     * The inside of the tank.
     *
     * @throws loftcoil.engine.fault.RefusedException where its sizes do not fit together
     */
    public TankShape shape() {
        double volumeM3 = volumeL * M3_PER_L;
        return switch (kind.orElse(Kind.UPRIGHT_CYLINDER)) {
            case UPRIGHT_CYLINDER -> new UprightCylinder(volumeM3, heightM);
            case LYING_CYLINDER -> new LyingCylinder(volumeM3, heightM);
            case BOX ->
                lengthM.isPresent()
                        ? new Box(lengthM.getAsDouble(), volumeM3 / heightM / lengthM.getAsDouble(), heightM)
                        : Box.square(volumeM3, heightM);
        };
    }

    /**
     * The tank in its coat and with its radiator, without panes.
     *
     * @throws loftcoil.engine.fault.RefusedException where its sizes do not fit together
     */
    public CoatedTank coated() {
        TankLagging allRound =
                TankLagging.allRound(lagging.map(LaggingChoice::lagging).orElse(Lagging.NONE));
        return CoatedTank.without(shape(), allRound, coat.orElse(Coat.CLOSE_FITTING).fit)
                .with(new TankRadiator(radiatorKW.orElse(0) * W_PER_KW));
    }

    /** Litres in it when it is full to the waterline. */
    public double waterlineL() {
        return litresBelow(waterlineM);
    }

    /**
     * Litres in it below a level.
     *
     * @param levelM above its base, m
     */
    public double litresBelow(double levelM) {
        return shape().volumeBelowM3(levelM) / M3_PER_L;
    }

    /** Level of the cold port above the floor, m. */
    public double coldPortLevelM() {
        return baseM + coldPortM;
    }

    /** Level of the return port above the floor, m. */
    public double returnPortLevelM() {
        return baseM + returnPortM;
    }

    /** Level of the waterline above the floor, m. */
    public double waterlineLevelM() {
        return baseM + waterlineM;
    }
}
