/**
 * Properties of liquid water near atmospheric pressure and its boiling line. Uses the fault room only. The equations are
 * those of IAPWS SR6-08(2011) for the liquid and of region 4 of IAPWS R7-97(2012), known as IF97, for boiling. Read
 * {@link loftcoil.engine.water.Water} first.
 */
@NullMarked
package loftcoil.engine.water;

import org.jspecify.annotations.NullMarked;
