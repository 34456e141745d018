package loftcoil.runner.session;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The imports that every snippet of a lesson may count on. */
public final class Prelude {

    private static final List<String> EVERY_TIME = List.of(
            "java.util.*",
            "java.util.function.*",
            "static java.lang.Math.*",
            "loftcoil.runner.chart.*",
            "static loftcoil.runner.chart.Plot.*",
            "static loftcoil.engine.fault.Given.*");

    private Prelude() {}

    /** Imports of the JDK's collections and mathematics, of the charts and of what takes a value that may be missing; a session opens the engine's rooms as they are named. */
    static String ofEverySession() {
        return imports(EVERY_TIME.stream());
    }

    /** The same and every room of the engine, for a shell that opens none by itself. */
    public static String forLessons(List<Path> classPath) {
        return imports(Stream.concat(
                EVERY_TIME.stream(),
                EngineNames.in(classPath).packages().stream().map(room -> room + ".*")));
    }

    private static String imports(Stream<String> names) {
        return names.map(name -> "import " + name + ";").collect(Collectors.joining("\n", "", "\n"));
    }
}
