package loftcoil.runner.progress;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * Reads a text file of limited length. No more than that is ever taken in, whatever the system says of its size: a device
 * or a growing file has none that can be trusted.
 */
public final class TextFile {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private TextFile() {}

    /** Thrown where a file is longer than is read. */
    public static final class TooLongException extends IOException {

        private static final long serialVersionUID = 1L;

        TooLongException(String words) {
            super(words);
        }
    }

    /**
     * The text of a file, without a byte-order mark.
     *
     * @param file a file in UTF-8
     * @param longestBytes the greatest length, in bytes
     * @throws TooLongException where it is longer; the message says by how much as far as that is known
     * @throws java.nio.charset.CharacterCodingException where it is not UTF-8
     * @throws IOException where it cannot be read
     */
    public static String read(Path file, int longestBytes) throws IOException {
        long size = Files.size(file);
        if (size > longestBytes) {
            throw new TooLongException(size + " bytes");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(longestBytes + 1);
            if (bytes.length > longestBytes) {
                throw new TooLongException("a file without a known end");
            }
            return withoutMark(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        }
    }

    /** The text without the byte-order mark that some editors put before it; it is no part of the text (RFC 8259, 8.1). */
    public static String withoutMark(String text) {
        return text.startsWith(BYTE_ORDER_MARK) ? text.substring(BYTE_ORDER_MARK.length()) : text;
    }

    /** Why a file could not be read, in words. */
    public static String why(Exception cannot) {
        if (cannot instanceof NoSuchFileException) {
            return "there is no such file";
        } else if (cannot instanceof AccessDeniedException) {
            return "it may not be read";
        } else if (cannot instanceof TooLongException) {
            return "it is too long";
        } else if (cannot instanceof CharacterCodingException) {
            return "it is no text in UTF-8";
        }
        return cannot instanceof InvalidPathException
                ? "that is no name of a file"
                : "it is no file, or the disk does not give it";
    }
}
