package loftcoil.engine.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import loftcoil.engine.design.Tap;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/** Water at a tap that burns before a hand is drawn away. Taps of appliances are left out. */
final class Scald implements CautionRule {

    /** Hottest water at a bath, °C; Approved Document G (England), requirement G3(4). */
    static final double MOST_C = 48;

    /** Hottest water for children, old and ill people, °C; AS/NZS 3500.4, as restated in public. */
    static final double MOST_FRAIL_C = 45;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        double hottestC = hottestC(facts);
        double mostC = facts.safety().childrenOrFrail().orElse(false) ? MOST_FRAIL_C : MOST_C;
        List<Tap> hot = over(facts, hottestC, mostC);
        if (!hot.isEmpty()) {
            raise(facts, hot, hottestC, mostC, findings);
        } else if (facts.safety().childrenOrFrail().isEmpty()
                && !over(facts, hottestC, MOST_FRAIL_C).isEmpty()) {
            findings.ask("safety.childrenOrFrail", "most", Measure.celsius(MOST_FRAIL_C));
        }
    }

    /** With what layers blur, but no hotter than the tank can be. */
    private static double hottestC(CautionFacts facts) {
        double drawC = facts.hottestDrawC();
        double boilingC = facts.circuit().boilingC(facts.design().tank().waterlineLevelM());
        return facts.year().isEmpty() ? drawC : Math.max(drawC, Math.min(drawC + YearFacts.BLUR_K, boilingC));
    }

    private static List<Tap> over(CautionFacts facts, double hottestC, double mostC) {
        return facts.design().taps().stream()
                .filter(tap -> tap.appliance().isEmpty() && atTapC(tap, hottestC) > mostC)
                .toList();
    }

    private static double atTapC(Tap tap, double hottestC) {
        return Math.min(hottestC, tap.mixerC().orElse(Double.POSITIVE_INFINITY));
    }

    private static void raise(CautionFacts facts, List<Tap> taps, double hottestC, double mostC, Findings findings) {
        Skin skin = facts.safety().childrenOrFrail().orElse(false) ? Skin.INFANT : Skin.ADULT;
        double worstC =
                taps.stream().mapToDouble(tap -> atTapC(tap, hottestC)).max().orElse(hottestC);
        String names = taps.stream().map(tap -> "'" + tap.name() + "'").collect(Collectors.joining(", "));
        List<Object> filling = new ArrayList<>(List.of(
                "hottest",
                Measure.celsius(worstC),
                "taps",
                names,
                "burns",
                burns(skin, worstC),
                "most",
                Measure.celsius(mostC)));
        facts.hotterClear().ifPresent(week -> filling.addAll(ClearWeek.filling(week)));
        String which = facts.hotterClear().isPresent() ? "clear" : "taps";
        findings.cautionAs(CautionKind.SCALD, which, filling.toArray());
    }

    private static MeasuredText burns(Skin skin, double waterC) {
        OptionalDouble seconds = ScaldTime.seconds(skin, waterC);
        if (seconds.isEmpty()) {
            return CautionKind.SCALD.part("in-minutes");
        }
        return CautionKind.SCALD.part(
                waterC > ScaldTime.hottestKnownC(skin) ? "less-than" : "about",
                "whose",
                CautionKind.SCALD.part(skin == Skin.ADULT ? "adult" : "infant"),
                "time",
                new Measure(seconds.getAsDouble(), MeasureKind.TIME_S));
    }
}
