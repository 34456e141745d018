package loftcoil.engine.caution;

import loftcoil.engine.design.ColdFeed;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/** The pipe from a feed cistern, through which the water makes up and swells back: nothing may shut it. */
final class FeedFromCistern implements CautionRule {

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.safety().coldFeed().filter(feed -> feed.valve().orElse(false)).ifPresent(feed -> raise(feed, findings));
    }

    private static void raise(ColdFeed feed, Findings findings) {
        MeasuredText dry = CautionKind.FEED_VALVE.part("dry");
        if (feed.boreMm().isPresent()) {
            Measure bore = Measure.millimetres(feed.boreMm().getAsDouble());
            findings.cautionAs(CautionKind.FEED_VALVE, "bore", "bore", bore, "dry", dry);
        } else {
            findings.cautionAs(CautionKind.FEED_VALVE, "unsized", "dry", dry);
        }
    }
}
