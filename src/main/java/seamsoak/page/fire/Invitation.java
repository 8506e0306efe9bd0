package seamsoak.page.fire;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * Lets in one phone: a key that its camera reads, and a code that is typed. Neither does without
 * the other, so that a picture of the screen or a look over a shoulder alone opens nothing.
 */
public final class Invitation {
  private static final long GOOD_MINUTES = 15;
  private static final int MOST_TRIES = 5;
  private static final int CODES = 1_000_000;

  private final String key;
  private final String code;
  private final LongSupplier nanos;
  private final long until;
  private int tries;
  private boolean used;

  /** What came of trying to come in. */
  public enum Came {
    IN,
    WRONG_KEY,
    WRONG_CODE,
    USED,
    TOO_OFTEN,
    OLD
  }

  /**
   * @param key that nobody guesses
   * @param nanos tells the time
   */
  public Invitation(String key, LongSupplier nanos) {
    this.key = key;
    this.code = String.format(Locale.ROOT, "%06d", new SecureRandom().nextInt(CODES));
    this.nanos = nanos;
    this.until = nanos.getAsLong() + TimeUnit.MINUTES.toNanos(GOOD_MINUTES);
  }

  public String key() {
    return key;
  }

  /** Six digits. */
  public String code() {
    return code;
  }

  /** Whether it still lets in somebody. */
  public synchronized boolean isOpen() {
    return state(key) == Came.IN;
  }

  /** What a key would come to with the right code. */
  public synchronized Came state(String tried) {
    if (!same(key, tried)) {
      return Came.WRONG_KEY;
    }
    if (used) {
      return Came.USED;
    }
    if (tries >= MOST_TRIES) {
      return Came.TOO_OFTEN;
    }
    return until - nanos.getAsLong() < 0 ? Came.OLD : Came.IN;
  }

  /** Tries to come in; a key lets in once, and stands a few wrong codes. */
  public synchronized Came tried(String triedKey, String triedCode) {
    Came state = state(triedKey);
    if (state != Came.IN) {
      return state;
    }
    if (!same(code, triedCode.replaceAll("\\s", ""))) {
      tries++;
      return tries >= MOST_TRIES ? Came.TOO_OFTEN : Came.WRONG_CODE;
    }
    used = true;
    return Came.IN;
  }

  private static boolean same(String own, String tried) {
    return MessageDigest.isEqual(
        own.getBytes(StandardCharsets.UTF_8), tried.getBytes(StandardCharsets.UTF_8));
  }
}
