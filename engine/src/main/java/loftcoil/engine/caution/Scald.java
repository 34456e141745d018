package loftcoil.engine.caution;

import java.util.List;
import java.util.Locale;
import loftcoil.engine.design.Tap;

/** Water at a tap that burns before a hand is drawn away. Taps of appliances are left out. */
final class Scald implements CautionRule {

    /** Hottest water at a bath, °C; Approved Document G (England), requirement G3(4). */
    static final double MOST_C = 48;

    /** Hottest water for children, old and ill people, °C; AS/NZS 3500.4, as restated in public. */
    static final double MOST_FRAIL_C = 45;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        double hottestC = facts.hottestDrawC();
        double mostC = facts.safety().childrenOrFrail().orElse(false) ? MOST_FRAIL_C : MOST_C;
        List<Tap> hot = over(facts, hottestC, mostC);
        if (!hot.isEmpty()) {
            raise(facts, hot, mostC, findings);
        } else if (facts.safety().childrenOrFrail().isEmpty()
                && !over(facts, hottestC, MOST_FRAIL_C).isEmpty()) {
            findings.ask(
                    "safety.childrenOrFrail",
                    "Do children, old or ill people use the taps? They are scalded sooner: no more than 45 °C then.");
        }
    }

    private static List<Tap> over(CautionFacts facts, double hottestC, double mostC) {
        return facts.design().taps().stream()
                .filter(tap -> tap.appliance().isEmpty() && atTapC(tap, hottestC) > mostC)
                .toList();
    }

    private static double atTapC(Tap tap, double hottestC) {
        return Math.min(hottestC, tap.mixerC().orElse(Double.POSITIVE_INFINITY));
    }

    private static void raise(CautionFacts facts, List<Tap> taps, double mostC, Findings findings) {
        Skin skin = facts.safety().childrenOrFrail().orElse(false) ? Skin.INFANT : Skin.ADULT;
        double hottestC = facts.hottestDrawC();
        double worstC =
                taps.stream().mapToDouble(tap -> atTapC(tap, hottestC)).max().orElse(hottestC);
        findings.caution(
                "LC-SCALD",
                "Water of up to %.0f °C reaches %s. %s No more than %.0f °C should: a thermostatic mixing valve at the tap"
                        + " holds it there.",
                worstC,
                String.join(
                        ", ", taps.stream().map(tap -> "'" + tap.name() + "'").toList()),
                burns(skin, worstC),
                mostC);
    }

    private static String burns(Skin skin, double waterC) {
        String who = skin == Skin.ADULT ? "an adult's" : "a small child's";
        var seconds = ScaldTime.seconds(skin, waterC);
        if (seconds.isEmpty()) {
            return "It burns in minutes.";
        }
        String about = waterC > ScaldTime.hottestKnownC(skin) ? "less than" : "about";
        double time = seconds.getAsDouble();
        String form = time < 10 ? "It burns %s skin through in %s %.1f s." : "It burns %s skin through in %s %.0f s.";
        return String.format(Locale.ROOT, form, who, about, time);
    }
}
