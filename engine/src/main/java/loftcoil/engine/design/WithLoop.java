package loftcoil.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The ways to change coil and legs of a design, the loop staying closed. */
public sealed interface WithLoop permits Design {

    /** A coil piped as it should be. */
    String COLD_LOW = "the lower end";

    /** A coil piped the wrong way round. */
    String COLD_HIGH = "the upper end";

    /** The hot leg stands where it is warm, as it should. */
    String HOT_LEG = "the hot leg";

    /** The cold leg stands where it is warm: the pipes have been taken for each other. */
    String COLD_LEG = "the cold leg";

    /** Lagging that a bare leg gets when only its material is named, mm. */
    double BARE_LEG_GETS_MM = 19;

    private Design self() {
        return (Design) this;
    }

    private Design each(UnaryOperator<Leg> change) {
        return self().withLegs(each(self().coldLegs(), change), each(self().hotLegs(), change));
    }

    private static List<Leg> each(List<Leg> legs, UnaryOperator<Leg> change) {
        return legs.stream().map(change).toList();
    }

    /** The same design with the coil moved so that its inlet is at this level, m; the longest rises follow. */
    default Design withCoilInletM(double inletM) {
        return Stretch.toCoil(self(), self().coil().withInletM(inletM));
    }

    /** The same design with every leg and the coil of this tube. */
    default Design withLoopTube(String tube) {
        return self().with(
                        self().tank(),
                        self().coil().withTube(tube),
                        each(self().coldLegs(), leg -> leg.withTube(tube)),
                        each(self().hotLegs(), leg -> leg.withTube(tube)));
    }

    /** The same design with the coil alone of this tube. */
    default Design withCoilTube(String tube) {
        return self().withCoil(self().coil().withTube(tube));
    }

    /** The same design with the hot legs alone of this tube. */
    default Design withHotTube(String tube) {
        return self().withLegs(self().coldLegs(), each(self().hotLegs(), leg -> leg.withTube(tube)));
    }

    /** The same design with the cold legs alone of this tube. */
    default Design withColdTube(String tube) {
        return self().withLegs(each(self().coldLegs(), leg -> leg.withTube(tube)), self().hotLegs());
    }

    /** The same design with a coil of this length of tube, m. */
    default Design withCoilLengthM(double lengthM) {
        return self().withCoil(self().coil().withLengthM(lengthM));
    }

    /** The same design with this heat in the coil, kW. */
    default Design withCoilHeatKW(double heatKW) {
        return self().withCoil(self().coil().withHeatKW(heatKW));
    }

    /** The same design with the cold pipe joined to {@link #COLD_LOW} or {@link #COLD_HIGH} of the coil. */
    default Design withCoilEnds(String coldEnd) {
        Coil coil = self().coil();
        boolean right = coil.riseM() >= 0;
        return right == coldEnd.equals(COLD_LOW) ? self().checked() : Stretch.toCoil(self(), coil.turned());
    }

    /** The same design with this thickness of lagging on every leg, mm; a bare leg gets the stone wool; 0 takes it off. */
    default Design withLoopLaggingMm(double thicknessMm) {
        return each(lagged(thicknessMm));
    }

    /** The same design with this thickness of lagging on the hot legs, mm; a bare leg gets stone wool; 0 takes it off. */
    default Design withHotLaggingMm(double thicknessMm) {
        return self().withLegs(self().coldLegs(), each(self().hotLegs(), lagged(thicknessMm)));
    }

    /** The same design with this thickness of lagging on the cold legs, mm; a bare leg gets stone wool; 0 takes it off. */
    default Design withColdLaggingMm(double thicknessMm) {
        return self().withLegs(each(self().coldLegs(), lagged(thicknessMm)), self().hotLegs());
    }

