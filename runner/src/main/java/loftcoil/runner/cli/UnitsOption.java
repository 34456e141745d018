package loftcoil.runner.cli;

import loftcoil.engine.fault.RefusedException;
import loftcoil.runner.handout.Units;
import picocli.CommandLine.Option;

/** Whose units a sheet is written in. */
final class UnitsOption {

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            defaultValue = "metric",
            description = "metric or us (default: ${DEFAULT-VALUE})")
    private String units = "";

    Units chosen() {
        return Units.named(units).orElseThrow(() -> RefusedException.of("--units", units, "metric, us"));
    }
}
