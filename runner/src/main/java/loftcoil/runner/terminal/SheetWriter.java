package loftcoil.runner.terminal;

import java.util.function.Function;
import loftcoil.engine.build.BuildSheet;

/** Writes build sheets as files. */
@FunctionalInterface
public interface SheetWriter {

    /**
     * What writes a sheet to a file. Nothing is written yet.
     *
     * @param file name of the file as typed, with its ending, {@code .pdf} or {@code .html}; one that is there is replaced
     * @return writes a sheet, and says in a sentence where it is
     * @throws loftcoil.engine.fault.RefusedException where the file cannot be written or has another ending
     */
    Function<BuildSheet, String> to(String file);
}
