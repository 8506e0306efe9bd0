package seamsoak.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;

/** What every answer tells the browser to let in and to let others do: next to nothing. */
final class Seal {
  static final String POLICY = "Content-Security-Policy";

  static final Map<String, String> HEADERS = headers();

  private static final SecureRandom RANDOM = new SecureRandom();

  private Seal() {}

  private static Map<String, String> headers() {
    Map<String, String> all = new LinkedHashMap<>();
    all.put(POLICY, policy(Look.STYLE, Look.SCRIPT));
    all.put("X-Content-Type-Options", "nosniff");
    all.put("Cross-Origin-Opener-Policy", "same-origin");
    all.put("Cross-Origin-Resource-Policy", "same-origin");
    // under no-referrer a browser says of a form that it comes from nowhere
    all.put("Referrer-Policy", "same-origin");
    all.put("Cache-Control", "no-store");
    return Map.copyOf(all);
  }

  /** Only our own style and script, each known by its hash, and nothing from elsewhere. */
  static String policy(String style, String script) {
    return "default-src 'none'; style-src '"
        + hash(style)
        + "'; script-src '"
        + hash(script)
        + "'; connect-src 'self'; img-src 'self' data:; form-action 'self'; base-uri 'none';"
        + " frame-ancestors 'none'";
  }

  /** 256 bits that nobody guesses. */
  static String secret() {
    byte[] bytes = new byte[32];
    RANDOM.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  private static String hash(String text) {
    return "sha256-"
        + Base64.getEncoder().encodeToString(sha256(text.getBytes(StandardCharsets.UTF_8)));
  }

  static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }
}
