package loftcoil.runner.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;

/**
 * What lets a browser in: a token in the opening address, and the cookie it is exchanged for. Both are 192 random bits.
 *
 * @param token the secret of the opening address
 * @param cookieName carries the port, since cookies of one host are shared between ports
 * @param cookie the secret the browser then keeps
 */
record Secret(String token, String cookieName, String cookie) {

    /** Path the token stands behind. */
    static final String PATH = "/open/";

    private static final int BYTES = 24;

    static Secret make(int port) {
        SecureRandom random = new SecureRandom();
        return new Secret(text(random), "loftcoil-" + port, text(random));
    }

    boolean opens(String given) {
        return same(given, token);
    }

    /** True where one of the {@code Cookie} headers holds our cookie. */
    boolean isIn(List<String> cookieHeaders) {
        return cookieHeaders.stream()
                .flatMap(header -> List.of(header.split(";", -1)).stream())
                .map(String::strip)
                .anyMatch(pair ->
                        pair.startsWith(cookieName + "=") && same(pair.substring(cookieName.length() + 1), cookie));
    }

    String setCookie() {
        return cookieName + "=" + cookie + "; Path=/; HttpOnly; SameSite=Strict";
    }

    /** Takes the same time whatever is given. */
    private static boolean same(String given, String wanted) {
        return MessageDigest.isEqual(given.getBytes(StandardCharsets.UTF_8), wanted.getBytes(StandardCharsets.UTF_8));
    }

    private static String text(SecureRandom random) {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Never shows the secrets. */
    @Override
    public String toString() {
        return "Secret[" + cookieName + "]";
    }
}
