package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loftcoil.engine.build.Fixings.CoilRoom;
import loftcoil.engine.build.Fixings.Hold;
import loftcoil.engine.build.Fixings.Turn;
import loftcoil.engine.design.Coil;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.Leg;
import loftcoil.engine.design.Tap;
import loftcoil.engine.pipe.Tube;
import loftcoil.engine.pipe.TubeTable;
import loftcoil.engine.sheet.Headings;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/** Works out clips, growth, bends and the room of the coil. */
final class FixingsMaker {

    private static final Sentences SENTENCES = Sentences.read(FixingsMaker.class, "fixings.properties");

    private static final double MM_PER_M = 1000;

    /** Water and pipe when they are built, °C; as cold as the coldest mains, to the safe side. */
    private static final double BUILT_C = 10;

    /** What a loop comes to that boils, °C; sea level, to the safe side. */
    private static final double BOILS_C = 100;

    /** A leg that climbs more than this sine of its length counts as upright: more up than along. */
    private static final double UPRIGHT_SINE = Math.sqrt(0.5);

    /** Shorter than this a pipe needs one clip, m; common practice, no source. */
    private static final double ONE_CLIP_M = 0.5;

    /** A leg with less level run than this stands upright, whichever way it is turned, m. */
    private static final double NO_RUN_M = 0.01;

    private final Design design;
    private final List<Hold> holds = new ArrayList<>();
    private final List<Turn> turns = new ArrayList<>();

    private final Headings headings;

    private FixingsMaker(Design design, Headings headings) {
        this.design = design;
        this.headings = headings;
    }

    static Fixings of(Design design, Headings headings) {
        FixingsMaker maker = new FixingsMaker(design, headings);
        maker.legs("C", design.coldLegs());
        maker.legs("H", design.hotLegs());
        maker.taps();
        List<MeasuredText> rules = List.of(
                SENTENCES.say("fixings.order"),
                SENTENCES.say("fixings.clip"),
                SENTENCES.say("fixings.growth", "cold", Measure.celsius(BUILT_C), "hot", Measure.celsius(BOILS_C)),
                SENTENCES.say("fixings.wall"),
                SENTENCES.say("fixings.turns"));
        return new Fixings(maker.holds, maker.turns, coil(design.coil()), rules);
    }

