package loftcoil.runner.show;

import java.util.List;
import java.util.Map;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Differences;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.study.Comparison;
import loftcoil.engine.study.NamedValue;
import loftcoil.engine.study.ProgressListener;
import loftcoil.engine.study.Rebuild;
import loftcoil.runner.progress.TextFile;
import loftcoil.runner.progress.Trail;

/** The rebuild over a learner's folder. */
final class RebuildDesk implements RebuildApp {

    private final LearnerStore store;
    private volatile March march = new March();

    RebuildDesk(LearnerStore store) {
        this.store = store;
    }

    @Override
    public RebuildView.Start own() {
        return start(store.design(), "your design as it stands");
    }

    @Override
    public RebuildView.Start kept(String name) {
        String json = store.keptDesign(name)
                .orElseThrow(() -> new UnknownNameException("Your folder keeps no design named '" + name + "'."));
        return from(json, name);
    }

    @Override
    public RebuildView.Start from(String json, String from) {
        return start(DesignJson.read(TextFile.withoutMark(json)), from);
    }

    private RebuildView.Start start(Design design, String from) {
        return new RebuildView.Start(
                design.name(), from, DesignJson.write(design), Levers.of(design, shown()), store.keptDesigns());
    }

    @Override
    public RebuildView.SideBySide compare(String oldJson, Map<String, String> changes, boolean year) {
        return shown().telling(() -> compared(oldJson, changes, year));
    }

    private Shown shown() {
        return new Shown(store.units());
    }

    private RebuildView.SideBySide compared(String oldJson, Map<String, String> changes, boolean year) {
        Design old = DesignJson.read(oldJson);
        List<NamedValue> named = Levers.changed(old, changes, shown());
        Design rebuilt = Rebuild.applied(old, named);
        if (!year) {
            return compared(old, named, rebuilt, "");
        }
        try {
            Rebuild rebuild = marched(old, named);
            Comparison together = rebuild.together().comparison().orElseGet(() -> Comparison.whole(old, rebuilt));
            return SideBySide.of(together, rebuild.effects(), store.units());
        } catch (RefusedException cannotBe) {
            // Both fit together; it is a year that cannot be, such as that of the other half of the earth.
            return compared(old, named, rebuilt, SideBySide.noYear(old, rebuilt, store.units()));
        }
    }

    private RebuildView.SideBySide compared(Design old, List<NamedValue> named, Design rebuilt, String noYear) {
        Rebuild rebuild = Rebuild.of(old, named);
        Comparison together = rebuild.together().comparison().orElseGet(() -> Comparison.of(old, rebuilt));
        return SideBySide.of(together, rebuild.effects(), noYear, store.units());
    }

    /** With a year for each change; what is asked for later ends what was asked before. */
    private Rebuild marched(Design old, List<NamedValue> named) {
        March mine = new March();
        march.stop();
        march = mine;
        return Rebuild.whole(old, named, mine).result();
    }

    @Override
    public RebuildView.Far far() {
        return march.far();
    }

    @Override
    public void stop() {
        march.stop();
    }

    /** How far the years are that are being marched, and whether to stop. */
    private static final class March implements ProgressListener {

        private volatile RebuildView.Far far = new RebuildView.Far(0, 0);
        private volatile boolean stopped;

        @Override
        public void done(int done, int of) {
            far = new RebuildView.Far(done, of);
        }

        @Override
        public boolean cancelled() {
            return stopped;
        }

        RebuildView.Far far() {
            return far;
        }

        void stop() {
            stopped = true;
        }
    }

    @Override
    public RebuildView.Taken takeOver(String oldJson, Map<String, String> changes) {
        Design old = DesignJson.read(oldJson);
        List<NamedValue> named = shown().telling(() -> Levers.changed(old, changes, shown()));
        Design rebuilt = shown().telling(() -> Rebuild.applied(old, named));
        String kept = store.replace(rebuilt, Trail.How.REBUILT);
        return new RebuildView.Taken(
                "It is your design now. The one from before is kept in your folder as " + kept + "."
                        + moved(old, rebuilt, named),
                kept);
    }

    /** Nothing is stretched without a word. */
    private String moved(Design old, Design rebuilt, List<NamedValue> changes) {
        List<String> moved = Differences.moved(
                        old, rebuilt, changes.stream().map(NamedValue::name).toList())
                .stream()
                .map(said -> store.units().words(said.words()))
                .toList();
        return moved.isEmpty() ? "" : " With it moved: " + String.join("; ", moved) + ".";
    }
}
