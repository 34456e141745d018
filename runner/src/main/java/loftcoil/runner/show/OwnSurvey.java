package loftcoil.runner.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loftcoil.engine.design.Design;
import loftcoil.engine.fault.RefusedException;
import loftcoil.engine.survey.Survey;
import loftcoil.engine.survey.SurveyJson;
import loftcoil.runner.progress.FolderException;
import loftcoil.runner.progress.ProgressFile;

/**
 * The survey that belongs to the design which is taken up: in memory and in its file. Where none was begun the house is the design as it
 * stands. Somebody may change the file by other means, before this starts or while it runs: what can be read goes on from there, and the
 * survey until then is kept beside it. Whoever holds this sees that one thread at a time uses it.
 */
final class OwnSurvey {

    private final ProgressFile files;
    private final List<String> notices = new ArrayList<>();
    private Optional<Survey> begun;

    /** What the file held when it was last read or written; empty where there was none. */
    private Optional<String> known;

    /** Name of the design that the file says it belongs to; empty where it says none. */
    private String madeFor;

    /** The design as it was last seen: what is decided from then on the house follows. */
    private Optional<Design> seen = Optional.empty();

    private String mark;
    private boolean waits;

    OwnSurvey(ProgressFile files) {
        this.files = files;
        this.known = files.survey();
        this.begun = known.flatMap(this::readOrSetAside);
        this.madeFor = known.flatMap(SurveyJson::madeFor).orElse("");
        this.mark = files.surveyMark();
        known = begun.isPresent() ? known : Optional.empty();
    }

    private Optional<Survey> readOrSetAside(String json) {
        try {
            return Optional.of(SurveyJson.read(json));
        } catch (RefusedException refused) {
            files.setSurveyAside(String.join("; ", refused.lines()));
            return Optional.empty();
        }
    }

    /** The house as far as it is measured; where nothing is, as that design has it. */
    Survey now(Design design) {
        return begun().orElseGet(() -> Survey.of(design));
    }

    /** The survey, as its file has it where that was changed by other means; empty where none was begun. */
    Optional<Survey> begun() {
        if (!files.surveyMark().equals(mark)) {
            look();
        }
        return begun;
    }

    /** Name of the design that the file was made for, as far as it is known; of older files what the house is called there. */
    Optional<String> madeFor() {
        return begun().map(survey -> madeFor.isEmpty() ? survey.sketch().told().name() : madeFor);
    }

    /** What the file holds; empty where there is none. */
    Optional<String> text() {
        return known;
    }

    List<String> notices() {
        return List.copyOf(notices);
    }

    /** Reads the file again, since somebody else may have written it. */
    private void look() {
        try {
            Optional<String> text = files.survey();
            mark = files.surveyMark();
            if (text.equals(known)) {
                return;
            }
            if (text.isEmpty()) {
                known = text;
                waits = begun.isPresent();
                return;
            }
            Optional<Survey> theirs = text.flatMap(this::readOrSetAside);
            known = theirs.isPresent() ? text : Optional.empty();
            mark = files.surveyMark();
            theirs.ifPresentOrElse(this::outside, this::goesOn);
        } catch (FolderException unreadable) {
            // Told where the survey is next saved; until then the one in memory stands.
            waits = true;
        }
    }

    private void outside(Survey theirs) {
        if (begun.filter(theirs::equals).isPresent()) {
            return;
        }
        String kept = begun.map(ours -> " What was measured here until then is kept as "
                        + files.keepSurveyBefore(SurveyJson.write(ours)) + ".")
                .orElse("");
        notices.add("survey.json was changed by other means, and your house goes on from there." + kept);
        begun = Optional.of(theirs);
    }

    private void goesOn() {
        notices.add("Your house goes on as it was measured before.");
        waits = true;
    }

    /** The design of the house, which may have changed since it was last shown here: the house follows what was decided in it. */
    void sees(Design design) {
        Optional<Survey> house = begun();
        if (seen.isPresent() && house.isPresent() && !seen.get().equals(design)) {
            Survey followed = house.get().following(seen.get(), design);
            if (!followed.equals(house.get())) {
                begun = Optional.of(followed);
                waits = true;
            }
        }
        seen = Optional.of(design);
    }

    /** Another state of the same survey; kept with the next save. */
    void becomes(Survey changed) {
        look();
        begun = Optional.of(changed);
        waits = true;
    }

    /** The survey of another design; kept with the next save. The one until now has to be safe elsewhere. */
    void gives(Optional<Survey> other) {
        begun = other;
        seen = Optional.empty();
        waits = true;
    }

    /** Tells what became of the survey. */
    void told(String notice) {
        notices.add(notice);
    }

    /**
     * Keeps what is measured until now beside, under a name with the date.
     *
     * @return that name; empty where nothing was measured
     * @throws FolderException where it cannot be written
     */
    Optional<String> keptBeside() {
        return begun().map(survey -> files.keepSurveyBefore(SurveyJson.write(survey)));
    }

    /**
     * Writes what the folder does not have yet.
     *
     * @param design name of the design it belongs to
     * @throws FolderException where it cannot be written
     */
    void save(String design) {
        if (!waits && (begun.isEmpty() || madeFor.equals(design))) {
            return;
        }
        Optional<String> json = begun.map(survey -> SurveyJson.write(survey, design));
        if (!json.equals(known)) {
            json.ifPresentOrElse(files::keepSurvey, files::dropSurvey);
            known = json;
        }
        madeFor = design;
        mark = files.surveyMark();
        waits = false;
    }
}
