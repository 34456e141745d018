package loftcoil.engine.caution;

import java.util.List;

/** All rules, asked one after the other. */
public final class Cautions {

    private static final List<CautionRule> RULES = List.of(
            new Boiling(),
            new StandingStill(),
            new Starting(),
            new AirInLoop(),
            new ValveInLoop(),
            new CoilInFlame(),
            new OpenVent(),
            new FeedFromCistern(),
            new BackSiphonage(),
            new NotForDrinking(),
            new Scald(),
            new Legionella(),
            new Frost(),
            new EmptyHouse(),
            new DryLoop(),
            new HardWater(),
            new MixedMetals(),
            new PlasticNearFire(),
            new LaggingLimit(),
            new HotPipe(),
            new RoofLoad(),
            new Wheeled(),
            new FlueDistance(),
            new FireAir(),
            new Creosote(),
            new InletHead(),
            new Overflow(),
            new PanesPastTank(),
            new HotGlass(),
            new DullWeekShort());

    private Cautions() {}

    /**
     * What can hurt somebody, and what would have to be known to tell.
     *
     * @param facts what is known of a design
     */
    public static CautionReport of(CautionFacts facts) {
        Findings findings = new Findings();
        RULES.forEach(rule -> rule.look(facts, findings));
        return findings.report();
    }
}
