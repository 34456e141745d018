package loftcoil.engine.words;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Numbers that stand in sentences without a hole, so that no other units can be shown. */
public final class BareNumbers {

    /** A digit, or a metric unit in words such as "a tenth of a metre". */
    private static final Pattern DIGIT =
            Pattern.compile("[\\d°]|\\b(?:(?:milli|centi)?metres?|litres?|kilograms?|degrees? Celsius)\\b");

    /** In the name of a standard digits are its number; with a unit behind they measure something. */
    private static final Pattern WITH_UNIT =
            Pattern.compile("\\d ?(?:[µmck]?m[²³]?|km|K|°?[CF]|k?g|L|k?W|k?Pa|in|ft|lb)\\b");

    private BareNumbers() {}

    /**
     * The sentences with such numbers. In those whose code ends in {@code .source} digits may stand alone.
     *
     * @param files files of sentences
     * @param allowed what may stand in a sentence all the same
     * @return codes; and what was allowed for nothing
     */
    public static Set<String> in(List<Path> files, Set<String> allowed) {
        Set<String> found = new TreeSet<>();
        Set<String> idle = new TreeSet<>(allowed);
        for (Path file : files) {
            Properties sentences = raw(file);
            for (String code : sentences.stringPropertyNames()) {
                String text = sentences.getProperty(code).replaceAll("\\{[^{}]*}", "");
                for (String one : allowed) {
                    if (text.contains(one)) {
                        idle.remove(one);
                        text = text.replace(one, "");
                    }
                }
                if ((code.endsWith(".source") ? WITH_UNIT : DIGIT).matcher(text).find()) {
                    found.add(code);
                }
            }
        }
        found.addAll(idle);
        return found;
    }

    private static Properties raw(Path file) {
        Properties sentences = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
            sentences.load(in);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return sentences;
    }
}
