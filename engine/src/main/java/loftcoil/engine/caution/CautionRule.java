package loftcoil.engine.caution;

/** One danger: looks at what is known of a design and says what it finds. */
@FunctionalInterface
interface CautionRule {

    /**
     * Looks for the danger.
     *
     * @param facts what is known; where a figure is not known the rule stays silent
     * @param findings takes cautions and questions
     */
    void look(CautionFacts facts, Findings findings);
}
