package loftcoil.runner.page;

import java.util.List;
import java.util.Optional;
import loftcoil.runner.show.Slider;
import loftcoil.runner.show.View;

/** A short course for page tests: every kind of step, and awkward text. */
final class FakeCourse {

    static final String FIRST = "01-warm-water";
    static final String SECOND = "02-tank-above-coil";
    static final String THIRD = "03-finding-faults";

    static final String DENSITY =
            """
            double[] temps = steps(0, 100, 1);   // °C: from, to, step

            plot("What a litre of water weighs")
                .across("Temperature", "°C", temps)
                .up("Weight of a litre", "g")
                .curve("water", each(temps, t -> Water.densityKgPerM3(t)))
                .show();
            """;

    static final String HEIGHT =
            """
            double[] heights = steps(0, tankBaseM, 0.05);
            plot("Flow against tank height").across("Tank base", "m", heights).show();
            tankBaseM * 0.8
            """;

    private FakeCourse() {}

    static List<View.Step> first() {
        return List.of(
                new View.Prose(
                        "p1",
                        """
                        # Warm water is lighter

                        There is no pump in the system you are going to design. A wood fire heats water in a copper pipe, the
                        water climbs to a tank under the roof, and cooler water comes down to take its place.

                        What moves it? One thing only: **warm water is lighter than cold water**. See also
                        [the next lesson](02-tank-above-coil.md) and <b>this is not a tag</b>.

                        ## Weigh a litre
                        """),
                question(
                        "litre",
                        "predict",
                        "quantity",
                        "how much lighter is a hot litre?",
                        "By how many grams is a litre at 60 °C lighter than one at 10 °C?",
                        "g",
                        List.of(),
                        "",
                        ""),
                new View.Snippet("density-curve", DENSITY, DENSITY, false, Optional.empty()),
                new View.Caution("c1", true, "Never light a fire under a loop that may be frozen. The coil bursts."),
                new View.Prose(
                        "p2",
                        """
                        ## From weight to push

                        > (cold density − hot density) × gravity × height

                        | water | density, kg/m³ |
                        |---|---:|
                        | 40 °C | 992.2 |
                        | 60 °C | 983.2 |
                        """),
                question(
                        "push",
                        "question",
                        "quantity",
                        "the push of two legs",
                        "Two legs are 2.0 m tall, one at 40 °C, one at 60 °C. How many pascals?",
                        "Pa",
                        List.of(),
                        "",
                        ""),
                question(
                        "way",
                        "question",
                        "choice",
                        "which way does it go",
                        "The hot leg is on the right. Which way does the water go?",
                        "",
                        List.of("Up on the right", "Up on the left", "Nowhere"),
                        "",
                        ""),
                question(
                        "own",
                        "question",
                        "java",
                        "write the drive",
                        "Write the drive of a 3 m loop.",
                        "Pa",
                        List.of(),
                        "9.80665 * 3",
                        ""));
    }

    static List<View.Step> third() {
        return List.of(
                new View.Prose("p1", "Each of these systems has one fault."),
                question(
                        "low-tank",
                        "question",
                        "mend",
                        "a cold tank",
                        "The coil knocks. The tank stays *cold*.",
                        "",
                        List.of(),
                        "",
                        ""));
    }

    static List<View.Step> second(String source, String tankBaseM) {
        return List.of(
                new View.Prose("p1", "Start with your loop as it stands now."),
                new View.Drawing("d1", "Your loop to scale", FakeDrawn.loop(tankBaseM)),
                new View.Snippet(
                        "flow-against-height",
                        source,
                        HEIGHT,
                        false,
                        Optional.of(
                                new Slider("tankBaseM", -0.5, 3.5, 0.05, 2.2, "m", "Tank base above the floor", 1, 0))),
                new View.Caution("c1", false, "Hot pipes burn. Keep them out of reach or lag them."),
                question(
                        "tank-height",
                        "decide",
                        "decision",
                        "where will your tank stand?",
                        "Choose the height of the tank's base above the floor.",
                        "m",
                        List.of(),
                        "",
                        tankBaseM + " m"));
    }

    private static View.Question question(
            String id,
            String asked,
            String form,
            String label,
            String text,
            String unit,
            List<String> options,
            String starter,
            String current) {
        return new View.Question(
                id, asked, form, label, text, unit, options, starter, current, Optional.empty(), List.of());
    }
}
