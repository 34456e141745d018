package loftcoil.engine.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import loftcoil.engine.design.Leg;
import loftcoil.engine.survey.Survey;
import loftcoil.engine.survey.WalkedPipe;

/**
 * Which way the level runs of the legs lead, seen from above, as far as somebody took them with a compass.
 *
 * @param degByLeg degrees clockwise from north, by the name of the leg
 */
public record Headings(Map<String, Double> degByLeg) {

    /** Nobody took any. */
    public static final Headings UNKNOWN = new Headings(Map.of());

    /** Keeps a copy. */
    public Headings {
        degByLeg = Map.copyOf(degByLeg);
    }

    /** Those of a survey. */
    public static Headings of(Survey survey) {
        Map<String, Double> taken = new HashMap<>();
        for (List<WalkedPipe> run : List.of(survey.hot(), survey.cold())) {
            for (WalkedPipe piece : run) {
                piece.headingDeg().ifPresent(heading -> taken.put(piece.name(), heading));
            }
        }
        return new Headings(taken);
    }

    /** That of a leg; empty where nobody took it. */
    public OptionalDouble of(Leg leg) {
        Double heading = degByLeg.get(leg.name());
        return heading == null ? OptionalDouble.empty() : OptionalDouble.of(heading);
    }

    /**
     * How far a leg leads to the right of somebody who looks across the way in which the hot pipe as a whole leads, m; all of its level
     * run where nobody took its heading.
     */
    double acrossM(Leg leg, double viewDeg) {
        OptionalDouble heading = of(leg);
        return heading.isEmpty()
                ? leg.levelRunM()
                : leg.levelRunM() * Math.cos(Math.toRadians(heading.getAsDouble() - viewDeg));
    }

    /** Which way these legs lead as a whole, degrees; 0 where nobody took any of them. */
    double wholeDeg(List<Leg> legs) {
        double north = 0;
        double east = 0;
        for (Leg leg : legs) {
            OptionalDouble heading = of(leg);
            if (heading.isPresent()) {
                north += leg.levelRunM() * Math.cos(Math.toRadians(heading.getAsDouble()));
                east += leg.levelRunM() * Math.sin(Math.toRadians(heading.getAsDouble()));
            }
        }
        return Math.toDegrees(Math.atan2(east, north));
    }
}
