package loftcoil.engine.build;

import java.util.List;
import loftcoil.engine.words.Measure;
import loftcoil.engine.words.MeasuredText;

/**
 * What to expect when the cold system is fired for the first time, the fire burning as the design says from minute 0.
 *
 * @param rows the system at a few minutes
 * @param signs what a hand and a thermometer tell, in the order of time
 * @param wrongPictures what it means when it is not so
 * @param notes what was reckoned, and what was left out
 */
public record FirstHour(List<Row> rows, List<Sign> signs, List<WrongPicture> wrongPictures, List<MeasuredText> notes) {

    /** Keeps copies of the lists. */
    public FirstHour {
        rows = List.copyOf(rows);
        signs = List.copyOf(signs);
        wrongPictures = List.copyOf(wrongPictures);
        notes = List.copyOf(notes);
    }

    /**
     * The system at a minute, with the least, the likeliest and the most heat.
     *
     * @param minute minutes since the fire burns
     * @param low with the least heat
     * @param mid as best known
     * @param high with the most heat; all three alike where the heat is stated
     */
    public record Row(Measure minute, State low, State mid, State high) {}

    /**
     * Temperatures and flow at a moment.
     *
     * @param coilOutC at the coil's outlet
     * @param riserTopC at the tank's return port, end of the hot legs
     * @param coldLegC at the coil's inlet, end of the cold legs
     * @param tankTopC top of the tank
     * @param tankMiddleC middle of the tank
     * @param tankBottomC bottom of the tank
     * @param flowLPerMin flow of the loop
     */
    public record State(
            Measure coilOutC,
            Measure riserTopC,
            Measure coldLegC,
            Measure tankTopC,
            Measure tankMiddleC,
            Measure tankBottomC,
            Measure flowLPerMin) {}

    /**
     * Something to feel or read.
     *
     * @param where place on the pipework
     * @param what what to expect there and when
     */
    public record Sign(MeasuredText where, MeasuredText what) {}

    /**
     * A picture that is not the expected one.
     *
     * @param seen what is felt or seen
     * @param means what it most likely means
     * @param act what to do
     */
    public record WrongPicture(MeasuredText seen, MeasuredText means, MeasuredText act) {}
}
