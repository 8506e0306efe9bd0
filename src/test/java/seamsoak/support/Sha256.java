package seamsoak.support;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** What {@code sha256sum} prints, told without the program's own code. */
public final class Sha256 {
  private Sha256() {}

  /** The line of a file. */
  public static String line(Path file) throws IOException {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
      return String.format("%064x  %s", new BigInteger(1, digest), file.getFileName());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
