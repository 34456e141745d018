package loftcoil.engine.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Tank;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/**
 * Where the pipes end seen from above, once round from the coil up to the tank and back. Ports of a tank and ends of a coil may lie apart,
 * so that a plan that misses by no more than these is as good as closed; nothing is computed by it.
 *
 * @param missM how far from where they set out the pipes end, m
 * @param beyondM of that, how far beyond it on the way of the last piece along, m; less than 0 where they end short of it
 * @param leftM of that, how far to the left of that way, m; less than 0 to the right
 * @param tapeM what a tape may miss by over pipes so long, m
 * @param apartM how far apart ports of this tank may lie, m
 */
public record PlanClosing(double missM, double beyondM, double leftM, double tapeM, double apartM) {

    /** Parts of a miss smaller than this are not told, m. */
    private static final double TOLD_M = 0.01;

    private static final double LEAST_M = 0.1;
    private static final double L_PER_M3 = 1000;

    /** Closes the plan; empty where a run is not walked, or a piece along has no direction. */
    static Optional<PlanClosing> of(List<WalkedPipe> hot, List<WalkedPipe> cold, Tank tank) {
        List<WalkedPipe> round = new ArrayList<>(hot);
        round.addAll(cold);
        List<WalkedPipe> along =
                round.stream().filter(pipe -> pipe.way() == Way.ALONG).toList();
        if (hot.isEmpty()
                || cold.isEmpty()
                || along.isEmpty()
                || along.stream().anyMatch(pipe -> pipe.headingDeg().isEmpty())) {
            return Optional.empty();
        }
        double north = 0;
        double east = 0;
        for (WalkedPipe pipe : along) {
            double heading = heading(pipe);
            north += pipe.levelRunM() * Math.cos(heading);
            east += pipe.levelRunM() * Math.sin(heading);
        }
        double last = heading(along.get(along.size() - 1));
        double lengthM = round.stream().mapToDouble(WalkedPipe::lengthM).sum();
        return Optional.of(new PlanClosing(
                Math.hypot(north, east),
                north * Math.cos(last) + east * Math.sin(last),
                north * Math.sin(last) - east * Math.cos(last),
                Closing.tapeM(lengthM),
                widestM(tank)));
    }

    /** The widest of a tank seen from above, m, of one that is still being told too. */
    private static double widestM(Tank tank) {
        double m3 = tank.volumeL() / L_PER_M3;
        double heightM = Math.max(LEAST_M, tank.heightM());
        boolean lies = tank.kind().filter(Tank.Kind.LYING_CYLINDER::equals).isPresent();
        double across = lies ? m3 / (Math.PI / 4 * heightM * heightM) : Math.sqrt(m3 / heightM * 4 / Math.PI);
        return Math.max(across, tank.lengthM().orElse(0));
    }

    private static double heading(WalkedPipe pipe) {
        return Math.toRadians(pipe.headingDeg().orElse(0));
    }

    /** Whether it misses by no more than tape, ports and coil explain. */
    public boolean closes() {
        return missM <= tapeM + apartM;
    }

    /** What was found, in a sentence or two. */
    public MeasuredText words() {
        if (missM <= tapeM) {
            return SurveyWords.say("plan.closes");
        }
        return SurveyWords.say(closes() ? "plan.near" : "plan.open", "where", where());
    }

    private MeasuredText where() {
        boolean aside = Math.abs(leftM) >= TOLD_M;
        boolean ahead = Math.abs(beyondM) >= TOLD_M;
        String side = leftM > 0 ? "plan.left" : "plan.right";
        String way = beyondM > 0 ? "plan.beyond" : "plan.short";
        Measure asideM = Measure.taped(Math.abs(leftM));
        Measure aheadM = Measure.taped(Math.abs(beyondM));
        if (aside && ahead) {
            return SurveyWords.say(
                    "plan.both",
                    "side",
                    SurveyWords.say(side, "gap", asideM),
                    "way",
                    SurveyWords.say(way, "gap", aheadM));
        }
        return aside ? SurveyWords.say(side, "gap", asideM) : SurveyWords.say(way, "gap", aheadM);
    }
}
