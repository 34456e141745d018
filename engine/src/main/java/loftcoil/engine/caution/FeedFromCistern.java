package loftcoil.engine.caution;

/** The pipe from a feed cistern, through which the water makes up and swells back: nothing may shut it. */
final class FeedFromCistern implements CautionRule {

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.safety()
                .coldFeed()
                .filter(feed -> feed.valve().orElse(false))
                .ifPresent(feed -> findings.caution(
                        "LC-FEED-VALVE",
                        "There is a valve in the %.0f mm cold feed between cistern and tank. Shut, the tank is not filled"
                                + " up, the loop runs dry, and the fire boils what is left.",
                        feed.boreMm().orElse(0)));
    }
}
