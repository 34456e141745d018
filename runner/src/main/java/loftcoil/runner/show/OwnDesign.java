package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.design.DesignJson;
import loftcoil.engine.design.Differences;
import loftcoil.engine.design.Example;
import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.progress.FolderException;
import loftcoil.runner.progress.ProgressFile;
import loftcoil.runner.progress.Trail;

/**
 * The design that is taken up: in memory, in its file, and with the trail of how it came to be. Somebody may change the file by other
 * means, before this starts or while it runs: what can be built is taken as one more change; what cannot is kept beside, and the design
 * goes on as it was. Whoever holds this sees that one thread at a time uses it.
 */
final class OwnDesign {

    /** Changes made by other means that a notice tells; the history has all. */
    private static final int MOST_TOLD = 3;

    private final ProgressFile files;
    private final List<String> notices = new ArrayList<>();
    private Design design;
    private Trail trail;

    /** What the file held when it was last read or written; empty where there was none. */
    private Optional<String> known;

    private String mark;
    private boolean waits;

    OwnDesign(ProgressFile files) {
        this.files = files;
        Optional<Trail> old = files.trail();
        this.known = files.design();
        this.mark = files.designMark();
        Optional<Design> last = old.flatMap(trail -> quietly(trail.state()));
        Optional<Design> read = known.flatMap(this::readOrSetAside);
        if (read.isEmpty() && last.isPresent()) {
            notices.add("Your design goes on as it was before.");
            this.waits = true;
        } else if (read.isEmpty() && known.isPresent()) {
            notices.add("Your design starts again from the orchard bothy, an invented example.");
        }
        this.design = last.or(() -> read).orElseGet(OwnDesign::example);
        this.trail = old.filter(trail -> last.isPresent())
                .orElseGet(
                        () -> Trail.of(new Trail.Entry(files.designAt(), Trail.How.BEGUN, DesignJson.write(design))));
        read.filter(theirs -> !theirs.equals(design)).ifPresent(this::outside);
        known = read.isPresent() ? known : Optional.empty();
    }

    /** What a learner starts from: nothing in it is theirs before they decide it. */
    private static Design example() {
        return Example.orchardBothy().borrowed();
    }

    private static Optional<Design> quietly(String json) {
        try {
            return Optional.of(DesignJson.read(json));
        } catch (RefusedException ofAnotherEdition) {
            return Optional.empty();
        }
    }

    private Optional<Design> readOrSetAside(String json) {
        try {
            return Optional.of(DesignJson.read(json));
        } catch (RefusedException refused) {
            String why = String.join("; ", refused.lines());
            // Text that is no JSON at all has one fault, that of the whole.
            if (refused.faults().get(0).path().equals("design")) {
                files.setDesignAside(why);
            } else {
                files.setDesignApart(why);
            }
            return Optional.empty();
        }
    }

    /** The design, as its file has it where that was changed by other means. */
    Design now() {
        if (!files.designMark().equals(mark)) {
            look();
        }
        return design;
    }

    Trail trail() {
        return trail;
    }

    List<String> notices() {
        return List.copyOf(notices);
    }

    /** Reads the file again, since somebody else may have written it. */
    private void look() {
        try {
            Optional<String> text = files.design();
            mark = files.designMark();
            if (text.equals(known)) {
                return;
            }
            Optional<Design> theirs = text.flatMap(this::readOrSetAside);
            known = theirs.isPresent() ? text : Optional.empty();
            mark = files.designMark();
            if (theirs.isPresent()) {
                theirs.filter(read -> !read.equals(design)).ifPresent(this::outside);
            } else {
                notices.add("Your design goes on as it was before.");
                waits = true;
                save();
            }
        } catch (FolderException unreadable) {
            // Told where the design is next saved; until then the one in memory stands.
            waits = true;
        }
    }

    private void outside(Design theirs) {
        List<String> told = Differences.between(design, theirs).stream()
                .map(said -> said.words().metric())
                .toList();
        String more = told.size() > MOST_TOLD ? "; and " + (told.size() - MOST_TOLD) + " more" : "";
        notices.add("design.json was changed by other means, and your design goes on from there: "
                + String.join("; ", told.subList(0, Math.min(MOST_TOLD, told.size()))) + more
                + ". Its history under Designs has both.");
        design = theirs;
        trail = trail.with(new Trail.Entry(files.designAt(), Trail.How.OUTSIDE, DesignJson.write(theirs)));
        waits = true;
    }

    /** Another state of the same design; kept with the next save. */
    void becomes(Design changed, Trail.How how) {
        look();
        design = changed;
        trail = trail.with(new Trail.Entry("", how, DesignJson.write(changed)));
        waits = true;
    }

    /** Another design with a trail of its own; kept with the next save. The one until now has to be safe elsewhere. */
    void gives(Design other, Trail otherTrail) {
        design = other;
        trail = otherTrail;
        waits = true;
    }

    /**
     * Writes what the folder does not have yet, the design before its trail: after a sudden end between the two, the change is found
     * again as one made by other means.
     *
     * @throws FolderException where it cannot be written
     */
    void save() {
        if (!waits) {
            return;
        }
        String json = DesignJson.write(design);
        if (!known.equals(Optional.of(json))) {
            files.keepDesign(json);
            known = Optional.of(json);
        }
        mark = files.designMark();
        trail = trail.kept(files.designAt());
        files.keepTrail(trail);
        waits = false;
    }
}
