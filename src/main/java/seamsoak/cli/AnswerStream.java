package seamsoak.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.util.Locale;

/** Standard output that remembers why it could not be written. */
final class AnswerStream extends FilterOutputStream {
  private IOException failure;

  AnswerStream(OutputStream out) {
    super(out);
  }

  @Override
  public void write(byte[] bytes, int from, int count) throws IOException {
    try {
      out.write(bytes, from, count);
    } catch (IOException e) {
      failure = e;
      throw e;
    }
  }

  /** Says what went wrong, if anything; a reader that has seen enough and left is no fault. */
  boolean complain(PrintWriter err) {
    String why = failure == null ? "pipe" : String.valueOf(failure.getMessage());
    if (why.toLowerCase(Locale.ROOT).contains("pipe")) {
      return false;
    }
    err.println("The answer could not be written: " + why + ".");
    return true;
  }
}
