package loftcoil.runner.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Starts Loftcoil as a learner does: by the starter of the folder to carry where that has been made, else from the classes. */
public final class Starter {

    /** Where the profile "carry" lays the folder. */
    private static final Path CARRY = Path.of("target", "carry");

    private Starter() {}

    static Optional<Path> carried() throws IOException {
        if (!Files.isDirectory(CARRY)) {
            return Optional.empty();
        }
        try (Stream<Path> all = Files.list(CARRY)) {
            return all.map(folder -> folder.resolve("loftcoil"))
                    .filter(Files::isExecutable)
                    .findFirst()
                    .map(Path::toAbsolutePath);
        }
    }

    /** A command to start Loftcoil by, such as one that gives it a quarter of a core; none where nothing is said. */
    private static List<String> within() {
        String command = System.getenv("LOFTCOIL_BENCH_WITHIN");
        return command == null || command.isBlank() ? List.of() : List.of(command.strip().split("\\s+"));
    }

    public static Process start(Path folder) throws IOException {
        List<String> command = new ArrayList<>(within());
        Optional<Path> starter = carried();
        if (starter.isPresent()) {
            command.add(starter.get().toString());
        } else {
            command.addAll(List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-cp",
                    System.getProperty("java.class.path"),
                    "loftcoil.runner.cli.Loftcoil"));
        }
        command.addAll(List.of("--no-browser", "--seed", "1", "--folder", folder.toString()));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    public static URI address(Process loftcoil) throws IOException {
        BufferedReader lines =
                new BufferedReader(new InputStreamReader(loftcoil.getInputStream(), StandardCharsets.UTF_8));
        String line = lines.readLine();
        if (line == null) {
            throw new IOException("Loftcoil ended before it said where it is");
        }
        return URI.create(line.substring(line.indexOf("http")));
    }

    /** Ends what was started. */
    public static void end(Process loftcoil) throws InterruptedException {
        loftcoil.destroy();
        loftcoil.waitFor();
    }
}
