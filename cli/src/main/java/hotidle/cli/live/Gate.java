package hotidle.cli.live;

import com.sun.net.httpserver.Headers;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import java.util.Set;

/**
 * Who may ask what. A browser that was led here by another page names it (Origin, Sec-Fetch-Site); one that was given another name for
 * this machine names that (Host); and only who has read the address that was printed knows the token.
 *
 * @param port  on which the server listens
 * @param token that each question must carry
 */
record Gate(int port, String token) {

    /** The header that carries the token: no foreign page can set one of its own without being asked for leave, which is never given. */
    static final String TOKEN = "X-Hotidle-Token";

    private static final int TOKEN_BYTES = 24;

    /** A token that nobody guesses. */
    static String newToken() {
        byte[] random = new byte[TOKEN_BYTES];
        new SecureRandom().nextBytes(random);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(random);
    }

    /** Why a request is refused before anything of it is read; empty where it is let in. */
    Optional<String> refused(Headers request, boolean question) {
        Set<String> hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
        String host = request.getFirst("Host");
        if (host == null || !hosts.contains(host)) {
            return Optional.of("this server answers at 127.0.0.1 alone");
        }
        String origin = request.getFirst("Origin");
        if (origin == null ? question : !origin.equals("http://" + host)) {
            return Optional.of("this page is asked by itself alone");
        }
        String site = request.getFirst("Sec-Fetch-Site");
        if (site != null && !site.equals("same-origin") && !site.equals("none") && question) {
            return Optional.of("this page is asked by itself alone");
        }
        return question && !known(request.getFirst(TOKEN))
                ? Optional.of("open the address that hotidle printed when it was started")
                : Optional.empty();
    }

    /** In a time that does not tell how much of it was right. */
    private boolean known(String given) {
        return given != null
                && MessageDigest.isEqual(
                        given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    }
}
