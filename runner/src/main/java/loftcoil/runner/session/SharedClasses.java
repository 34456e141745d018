package loftcoil.runner.session;

import java.nio.file.Path;
import java.util.List;

/**
 * The archive of classes, made ready when Loftcoil is packed for carrying, that both Java machines map into their memory instead
 * of reading and checking each class anew. It knows the jar by a name relative to Loftcoil's folder, so both machines run there.
 */
final class SharedClasses {

    /** Name of the system property by which the starter tells where it is, from Loftcoil's folder. */
    static final String PROPERTY = "loftcoil.shared";

    private SharedClasses() {}

    /**
     * What a machine is started with to use it; nothing where Loftcoil was not started from a folder that has one. Mapped where
     * it was made for, its pages stay the file's: all machines share them, and none is changed first. A Java that does not know the
     * option, or finds that the archive is not for it, does without.
     */
    static List<String> options() {
        String archive = archive();
        return archive.isEmpty()
                ? List.of()
                : List.of(
                        "-XX:+IgnoreUnrecognizedVMOptions",
                        "-XX:+UnlockDiagnosticVMOptions",
                        "-XX:ArchiveRelocationMode=0",
                        "-XX:SharedArchiveFile=" + archive);
    }

    /** The name of a file as the archive knows it: as seen from the folder this machine runs in, where it lies in it. */
    static String name(Path file) {
        Path here = Path.of("").toAbsolutePath();
        return (!archive().isEmpty() && file.startsWith(here) ? here.relativize(file) : file).toString();
    }

    private static String archive() {
        return System.getProperty(PROPERTY, "");
    }
}
