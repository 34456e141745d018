package loftcoil.engine.caution;

/** Water of an open, warm tank that somebody takes for drinking water. */
final class NotForDrinking implements CautionRule {

    @Override
    public void look(CautionFacts facts, Findings findings) {
        facts.safety()
                .signedNotForDrinking()
                .ifPresentOrElse(
                        signed -> {
                            if (!signed) {
                                findings.caution(CautionKind.DRINK);
                            }
                        },
                        () -> findings.ask("safety.signedNotForDrinking"));
    }
}
