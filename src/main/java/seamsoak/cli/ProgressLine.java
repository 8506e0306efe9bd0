package seamsoak.cli;

import java.io.PrintWriter;
import seamsoak.state.Progress;

/** One line on a terminal that tells how far a long computation has come, gone when it is done. */
final class ProgressLine implements Progress, AutoCloseable {
  private static final long PATIENCE_NANOS = 1_000_000_000L;

  private final PrintWriter terminal;
  private final long start = System.nanoTime();
  private int shown;

  private ProgressLine(PrintWriter terminal) {
    this.terminal = terminal;
  }

  /** Silent where nobody watches. */
  static ProgressLine on(PrintWriter err, boolean terminal) {
    return new ProgressLine(terminal && !"dumb".equals(System.getenv("TERM")) ? err : null);
  }

  @Override
  public synchronized void at(String what, int done, int of) {
    if (terminal == null || System.nanoTime() - start < PATIENCE_NANOS) {
      return;
    }
    String line = what + " " + done + " of " + of;
    terminal.print("\r" + line);
    terminal.flush();
    shown = Math.max(shown, line.length());
  }

  @Override
  public synchronized void close() {
    if (shown > 0) {
      terminal.print("\r" + " ".repeat(shown) + "\r");
      terminal.flush();
    }
  }
}
