package loftcoil.runner.session;

/** Values as shown: JShell's own text, but plain strings without their quotes. */
final class ValueText {

    private ValueText() {}

    static String of(String text, String type) {
        boolean quoted = type.equals("String") && text.length() >= 2 && text.startsWith("\"") && text.endsWith("\"");
        // JShell escapes what stands between the quotes as Java source does.
        return quoted ? text.substring(1, text.length() - 1).translateEscapes() : text;
    }
}
