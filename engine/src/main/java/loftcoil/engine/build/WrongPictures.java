package loftcoil.engine.build;

import java.util.ArrayList;
import java.util.List;
import loftcoil.engine.build.FirstHour.WrongPicture;
import loftcoil.engine.caution.Conduct;
import loftcoil.engine.run.FirstFire.Moment;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/** What it means when the first hour does not look as expected, with limits from the march. */
final class WrongPictures {

    private static final Sentences SENTENCES = Sentences.read(WrongPictures.class, "wrong-pictures.properties");
    private static final double TOO_HOT_K = 20;
    private static final String LEAVE = "steam";
    private static final MeasuredText STEAM = Conduct.STEAM.act();

    private final Moment mid;
    private final Moment low;
    private final Moment high;
    private final List<WrongPicture> pictures = new ArrayList<>();

    private WrongPictures(Moment mid, Moment low, Moment high) {
        this.mid = mid;
        this.low = low;
        this.high = high;
    }

    /** From the system at ten minutes. */
    static List<WrongPicture> of(Moment mid, Moment low, Moment high) {
        WrongPictures wrong = new WrongPictures(mid, low, high);
        wrong.flow();
        wrong.heat();
        wrong.tank();
        return wrong.pictures;
    }

    private void flow() {
        add("wrong.water-stands", "limit", Measure.celsius(Math.min(90, high.coilOutC() + TOO_HOT_K)), LEAVE, STEAM);
        add("wrong.half-the-flow", "limit", Measure.kelvins(1.7 * Math.max(rise(high), rise(mid))));
        add("wrong.backward");
        add("wrong.knocks", LEAVE, STEAM);
    }

    private void heat() {
        add("wrong.less-heat", "limit", Measure.kelvins(0.7 * Math.min(rise(low), rise(mid))));
        double lostK = Math.abs(mid.coilOutC() - mid.returnC());
        add("wrong.heat-lost", "limit", Measure.kelvins(Math.max(5, 2 * lostK + 3)));
    }

    private void tank() {
        add("wrong.stirred");
        add("wrong.goes-elsewhere", LEAVE, STEAM);
        add("wrong.level-falls", LEAVE, STEAM);
    }

    private static double rise(Moment moment) {
        return moment.coilOutC() - moment.coilInC();
    }

    private void add(String code, Object... filling) {
        List<MeasuredText> said = SENTENCES.sayEach(code, List.of("seen", "means", "act"), filling);
        pictures.add(new WrongPicture(said.get(0), said.get(1), said.get(2)));
    }
}
