/**
 * A house measured with tape and paper: the stations of the walk, straight pieces of pipe that have to close between coil and tank, what
 * people draw by their habits. Read {@link loftcoil.engine.survey.Survey} first.
 */
@NullMarked
package loftcoil.engine.survey;

import org.jspecify.annotations.NullMarked;
