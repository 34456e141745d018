package loftcoil.runner.show;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import loftcoil.engine.design.Changes;
import loftcoil.engine.design.Coded;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Dwelling;
import loftcoil.engine.design.Origin;
import loftcoil.engine.fault.KnownNames;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.survey.Survey;
import loftcoil.engine.survey.SurveyJson;
import loftcoil.runner.progress.DesignShelf;
import loftcoil.runner.progress.TextFile;
import loftcoil.runner.progress.Trail;

/** The learner's designs over a learner's folder. */
final class DesignsDesk implements DesignsApp {

    private static final String NAME = "name";
    private static final String OWN_FILE = "design.json";

    private final LearnerStore store;
    private final TrailWords trails = new TrailWords();

    DesignsDesk(LearnerStore store) {
        this.store = store;
    }

    @Override
    public DesignsView.Shelf shelf() {
        return shelf("");
    }

    private synchronized DesignsView.Shelf shelf(String words) {
        DesignShelf shelf = store.shelf();
        Design own = store.design();
        return new DesignsView.Shelf(
                words,
                new DesignsView.Card("", own.name(), OWN_FILE, TrailWords.brief(own, store.units()), ""),
                shelf.keys().stream()
                        .map(key -> card(key, "designs/", shelf.text(key)))
                        .toList(),
                shelf.removedKeys().stream()
                        .map(key -> card(key, "designs/removed/", shelf.removedText(key)))
                        .toList(),
                Stream.of(Dwelling.values())
                        .map(dwelling -> new SurveyView.Dwelling(dwelling.code(), dwelling.label()))
                        .toList(),
                trails.history(store.trail(), store.units()));
    }

    /** A file on the shelf may have been changed by hand: it is shown with what is wrong with it, and left as it is. */
    private DesignsView.Card card(String key, String folder, Optional<String> json) {
        String file = folder + key + ".json";
        try {
            Design design = DesignJson.read(TextFile.withoutMark(json.orElse("")));
            return new DesignsView.Card(key, design.name(), file, TrailWords.brief(design, store.units()), "");
        } catch (RefusedException refused) {
            return new DesignsView.Card(key, key, file, "", String.join("; ", refused.lines()));
        }
    }

    @Override
    public DesignsView.Shelf start(String dwelling, String name) {
        KnownNames dwellings = new KnownNames("dwelling", Coded.codes(Dwelling.class));
        Design example = Coded.find(Dwelling.class, dwelling)
                .orElseThrow(() -> new RefusedException(List.of(dwellings.unknown("dwelling", dwelling))))
                .design()
                .borrowed();
        return taken(name.isBlank() ? example : named(example, name), Trail.How.BEGUN);
    }

    @Override
    public DesignsView.Shelf open(String json, String from) {
        return taken(DesignJson.read(TextFile.withoutMark(json)), Trail.How.BEGUN);
    }

    private DesignsView.Shelf taken(Design design, Trail.How how) {
        return taken(design, Trail.of(new Trail.Entry("", how, DesignJson.write(design))), Optional.empty());
    }

    private DesignsView.Shelf taken(Design design, Trail trail, Optional<Survey> survey) {
        String before = store.design().name();
        String key = store.takeUp(design, trail, survey);
        return shelf("“" + design.name() + "” is taken up. “" + before + "” lies on the shelf, in designs/" + key
                + ".json.");
    }

    private static Design named(Design design, String name) {
        return Changes.apply(design, NAME, name);
    }

    @Override
    public DesignsView.Shelf copy(String key, String name) {
        Design copy = named(design(key), name);
        Optional<String> survey =
                surveyText(key).map(text -> renamed(text, design(key).name(), copy.name()));
        String put = store.shelf().put(copy.name(), DesignJson.write(copy), Trail.of(begun(copy)), survey);
        return shelf("The copy “" + copy.name() + "” lies on the shelf, in designs/" + put + ".json.");
    }

    private static Trail.Entry begun(Design design) {
        return new Trail.Entry("", Trail.How.BEGUN, DesignJson.write(design));
    }

    @Override
    public DesignsView.Shelf rename(String key, String name) {
        String before = design(key).name();
        Design renamed = named(design(key), name);
        Optional<String> survey = surveyText(key).map(text -> renamed(text, before, renamed.name()));
        if (key.isEmpty()) {
            store.becomes(renamed, Trail.How.NAMED);
            survey.flatMap(DesignsDesk::survey).ifPresent(store::keep);
        } else {
            DesignShelf shelf = store.shelf();
            Trail trail = shelf.trail(key)
                    .orElseGet(() -> Trail.of(begun(renamed)))
                    .with(new Trail.Entry("", Trail.How.NAMED, DesignJson.write(renamed)));
            shelf.put(renamed.name(), DesignJson.write(renamed), trail, survey);
            shelf.drop(key);
        }
        return shelf("It is called “" + renamed.name() + "” now.");
    }

