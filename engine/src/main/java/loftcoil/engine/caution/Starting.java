package loftcoil.engine.caution;

import java.util.OptionalDouble;
import loftcoil.engine.start.Start;
import loftcoil.engine.start.StartEnd;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasureKind;
import loftcoil.engine.words.MeasuredText;

/** A fire lit after a rest: water that boils before it has set off, swings, runs backward or is slow. */
final class Starting implements CautionRule {

    private static final double MINUTES_AN_HOUR = 60;

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.starts().ifPresent(starts -> starts.failing()
                .ifPresentOrElse(start -> fails(start, findings), () -> starts.doubtful()
                        .ifPresent(start -> doubtful(start, findings))));
    }

    private static void fails(Start start, Findings findings) {
        if (!start.canFlow() && start.firstBoilingMin().isPresent()) {
            findings.cautionAs(
                    CautionKind.START,
                    "tank-hot",
                    "tank",
                    Measure.celsius(start.tankC()),
                    "first",
                    minutes(start.firstBoilingMin()));
        } else if (start.firstBoilingMin().isPresent()) {
            findings.cautionAs(
                    CautionKind.START,
                    "boils",
                    "when",
                    when(start),
                    "tank",
                    Measure.celsius(start.tankC()),
                    "first",
                    minutes(start.firstBoilingMin()));
        } else {
            findings.cautionAs(
                    CautionKind.START, "swings", "when", when(start), "tank", Measure.celsius(start.tankC()));
        }
    }

    private static void doubtful(Start start, Findings findings) {
        String which = start.bad() ? "boils" : start.ends() == StartEnd.BACKWARD ? "backward" : "slow";
        findings.cautionAs(
                CautionKind.START_UNSURE, which, "when", when(start), "tank", Measure.celsius(start.tankC()));
    }

    private static MeasuredText when(Start start) {
        if (start.gapH().isEmpty()) {
            return CautionKind.SENTENCES.say("when.from-cold");
        }
        double hours = start.gapH().getAsDouble();
        return hours < 1
                ? CautionKind.SENTENCES.say(
                        "when.rested-minutes", "rest", new Measure(hours * MINUTES_AN_HOUR, MeasureKind.TIME_MIN))
                : CautionKind.SENTENCES.say("when.rested-hours", "rest", new Measure(hours, MeasureKind.TIME_H));
    }

    private static Measure minutes(OptionalDouble minutes) {
        return new Measure(minutes.orElseThrow(), MeasureKind.TIME_MIN);
    }
}