    private static UnaryOperator<Leg> lagged(double thicknessMm) {
        return leg -> leg.withLagging(Optional.of(
                leg.lagging().orElse(LaggingChoice.stoneWool(thicknessMm)).withThicknessMm(thicknessMm)));
    }

    /** The same design with this material on every leg, {@code none} to take it off; a bare leg gets 19 mm of it. */
    default Design withLoopLaggingMaterial(String material) {
        return each(coated(material));
    }

    /** The same design with this material on the hot legs; a bare leg gets 19 mm of it. */
    default Design withHotLaggingMaterial(String material) {
        return self().withLegs(self().coldLegs(), each(self().hotLegs(), coated(material)));
    }

    /** The same design with this material on the cold legs; a bare leg gets 19 mm of it. */
    default Design withColdLaggingMaterial(String material) {
        return self().withLegs(each(self().coldLegs(), coated(material)), self().hotLegs());
    }

    private static UnaryOperator<Leg> coated(String material) {
        if (material.equals(TankChanges.BARE)) {
            return leg -> leg.withLagging(Optional.empty());
        }
        return leg -> leg.withLagging(Optional.of(new LaggingChoice(
                material, leg.lagging().map(LaggingChoice::thicknessMm).orElse(BARE_LEG_GETS_MM))));
    }

    /** The same design with this many sharp 90° elbows in every leg. */
    default Design withElbowsPerLeg(int elbows) {
        return each(leg -> leg.withFittings("elbow90", elbows));
    }

    /** The same design with this much more level run, m, in the leg with most of it on each side. */
    default Design withAddedRunM(double addedM) {
        return self().withLegs(Stretch.levelRun(self().coldLegs(), addedM), Stretch.levelRun(self().hotLegs(), addedM));
    }

    /** The same design with this level run of all hot legs together, m; the leg with most of it gives or takes. */
    default Design withHotRunM(double runM) {
        return self().withLegs(self().coldLegs(), Stretch.toRun("hotLegs.runM", self().hotLegs(), runM));
    }

    /** The same design with this level run of all cold legs together, m; the leg with most of it gives or takes. */
    default Design withColdRunM(double runM) {
        return self().withLegs(Stretch.toRun("coldLegs.runM", self().coldLegs(), runM), self().hotLegs());
    }

    /**
     * The same design with no pipe flatter than this, mm of rise a metre of level run; less than 0 for one that slopes the
     * wrong way. Flatter legs are brought to it; where all are steeper, the flattest one is. The leg with the largest rise of
     * that side gives or takes.
     */
    default Design withLoopSlopeMmPerM(double slopeMmPerM) {
        return Slopes.with(self(), slopeMmPerM);
    }

    /** The same design with this warmth round the first hot leg, the one at the flue, while the fire burns, °C. */
    default Design withRiserAroundC(double aroundC) {
        List<Leg> hot = new ArrayList<>(self().hotLegs());
        hot.set(0, hot.get(0).withAroundC(aroundC));
        return self().withLegs(self().coldLegs(), hot);
    }

    /** The same design with {@link #HOT_LEG} or {@link #COLD_LEG} beside the flue: the first two legs change places. */
    default Design withBesideFlue(String leg) {
        boolean swap = Stretch.coldBesideFlue(self()) != leg.equals(COLD_LEG);
        return swap ? Stretch.placesChanged(self()) : self().checked();
    }

    /** The same design with this many gate valves in the loop, all in the first cold leg and fully open. */
    default Design withLoopValves(int valves) {
        return LoopValves.withCount(self(), valves);
    }

    /** The same design with its gate valves opened as one of {@link LoopValves#OPENINGS}; without one, it gets one. */
    default Design withValveOpening(String opening) {
        return LoopValves.withOpening(self(), opening);
    }

    /** The same design with a joint of the first hot leg {@link LoopValves#CLEAR} or {@link LoopValves#CHOKED}. */
    default Design withChokedJoint(String joint) {
        return LoopValves.withChoked(self(), joint);
    }
}
