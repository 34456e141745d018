package loftcoil.runner.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Supplier;

/** A file to write, whose ending says whether it is to be HTML or PDF. Refused before anything is computed. */
final class TargetFile {

    private static final String ALLOWED = "a file name that ends in .html or .pdf, in a folder that is there";

    private final Path file;
    private final boolean pdf;

    private TargetFile(Path file, boolean pdf) {
        this.file = file;
        this.pdf = pdf;
    }

    /** The file of that name. */
    static TargetFile of(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        boolean pdf = name.endsWith(".pdf");
        if (!pdf && !name.endsWith(".html")) {
            throw new RefusedInputException(file, "neither .html nor .pdf", ALLOWED);
        }
        if (Files.isDirectory(file)) {
            throw new RefusedInputException(file, "a folder", ALLOWED);
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new RefusedInputException(file, "its folder is missing", ALLOWED);
        }
        return new TargetFile(file, pdf);
    }

    /** Writes the one or the other; a file that was there is replaced. */
    void write(Supplier<String> html, Supplier<byte[]> asPdf) {
        byte[] bytes = pdf ? asPdf.get() : html.get().getBytes(StandardCharsets.UTF_8);
        try {
            Files.write(file, bytes);
        } catch (IOException refused) {
            throw RefusedInputException.unwritable(file, refused, "a file that may be written");
        }
    }

    Path path() {
        return file;
    }
}
