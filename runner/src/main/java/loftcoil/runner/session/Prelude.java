package loftcoil.runner.session;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The imports that every snippet of a lesson may count on. */
public final class Prelude {

    private Prelude() {}

    /** Imports of the JDK's collections and mathematics, of every room of the engine, and of the charts. */
    public static String forLessons(List<Path> classPath) {
        Stream<String> engine = EngineNames.in(classPath).packages().stream().map(room -> room + ".*");
        Stream<String> rest = Stream.of(
                "java.util.*",
                "java.util.function.*",
                "static java.lang.Math.*",
                "loftcoil.runner.chart.*",
                "static loftcoil.runner.chart.Plot.*");
        return Stream.concat(rest, engine)
                .map(name -> "import " + name + ";")
                .collect(Collectors.joining("\n", "", "\n"));
    }
}
