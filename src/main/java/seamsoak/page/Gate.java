package seamsoak.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.regex.Pattern;
import seamsoak.words.PageWords;

/**
 * Lets in the browser of the smith who started the program, and nobody else: no other page, no
 * other program's cookie, no other name for this address. What lets in are secrets of 256 bits, of
 * which only digests are kept.
 */
final class Gate {
  private static final long KEY_SECONDS = 60;
  private static final int MOST_KEYS = 100;
  private static final String FORM = "application/x-www-form-urlencoded";

  /** Where the one-time key is turned into a cookie. */
  static final String IN = "/in";

  /** A key that was given out, and until when it opens; one that was used opens no more. */
  private record Key(byte[] digest, long until, boolean used) {}

  private final String authority;
  private final String open;
  private final String origin;
  private final String cookie;
  private final LongSupplier nanos;
  private final String own = Seal.secret();
  private final Deque<Key> keys = new ArrayDeque<>();
  private final List<byte[]> browsers = new ArrayList<>();

  /**
   * @param authority address and port
   * @param nanos tells the time
   */
  Gate(String authority, LongSupplier nanos) {
    this(authority, IN, nanos);
  }

  /**
   * @param open where whoever has no cookie may come, to be let in or not
   */
  Gate(String authority, String open, LongSupplier nanos) {
    this.authority = authority;
    this.open = open;
    this.origin = "http://" + authority;
    this.cookie = "seamsoak_" + authority.substring(authority.indexOf(':') + 1);
    this.nanos = nanos;
  }

  /** A link that lets in one browser within a minute. */
  synchronized String link() {
    String key = Seal.secret();
    keys.addLast(new Key(digest(key), nanos.getAsLong() + nanos(KEY_SECONDS), false));
    while (keys.size() > MOST_KEYS) {
      keys.removeFirst();
    }
    return origin + IN + "?t=" + key;
  }

  private static long nanos(long seconds) {
    return TimeUnit.SECONDS.toNanos(seconds);
  }

  private static byte[] digest(String secret) {
    return Seal.sha256(secret.getBytes(StandardCharsets.UTF_8));
  }

  /** Why it is not let in; nothing where it is. */
  Optional<Answer> refuse(Asked head) {
    if (!head.has("host", authority)) {
      return refused(421, PageWords.OTHER_HOST);
    }
    if (!List.of("GET", "HEAD", "POST").contains(head.method())) {
      return refused(405, PageWords.OTHER_METHOD).map(a -> a.with("Allow", "GET, HEAD, POST"));
    }
    Optional<Answer> wrong = head.isPost() ? refusePost(head) : refuseGet(head);
    return wrong.isPresent() || head.path().equals(open) || isOurs(head) || knows(head)
        ? wrong
        : refused(403, PageWords.NO_COOKIE);
  }

  private static Optional<Answer> refused(int status, String why) {
    return Optional.of(Pages.told(status, why));
  }

  private Optional<Answer> refusePost(Asked head) {
    List<String> site = head.all("sec-fetch-site");
    if (!head.has("origin", origin)
        || !site.isEmpty() && !head.has("sec-fetch-site", "same-origin")) {
      return refused(403, PageWords.OTHER_PAGE);
    }
    if (head.all("content-length").size() != 1 || !head.all("transfer-encoding").isEmpty()) {
      return refused(411, PageWords.NO_LENGTH);
    }
    Optional<Integer> length = Asked.number(head.all("content-length").get(0));
    if (length.isEmpty() || length.get() > Listener.most(head)) {
      return refused(413, PageWords.TOO_MUCH);
    }
    return Listener.most(head) > Listener.MOST_BYTES
            || head.has("content-type", FORM)
            || head.has("content-type", FORM + ";charset=UTF-8")
        ? Optional.empty()
        : refused(415, PageWords.NO_FORM);
  }

  /** What is only looked at may be called for by the smith or by our own page. */
  private Optional<Answer> refuseGet(Asked head) {
    boolean sends =
        !head.all("transfer-encoding").isEmpty()
            || !head.all("content-length").isEmpty() && !head.has("content-length", "0");
    if (sends) {
      return refused(400, PageWords.TOO_MUCH);
    }
    boolean ours =
        head.all("sec-fetch-site").isEmpty()
            || head.has("sec-fetch-site", "same-origin")
            || head.has("sec-fetch-site", "none")
            || head.path().equals(open);
    return ours ? Optional.empty() : refused(403, PageWords.OTHER_PAGE);
  }

  /** Whether it brings our cookie, and one of that name only. */
  private synchronized boolean knows(Asked head) {
    Pattern ours = Pattern.compile("(?:^|;)\\s*" + cookie + "=([^;]*)");
    List<String> brought =
        head.all("cookie").stream()
            .flatMap(c -> ours.matcher(c).results().map(m -> m.group(1)))
            .toList();
    if (brought.size() != 1) {
      return false;
    }
    byte[] digest = digest(brought.get(0).strip());
    boolean known = false;
    for (byte[] browser : browsers) {
      known |= MessageDigest.isEqual(browser, digest);
    }
    return known;
  }

  /** What the program knows itself by when it is started once more. */
  String own() {
    return own;
  }

  /** Whether it was the program that asks. */
  private boolean isOurs(Asked head) {
    List<String> said = head.all(Running.HEADER.toLowerCase(Locale.ROOT));
    return head.path().equals(Running.AGAIN)
        && said.size() == 1
        && MessageDigest.isEqual(digest(said.get(0)), digest(own));
  }

  /** Takes a one-time key and gives the cookie for it, or tells why not. */
  synchronized Answer in(Asked asked) {
    if (asked.isPost()) {
      return Pages.told(405, PageWords.OTHER_METHOD);
    }
    byte[] digest = digest(asked.query().getOrDefault("t", ""));
    Key found = null;
    for (Key key : keys) {
      found = MessageDigest.isEqual(key.digest(), digest) ? key : found;
    }
    if (found == null) {
      return Pages.told(403, PageWords.WRONG_KEY);
    }
    if (found.used()) {
      return Pages.told(410, PageWords.KEY_USED);
    }
    if (found.until() - nanos.getAsLong() < 0) {
      return Pages.told(410, PageWords.KEY_OLD);
    }
    if (asked.method().equals("HEAD")) {
      return Answer.see("/"); // a look ahead uses no key up
    }
    keys.remove(found);
    keys.addLast(new Key(digest, found.until(), true));
    return Answer.see("/").with("Set-Cookie", admit());
  }

  /** Lets in one more browser: the cookie that it is to bring. */
  synchronized String admit() {
    String secret = Seal.secret();
    browsers.add(digest(secret));
    return cookie + "=" + secret + "; Path=/; HttpOnly; SameSite=Strict";
  }
}
