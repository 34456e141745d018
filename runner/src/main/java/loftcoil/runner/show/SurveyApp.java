package loftcoil.runner.show;

import java.util.List;
import java.util.Map;

/**
 * Where the learner's house is measured, station by station. Nothing is refused for not fitting what else stands; each answer is kept at
 * once, and the house stays a sketch until its pipes close. Numbers are taken in any fitting unit.
 */
public interface SurveyApp {

    /** The house as far as it is measured. */
    SurveyView.House house();

    /**
     * Takes answers.
     *
     * @param typed by path of a field, as typed
     * @param guessed true where they were guessed, not measured
     * @throws loftcoil.engine.fault.RefusedException where one cannot be read or does not fit its field; with every fault, and nothing is
     *     taken
     */
    SurveyView.House tell(Map<String, String> typed, boolean guessed);

    /**
     * Takes a run of pipe as it was walked, from its beginning.
     *
     * @param run {@code hot} or {@code cold}
     * @param pieces each with the fields of {@link SurveyView.Piece}, as typed; what is blank is as in the piece before; no pieces to
     *     borrow the run again
     * @throws loftcoil.engine.fault.RefusedException where one cannot be read; with every fault, and nothing is taken
     */
    SurveyView.House walk(String run, List<Map<String, String>> pieces);

    /**
     * Takes the taps, and the pipe that several of them share.
     *
     * @param trunk with the fields of {@link SurveyView.TrunkLine}, as typed; blank length or none where no pipe is shared
     * @param taps each with the fields of {@link SurveyView.TapLine}, as typed
     * @throws loftcoil.engine.fault.RefusedException where one cannot be read; with every fault, and nothing is taken
     */
    SurveyView.House taps(Map<String, String> trunk, List<Map<String, String>> taps);

    /**
     * Takes what people do with hot water, and draws that come to it.
     *
     * @param habits the fields of {@link loftcoil.engine.survey.Habits}, as typed
     * @throws loftcoil.engine.fault.RefusedException where one cannot be read; with every fault, and nothing is taken
     */
    SurveyView.House habits(Map<String, String> habits);

    /**
     * Takes sun and air, and where it says so the place too, from a weather file.
     *
     * @param text the text of the file; see {@link loftcoil.engine.survey.ClimateFile}
     * @throws loftcoil.engine.fault.RefusedException where it cannot be read; nothing is taken
     */
    SurveyView.House climateFile(String text);

    /**
     * Estimates sun and air from the latitude that is told and from what people remember.
     *
     * @param typed {@code winter}, {@code spring}, {@code summer}, {@code autumn} with codes of {@link loftcoil.engine.survey.Sky}, and
     *     {@code warmest} and {@code coldest}, the means of those months, as typed
     * @throws loftcoil.engine.fault.RefusedException where one cannot be read; with every fault, and nothing is taken
     */
    SurveyView.House climateEstimate(Map<String, String> typed);

    /** The house has no panes. */
    SurveyView.House noPanes();

    /**
     * Begins again; what was measured since is dropped.
     *
     * @param from the code of an example dwelling, every value of which is then borrowed; blank for the learner's design as it stands
     * @throws loftcoil.engine.fault.RefusedException where there is no such dwelling
     */
    SurveyView.House afresh(String from);

    /** A refusal, a line for each fault, each by what its field is called. */
    List<String> told(loftcoil.engine.fault.RefusedException refused);

    /**
     * Takes what stands in the design into the house, but for what was told here.
     *
     * @throws loftcoil.engine.fault.RefusedException where what was told here has no place in the design; nothing is taken
     */
    SurveyView.House follow();

    /**
     * Makes the house the learner's design. The design from before stays in the folder under a name with the day's date.
     *
     * @throws loftcoil.engine.fault.RefusedException where the house is a sketch still; with all that is open
     */
    RebuildView.Taken take();
}
