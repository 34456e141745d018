package loftcoil.engine.words;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The string literals in the compiled classes of a room, read from their constant pools (JVM specification, chapter 4.4). */
public final class ClassStrings {

    private static final int MAGIC = 0xCAFEBABE;

    private ClassStrings() {}

    /** The literals of all classes that stand beside this one, tests left out. */
    public static Set<String> beside(Class<?> type) {
        Set<String> strings = new TreeSet<>();
        for (Path file : files(type, ".class")) {
            try (DataInputStream in = new DataInputStream(Files.newInputStream(file))) {
                read(in, strings);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
        return strings;
    }

    /** The files beside a class whose names end so. */
    public static List<Path> files(Class<?> type, String ending) {
        try {
            Path room = Path.of(
                            type.getResource(type.getSimpleName() + ".class").toURI())
                    .getParent();
            try (Stream<Path> files = Files.list(room)) {
                return files.filter(file -> file.toString().endsWith(ending))
                        .sorted()
                        .toList();
            }
        } catch (IOException | URISyntaxException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    private static void read(DataInputStream in, Set<String> strings) throws IOException {
        if (in.readInt() != MAGIC) {
            throw new IOException("not a class");
        }
        in.readInt();
        int count = in.readUnsignedShort();
        Map<Integer, String> texts = new HashMap<>();
        Set<Integer> literals = new TreeSet<>();
        for (int i = 1; i < count; i++) {
            int tag = in.readUnsignedByte();
            switch (tag) {
                case 1 -> texts.put(i, in.readUTF());
                case 8 -> literals.add(in.readUnsignedShort());
                case 7, 16, 19, 20 -> skip(in, 2);
                case 15 -> skip(in, 3);
                case 3, 4, 9, 10, 11, 12, 17, 18 -> skip(in, 4);
                case 5, 6 -> {
                    skip(in, 8);
                    i++;
                }
                default -> throw new IOException("constant of kind " + tag);
            }
        }
        literals.forEach(literal -> strings.add(texts.get(literal)));
    }

    private static void skip(InputStream in, int bytes) throws IOException {
        in.skipNBytes(bytes);
    }
}
