package loftcoil.runner.cli;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.function.Supplier;
import loftcoil.engine.fault.RefusedException;

/** A file to write, whose ending says whether it is to be HTML or PDF. Refused before anything is computed. */
final class TargetFile {

    private static final String ALLOWED = "a file name that ends in .html or .pdf, in a folder that is there";

    private final Path file;
    private final boolean pdf;

    private TargetFile(Path file, boolean pdf) {
        this.file = file;
        this.pdf = pdf;
    }

    /** The file of that name, which ends in .html or .pdf. */
    static TargetFile of(Path file) {
        boolean pdf = ends(file, ".pdf");
        if (!pdf && !ends(file, ".html")) {
            throw RefusedFile.of(file, "neither .html nor .pdf", ALLOWED);
        }
        return tried(file, pdf, ALLOWED);
    }

    /**
     * Makes a folder where it is missing, and tries that files can be made in it.
     *
     * @throws RefusedException where they cannot
     */
    static void folder(Path folder) {
        try {
            Files.createDirectories(folder);
            Files.delete(Files.createTempFile(folder, "loftcoil", ".try"));
        } catch (IOException refused) {
            throw RefusedFile.unwritable(folder, refused, "a folder that may be written");
        }
    }

    /** The file of that name, which ends in .csv. */
    static TargetFile csv(Path file) {
        String allowed = "a file name that ends in .csv, in a folder that is there";
        if (!ends(file, ".csv")) {
            throw RefusedFile.of(file, "not .csv", allowed);
        }
        return tried(file, /* pdf= */ false, allowed);
    }

    private static boolean ends(Path file, String ending) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(ending);
    }

    private static TargetFile tried(Path file, boolean pdf, String allowed) {
        if (Files.isDirectory(file)) {
            throw RefusedFile.of(file, "a folder", allowed);
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw RefusedFile.of(file, "its folder is missing", allowed);
        }
        tryOut(file);
        return new TargetFile(file, pdf);
    }

    /**
     * Opens a file to write and leaves all as it was, so that a refusal comes before the work: rights alone do not say
     * whether a file can be written.
     *
     * @throws RefusedException where it cannot
     */
    static void tryOut(Path file) {
        boolean there = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
        if (there && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            // A link or a device cannot be opened without a trace; there the writing itself says it.
            return;
        }
        try {
            FileChannel.open(
                            file,
                            StandardOpenOption.WRITE,
                            there ? StandardOpenOption.WRITE : StandardOpenOption.CREATE_NEW)
                    .close();
            if (!there) {
                Files.delete(file);
            }
        } catch (IOException refused) {
            throw RefusedFile.unwritable(file, refused, "a file that may be written");
        }
    }

    /** Writes the one or the other; a file that was there is replaced. */
    void write(Supplier<String> html, Supplier<byte[]> asPdf) {
        write(pdf ? asPdf.get() : html.get().getBytes(StandardCharsets.UTF_8));
    }

    /** Writes that text; a file that was there is replaced. */
    void write(String text) {
        write(text.getBytes(StandardCharsets.UTF_8));
    }

    private void write(byte[] bytes) {
        try {
            Files.write(file, bytes);
        } catch (IOException refused) {
            throw RefusedFile.unwritable(file, refused, "a file that may be written");
        }
    }

    Path path() {
        return file;
    }
}