    private void legs(String letter, List<Leg> legs) {
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            boolean upright = Math.abs(leg.riseM()) > UPRIGHT_SINE * leg.lengthM();
            hold(letter + (i + 1), leg.name(), leg.tube(), leg.lengthM(), upright);
            if (i > 0) {
                turns.add(turn(letter + i, legs.get(i - 1), letter + (i + 1), leg, headings));
            }
        }
    }

    private void taps() {
        design.trunk()
                .ifPresent(trunk -> hold(
                        "T0",
                        CutMaker.SENTENCES.say("cuts.trunk").metric(),
                        trunk.tube(),
                        trunk.lengthM(),
                        /* upright= */ false));
        int number = 1;
        for (Tap tap : design.taps()) {
            hold("T" + number, tap.name(), tap.tube(), tap.lengthM(), /* upright= */ false);
            number++;
        }
    }

    private void hold(String mark, String name, String tubeName, double lengthM, boolean upright) {
        Tube tube = TubeTable.require("tube", tubeName);
        double apartM = ClipSpacing.metres(tube, upright);
        int clips = lengthM < ONE_CLIP_M ? 1 : (int) Math.ceil(lengthM / apartM - 1e-9) + 1;
        double growthMm = lengthM * MM_PER_M * tube.metal().growthPerK() * (BOILS_C - BUILT_C);
        holds.add(new Hold(
                mark,
                name,
                tubeName,
                upright,
                clips,
                Measure.metres(apartM).finer(-1),
                Measure.millimetres(growthMm).finer(-1)));
    }

    static Turn turn(String from, Leg first, String to, Leg second, Headings headings) {
        boolean upright = first.levelRunM() < NO_RUN_M || second.levelRunM() < NO_RUN_M;
        Optional<Double> turned = upright ? Optional.of(0.0) : turnedDeg(headings.of(first), headings.of(second));
        return new Turn(
                from,
                to,
                degrees(bendDeg(first, second, 0)),
                degrees(bendDeg(first, second, 90)),
                turnedFor(first, second, 90).map(FixingsMaker::degrees),
                turnedFor(first, second, 45).map(FixingsMaker::degrees),
                turned.map(deg -> degrees(bendDeg(first, second, deg))),
                upright ? Optional.empty() : turned.map(FixingsMaker::degrees));
    }

    /** How far the second leg turns from the first seen from above, to the right; empty where one of both has no compass direction. */
    private static Optional<Double> turnedDeg(OptionalDouble from, OptionalDouble to) {
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(((to.getAsDouble() - from.getAsDouble()) % 360 + 540) % 360 - 180);
    }

    /**
     * Angle between the ways of two legs, degrees, the second turned so far from the first seen from above: the scalar product of
     * their directions.
     */
    private static double bendDeg(Leg first, Leg second, double turnedDeg) {
        double level = first.levelRunM() * second.levelRunM() * Math.cos(Math.toRadians(turnedDeg));
        double cosine = (level + first.riseM() * second.riseM()) / (first.lengthM() * second.lengthM());
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine))));
    }

    /** How far the second leg is turned from the first, seen from above, so that a bend of that angle joins them. */
    private static Optional<Double> turnedFor(Leg first, Leg second, double bendDeg) {
        double level = first.levelRunM() * second.levelRunM();
        if (first.levelRunM() < NO_RUN_M || second.levelRunM() < NO_RUN_M) {
            return Optional.empty();
        }
        double wanted = Math.cos(Math.toRadians(bendDeg)) * first.lengthM() * second.lengthM();
        double cosine = (wanted - first.riseM() * second.riseM()) / level;
        return Math.abs(cosine) > 1 ? Optional.empty() : Optional.of(Math.toDegrees(Math.acos(cosine)));
    }

    private static CoilRoom coil(Coil coil) {
        double tubeM = TubeTable.require("coil.tube", coil.tube()).outerM();
        double highM = Math.abs(coil.riseM()) + tubeM;
        if (coil.windingMm().isPresent()) {
            double acrossM = coil.windingMm().getAsDouble() / MM_PER_M + tubeM;
            return room(acrossM, acrossM, highM, SENTENCES.say("fixings.coil.wound"));
        }
        int square = count(coil, "elbow90") + count(coil, "bend90");
        int half = count(coil, "elbow45");
        int corners = square + half;
        double pieceM = coil.lengthM() / (corners + 1);
        double riseM = coil.riseM() / (corners + 1);
        double sideM = Math.sqrt(Math.max(0, pieceM * pieceM - riseM * riseM));
        if (corners == 0) {
            return room(sideM + tubeM, tubeM, highM, SENTENCES.say("fixings.coil.straight"));
        }
        // A figure of eight sides is as wide as a side and the level parts of its two neighbours.
        double acrossM = square > 0 ? sideM : sideM * (1 + 2 * UPRIGHT_SINE);
        MeasuredText shape = SENTENCES.say(
                square > 0 ? "fixings.coil.bent" : "fixings.coil.eight",
                "corners",
                Measure.count(corners),
                "piece",
                Measure.millimetres(MM_PER_M * pieceM));
        return room(acrossM + tubeM, acrossM + tubeM, highM, shape);
    }

    private static int count(Coil coil, String key) {
        return coil.fittings().getOrDefault(key, 0);
    }

    private static CoilRoom room(double wideM, double deepM, double highM, MeasuredText shape) {
        return new CoilRoom(
                Measure.metres(wideM),
                Measure.metres(deepM),
                Measure.metres(highM),
                MeasuredText.of(shape, " ", SENTENCES.say("fixings.coil.try")));
    }

    private static Measure degrees(double angleDeg) {
        return new Measure(angleDeg, MeasureKind.ANGLE_DEG);
    }
}
