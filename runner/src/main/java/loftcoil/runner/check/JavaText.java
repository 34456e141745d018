package loftcoil.runner.check;

/** Text as a Java string literal. */
final class JavaText {

    private JavaText() {}

    static String of(String text) {
        return '"'
                + text.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\r", "\\r")
                        .replace("\t", "\\t")
                + '"';
    }
}