    @Override
    public DesignsView.Shelf takeUp(String key) {
        DesignShelf shelf = store.shelf();
        Design design = design(key);
        Trail trail = shelf.trail(key).map(known -> seen(known, design)).orElseGet(() -> Trail.of(begun(design)));
        Optional<String> text = shelf.survey(key);
        Optional<Survey> survey = text.flatMap(DesignsDesk::survey);
        DesignsView.Shelf before = taken(design, trail, survey);
        String aside = text.isPresent() && survey.isEmpty()
                ? " Its survey cannot be read and is kept as " + store.keepSurveyBefore(text.get()) + "."
                : "";
        shelf.drop(key);
        return shelf(before.words() + aside);
    }

    /** The text of the survey of a design; empty where none was begun. */
    private Optional<String> surveyText(String key) {
        return key.isEmpty() ? store.surveyText() : store.shelf().survey(key);
    }

    private static Optional<Survey> survey(String json) {
        try {
            return Optional.of(SurveyJson.read(TextFile.withoutMark(json)));
        } catch (RefusedException refused) {
            return Optional.empty();
        }
    }

    /** A survey under another name, where it was called as its design; one that cannot be read stays as it is. */
    private static String renamed(String json, String before, String name) {
        return survey(json)
                .map(survey -> SurveyJson.write(
                        survey.sketch().told().name().equals(before)
                                ? survey.with(Map.of(NAME, name), Origin.YOURS)
                                : survey,
                        name))
                .orElse(json);
    }

    /** A file that was changed by hand on the shelf has that as one more change. */
    private static Trail seen(Trail known, Design design) {
        return TrailWords.design(known.state()).filter(design::equals).isPresent()
                ? known
                : known.with(new Trail.Entry("", Trail.How.OUTSIDE, DesignJson.write(design)));
    }

    @Override
    public DesignsView.Shelf remove(String key) {
        need(store.shelf().keys(), key);
        String there = store.shelf().remove(key);
        return shelf("It is removed. It can be brought back, and lies in designs/removed/" + there + ".json.");
    }

    @Override
    public DesignsView.Shelf bringBack(String key) {
        need(store.shelf().removedKeys(), key);
        store.shelf().bringBack(key);
        return shelf("It lies on the shelf again.");
    }

    private static void need(List<String> keys, String key) {
        if (!keys.contains(key)) {
            throw new UnknownNameException("There is no design '" + key + "'.");
        }
    }

    @Override
    public DesignsView.Saved saved(String key) {
        Design design = design(key);
        return new DesignsView.Saved(DesignShelf.key(design.name()) + ".json", DesignJson.write(design));
    }

    @Override
    public synchronized List<RebuildView.Difference> differences(String key) {
        return SideBySide.differences(store.design(), design(key), store.units());
    }

    /** The design of a key; that which is taken up where it is empty. */
    private Design design(String key) {
        if (key.isEmpty()) {
            return store.design();
        }
        return DesignJson.read(TextFile.withoutMark(store.shelf()
                .text(key)
                .orElseThrow(() -> new UnknownNameException("There is no design '" + key + "' on the shelf."))));
    }

    @Override
    public synchronized DesignsView.Shelf undo() {
        Trail trail = store.trail();
        String what = TrailWords.undo(trail, store.units());
        return restored(
                trail, trail.toUndo(), Trail.How.UNDONE, "Taken back: " + what + ".", "Nothing is left to undo.");
    }

    @Override
    public synchronized DesignsView.Shelf redo() {
        Trail trail = store.trail();
        String what = TrailWords.redo(trail, store.units());
        return restored(
                trail, trail.toRedo(), Trail.How.REDONE, "Made again: " + what + ".", "Nothing is left to redo.");
    }

    @Override
    public synchronized DesignsView.Shelf backTo(int number) {
        Trail trail = store.trail();
        int entry = number - trail.folded();
        if (entry < 0 || entry >= trail.entries().size()) {
            throw new UnknownNameException("There is no state " + number + " in the history.");
        }
        String words = "Your design is as it was then. Undo takes this back too.";
        return restored(trail, OptionalInt.of(entry), Trail.How.BACK, words, "");
    }

    private DesignsView.Shelf restored(Trail trail, OptionalInt entry, Trail.How how, String done, String nothing) {
        if (entry.isEmpty()) {
            return shelf(nothing);
        }
        store.becomes(DesignJson.read(trail.entries().get(entry.getAsInt()).state()), how);
        return shelf(done);
    }
}
