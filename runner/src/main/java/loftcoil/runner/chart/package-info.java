/**
 * What a snippet can draw: a {@link loftcoil.runner.chart.ChartOrder} is data, and this is the only room that knows XChart.
 */
@NullMarked
package loftcoil.runner.chart;

import org.jspecify.annotations.NullMarked;
