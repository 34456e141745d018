package loftcoil.runner.progress;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The designs that a learner has besides the one that is taken up: a file each in {@code designs} below the learner's folder, its trail
 * beside it, and the survey where one was begun. What is removed goes to {@code designs/removed} and can be brought back. A key is the name of a file without its ending:
 * small letters, digits and hyphens, so that any system takes it.
 */
public final class DesignShelf {

    private static final String JSON = ".json";
    private static final String TRAIL = ".trail.json";
    private static final String SURVEY = ".survey.json";

    /** All that a design may have, its own file last: once that is there it is listed. */
    private static final List<String> ALL = List.of(SURVEY, TRAIL, JSON);

    private static final int LONGEST_KEY = 60;
    private static final Pattern KEY = Pattern.compile("[a-z0-9][a-z0-9-]{0,79}");

    /** Names that some systems keep for devices. */
    private static final Pattern DEVICE = Pattern.compile("(con|prn|aux|nul|com\\d|lpt\\d)");

    private final Path folder;
    private final Path removed;

    DesignShelf(Path learner) {
        this.folder = learner.resolve("designs");
        this.removed = folder.resolve("removed");
    }

    /** Keys of the designs on the shelf, in the order of the alphabet. */
    public List<String> keys() {
        return keys(folder);
    }

    /** Keys of the designs that were removed. */
    public List<String> removedKeys() {
        return keys(removed);
    }

    private static List<String> keys(Path in) {
        if (!Files.isDirectory(in)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(in)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(JSON))
                    .map(name -> name.substring(0, name.length() - JSON.length()))
                    .filter(key -> KEY.matcher(key).matches())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw trouble(in, "cannot be listed", e);
        }
    }

    /** The text of a design on the shelf; empty where there is none of that key. */
    public Optional<String> text(String key) {
        return text(folder, key, JSON);
    }

    /** The text of a design that was removed; empty where there is none of that key. */
    public Optional<String> removedText(String key) {
        return text(removed, key, JSON);
    }

    /** The trail of a design on the shelf; empty where it has none. */
    public Optional<Trail> trail(String key) {
        return text(folder, key, TRAIL).flatMap(TrailJson::read);
    }

    /** The text of the survey of a design on the shelf; empty where none was begun. */
    public Optional<String> survey(String key) {
        return text(folder, key, SURVEY);
    }

    /** Gives a design on the shelf a survey. */
    public void putSurvey(String key, String json) {
        new SafeFile(folder.resolve(key + SURVEY)).write(json.getBytes(StandardCharsets.UTF_8));
    }

    private static Optional<String> text(Path in, String key, String ending) {
        Path file = in.resolve(key + ending);
        if (!KEY.matcher(key).matches() || !Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(TextFile.read(file, SafeFile.LONGEST_BYTES));
        } catch (IOException e) {
            throw trouble(file, "cannot be read", e);
        }
    }

    /**
     * Puts a design on the shelf, survey and trail first, so that it is whole once it is listed.
     *
     * @param name what it is called
     * @param json its text
     * @param trail how it came to be; what has no time yet gets that of the file
     * @param survey the text of its survey; empty where none was begun
     * @return its key
     */
    public String put(String name, String json, Trail trail, Optional<String> survey) {
        makeSure(folder);
        String key = free(folder, key(name));
        survey.ifPresent(text -> putSurvey(key, text));
        SafeFile beside = new SafeFile(folder.resolve(key + TRAIL));
        beside.write(TrailJson.write(trail));
        beside.write(TrailJson.write(trail.kept(beside.moment())));
        new SafeFile(folder.resolve(key + JSON)).write(json.getBytes(StandardCharsets.UTF_8));
        return key;
    }

    /** Takes a design off the shelf for good: it is elsewhere by now. */
    public void drop(String key) {
        try {
            Files.deleteIfExists(folder.resolve(key + JSON));
            Files.deleteIfExists(folder.resolve(key + TRAIL));
            Files.deleteIfExists(folder.resolve(key + SURVEY));
        } catch (IOException e) {
            throw trouble(folder.resolve(key + JSON), "cannot be taken off the shelf", e);
        }
    }

    /** Moves a design to those that were removed; its key there. */
    public String remove(String key) {
        return move(folder, key, removed);
    }

    /** Moves a design that was removed back on to the shelf; its key there. */
    public String bringBack(String key) {
        return move(removed, key, folder);
    }

    private static String move(Path from, String key, Path to) {
        makeSure(to);
        String free = free(to, key);
        try {
            for (String beside : List.of(SURVEY, TRAIL)) {
                Path file = from.resolve(key + beside);
                if (Files.exists(file)) {
                    Files.move(file, to.resolve(free + beside));
                }
            }
            Files.move(from.resolve(key + JSON), to.resolve(free + JSON));
        } catch (IOException e) {
            throw trouble(from.resolve(key + JSON), "cannot be moved", e);
        }
        return free;
    }

    private static void makeSure(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw trouble(folder, "cannot be made", e);
        }
    }

    private static String free(Path in, String wanted) {
        String key = wanted;
        for (int i = 2; taken(in, key); i++) {
            key = wanted + "-" + i;
        }
        return key;
    }

    private static boolean taken(Path in, String key) {
        return ALL.stream().anyMatch(ending -> Files.exists(in.resolve(key + ending)));
    }

    /** A name as a key: letters lose their accents, everything else becomes a hyphen. */
    public static String key(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String cut = plain.substring(0, Math.min(LONGEST_KEY, plain.length()));
        return cut.isEmpty() || DEVICE.matcher(cut).matches() ? ("design-" + cut).replaceAll("-$", "") : cut;
    }

    private static FolderException trouble(Path where, String what, Exception why) {
        return new FolderException(
                FolderException.Why.NO_ACCESS,
                where,
                what + " (" + why.getClass().getSimpleName() + ")");
    }
}
