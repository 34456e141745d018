package loftcoil.runner.page;

import java.util.List;
import java.util.Optional;
import loftcoil.runner.show.MendView;
import loftcoil.runner.show.Slider;
import loftcoil.runner.show.View;

/** A faulty system for page tests: its flow follows the tank, and it refuses a tank at 3 m. */
final class FakeMend {

    private FakeMend() {}

    static MendView view(String moved) {
        String baseM = value(moved, "tank.baseM", "-0.6");
        String valve = value(moved, "vent.valve", "a valve");
        List<MendView.Lever> levers = List.of(
                new MendView.Lever(
                        "tank.baseM",
                        "Tank base above the floor",
                        Optional.of(new Slider("tank.baseM", -1, 3, 0.1, -0.6, "m", "Tank base above the floor", 1, 0)),
                        List.of(),
                        List.of(),
                        "-0.6",
                        baseM,
                        "-0.6 m",
                        baseM + " m"),
                new MendView.Lever(
                        "vent.valve",
                        "Valve in the open vent",
                        Optional.empty(),
                        List.of("none", "a valve"),
                        List.of("none", "a valve"),
                        "a valve",
                        valve,
                        "a valve",
                        valve));
        if (baseM.equals("3")) {
            return new MendView(levers, Optional.empty(), "", List.of(), List.of("tank.baseM: 3; allowed: less"));
        }
        double flow = Math.max(0, Double.parseDouble(baseM));
        return new MendView(
                levers,
                Optional.of(FakeDrawn.loop(baseM)),
                flow > 0 ? "The loop circulates." : "The loop does not circulate.",
                List.of(new View.Figure("flow", flow + " L/min"), new View.Figure("valve", valve)),
                List.of());
    }

    private static String value(String moved, String change, String found) {
        for (String part : List.of(moved.split("; ", -1))) {
            if (part.startsWith(change + " = ")) {
                return part.substring(change.length() + 3);
            }
        }
        return found;
    }
}
