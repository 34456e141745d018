package loftcoil.engine.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import loftcoil.engine.gas.Atmosphere;
import loftcoil.engine.loop.Boils;
import loftcoil.engine.loop.Circuit;
import loftcoil.engine.loop.Circulates;
import loftcoil.engine.loop.Circulation;
import loftcoil.engine.loop.SteadyFlow;
import loftcoil.engine.loop.UncertaintyFactors;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.ranking.NaturalRanking;

/** The loops of a spread. Each sample writes only its own places, so threads do not meet. */
final class LoopSamples {

    private enum Found {
        NOT_YET,
        CIRCULATES,
        BOILS,
        STILL
    }

    private static final int FEWEST = 3;

    private final Circuit circuit;
    private final LoopDoubts doubts;
    private final LoopDraws draws;
    private final Found[] found;
    private final double[] flow;
    private final double[] margin;
    private final double[] coilOut;

    LoopSamples(Circuit circuit, LoopDoubts doubts, LoopDraws draws, int count) {
        this.circuit = circuit;
        this.doubts = doubts;
        this.draws = draws;
        this.found = new Found[count];
        Arrays.fill(found, Found.NOT_YET);
        this.flow = new double[count];
        this.margin = new double[count];
        this.coilOut = new double[count];
    }

    void search(int sample) {
        UncertaintyFactors trim = new UncertaintyFactors(
                doubts.roughness().at(draws.share(sample, 1)),
                doubts.fittings().at(draws.share(sample, 2)),
                doubts.heatLoss().at(draws.share(sample, 3)),
                doubts.friction().at(draws.share(sample, 5)),
                doubts.transition().at(draws.share(sample, 6)));
        double heatTimes = doubts.coilHeat().at(draws.share(sample, 0));
        double altitudeM = circuit.setting().altitudeM() + doubts.weatherM() * Doubt.deviations(draws.share(sample, 4));
        double withinM = Math.min(Math.max(altitudeM, Atmosphere.ALTITUDE.low()), Atmosphere.ALTITUDE.high());
        Circuit drawn = circuit.trimmed(trim)
                .withHeatW(circuit.setting().firing().heatW() * heatTimes)
                .withAltitudeM(withinM);
        keep(sample, drawn.search().circulation());
    }

    private void keep(int sample, Circulation circulation) {
        if (circulation instanceof Circulates circulates) {
            SteadyFlow steady = circulates.flow();
            flow[sample] = steady.flowKgPerS();
            margin[sample] = steady.boilMargin().marginK();
            coilOut[sample] = steady.coil().endC();
            found[sample] = Found.CIRCULATES;
        } else {
            found[sample] = circulation instanceof Boils ? Found.BOILS : Found.STILL;
        }
    }

    LoopSpread spread() {
        int[] circulating = those(Found.CIRCULATES);
        int boils = those(Found.BOILS).length;
        int still = those(Found.STILL).length;
        int all = circulating.length + boils + still;
        return new LoopSpread(
                all,
                all == 0 ? 0 : (double) boils / all,
                all == 0 ? 0 : (double) still / all,
                Percentiles.of(picked(flow, circulating)),
                Percentiles.of(picked(margin, circulating)),
                Percentiles.of(picked(coilOut, circulating)),
                influences(circulating));
    }

    private List<Influence> influences(int[] circulating) {
        List<Influence> influences = new ArrayList<>();
        if (circulating.length < FEWEST) {
            return influences;
        }
        // Spearman's correlation is that of the ranks, and ranking is most of its work: flow and margin are ranked
        // once.
        NaturalRanking ranking = new NaturalRanking();
        PearsonsCorrelation correlation = new PearsonsCorrelation();
        double[] flowRanks = ranking.rank(picked(flow, circulating));
        double[] marginRanks = ranking.rank(picked(margin, circulating));
        for (int doubt = 0; doubt < LoopDraws.NAMES.size(); doubt++) {
            int one = doubt;
            double[] shareRanks = ranking.rank(Arrays.stream(circulating)
                    .mapToDouble(sample -> draws.share(sample, one))
                    .toArray());
            influences.add(new Influence(
                    LoopDraws.NAMES.get(doubt),
                    correlation.correlation(shareRanks, flowRanks),
                    correlation.correlation(shareRanks, marginRanks)));
        }
        return influences;
    }

    private int[] those(Found which) {
        return IntStream.range(0, found.length)
                .filter(sample -> found[sample] == which)
                .toArray();
    }

    private static double[] picked(double[] values, int[] samples) {
        return Arrays.stream(samples).mapToDouble(sample -> values[sample]).toArray();
    }
}
